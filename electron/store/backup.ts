import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';

/**
 * Copies an open database whole, log included, into a file that appears under its name only when it is complete.
 * A plain copy of a live file would miss what stands in the log.
 * @param database - open, no transaction.
 * @param target - path of the copy; an older copy of that name is replaced.
 */
export function backUpTo(database: BetterSqlite3.Database, target: string): void {
  mkdirSync(dirname(target), { recursive: true });
  const unfinished = `${target}.unfinished`;
  rmSync(unfinished, { force: true });
  database.prepare('VACUUM INTO ?').run(unfinished);
  const copy = new BetterSqlite3(unfinished, { readonly: true });
  const check: unknown = copy.pragma('integrity_check', { simple: true });
  copy.close();
  if (check !== 'ok') throw new Error('the backup copy does not check');
  moveIntoPlace(unfinished, target);
}

/** Renames a finished file to its name so that the name survives a power cut, with all of its content or not at all. */
export function moveIntoPlace(from: string, to: string): void {
  syncToDisk(from);
  renameSync(from, to);
  // Windows cannot open a folder to sync it, and does not need to.
  if (process.platform !== 'win32' && existsSync(dirname(to))) syncToDisk(dirname(to));
}

function syncToDisk(path: string): void {
  // A file must be open for writing to be synced on Windows; a folder can only be opened for reading.
  const descriptor = openSync(path, process.platform === 'win32' ? 'r+' : 'r');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}
