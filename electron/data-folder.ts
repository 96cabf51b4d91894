import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/**
 * Where the shop file lives: the folder that was asked for, else the platform's place for a program's data.
 * @param asked - from `--data`, when given.
 * @param env - the environment; `EAVEWRIGHT_DATA` comes after `--data`.
 */
export function dataFolder(
  asked: string | undefined,
  env: Readonly<Record<string, string | undefined>>,
  platform: NodeJS.Platform,
): string {
  const named = asked ?? env['EAVEWRIGHT_DATA'];
  if (named !== undefined && named !== '') return resolve(named);
  switch (platform) {
    case 'win32':
      return join(env['APPDATA'] ?? join(homedir(), 'AppData', 'Roaming'), 'Eavewright');
    case 'darwin':
      return join(homedir(), 'Library', 'Application Support', 'Eavewright');
    default:
      return join(env['XDG_DATA_HOME'] ?? join(homedir(), '.local', 'share'), 'eavewright');
  }
}
