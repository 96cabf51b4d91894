import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Why a backup was made. */
export type BackupKind = 'daily' | 'by-hand' | 'before-update' | 'before-restore';

/** A backup copy beside the shop file. */
export type BackupFile = {
  readonly fileName: string;
  readonly kind: BackupKind;
  /** Civil day it was made on; null where its name does not say. */
  readonly day: string | null;
  readonly bytes: number;
};

const names = /^(daily|by-hand|before-restore|before-update)-(.+)\.eavewright$/;
const dayInName = /^(\d{4}-\d{2}-\d{2})(?:-\d+)?$/;

/** The folder of the backups of a shop file's folder. */
export function backupFolder(folder: string): string {
  return join(folder, 'backups');
}

/**
 * The backups of a folder, newest day first, those without a day last.
 * @param folder - where the shop file lives; one without backups gives none.
 */
export function listBackups(folder: string): readonly BackupFile[] {
  return fileNames(backupFolder(folder))
    .flatMap((fileName): readonly BackupFile[] => {
      const match = names.exec(fileName);
      if (match === null) return [];
      const { size } = statSync(join(backupFolder(folder), fileName));
      const day = dayInName.exec(match[2] ?? '')?.[1] ?? null;
      return [{ fileName, kind: match[1] as BackupKind, day, bytes: size }];
    })
    .toSorted((a, b) => newestFirst(a, b));
}

/**
 * A file name that is not taken yet: `by-hand-2026-04-30`, then `by-hand-2026-04-30-2`.
 * @param taken - names in the folder, with their ending.
 * @param stem - without ending.
 */
export function freeName(taken: Iterable<string>, stem: string): string {
  const known = new Set(taken);
  let name = `${stem}.eavewright`;
  for (let number = 2; known.has(name); number += 1) name = `${stem}-${number}.eavewright`;
  return name;
}

/** Names in a folder; none where there is no such folder. */
export function fileNames(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return [];
    throw error;
  }
}

function newestFirst(a: BackupFile, b: BackupFile): number {
  if (a.day !== b.day) return (a.day ?? '') < (b.day ?? '') ? 1 : -1;
  return a.fileName < b.fileName ? 1 : -1;
}
