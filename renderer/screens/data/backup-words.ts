import type { CommandOutput } from '../../../core/contract/contract.ts';

export type ShopState = CommandOutput<'shop.state'>;
export type Backup = ShopState['backups'][number];

/** What a backup is called in the list: `Daily, 2026-04-30`. */
export function backupName({ kind, day }: Backup): string {
  const kinds: Readonly<Record<Backup['kind'], string>> = {
    daily: 'Daily',
    'by-hand': 'By hand',
    'before-update': 'Before an update of the program',
    'before-restore': 'What a restored backup replaced',
  };
  return day === null ? kinds[kind] : `${kinds[kind]}, ${day}`;
}

/** A file's size as people read it: 1536 -> `1.5 KB`. [B] */
export function sizeText(bytes: number): string {
  if (bytes < 1024) return `${bytes} B`;
  return bytes < 1024 * 1024 ? `${(bytes / 1024).toFixed(1)} KB` : `${(bytes / 1024 / 1024).toFixed(1)} MB`;
}
