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
  assertWhole(unfinished);
  moveIntoPlace(unfinished, target);
}

/**
 * The same by SQLite's online backup, while the program goes on reading and writing; what is written meanwhile is in
 * the copy. Before an update of the schema nothing else may run, so there `backUpTo` does it in one go.
 * @param database - open.
 * @param target - path of the copy; an older copy of that name is replaced.
 */
export async function backUpOnline(database: BetterSqlite3.Database, target: string): Promise<void> {
  mkdirSync(dirname(target), { recursive: true });
  const unfinished = `${target}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    await database.backup(unfinished);
    standAlone(unfinished);
    assertWhole(unfinished);
    moveIntoPlace(unfinished, target);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}

/** The copy of a file in WAL mode says so in its header; at rest it is to stand alone. */
function standAlone(path: string): void {
  const copy = new BetterSqlite3(path);
  try {
    copy.pragma('journal_mode = DELETE');
  } finally {
    copy.close();
  }
}

function assertWhole(path: string): void {
  const copy = new BetterSqlite3(path, { readonly: true });
  const check: unknown = copy.pragma('integrity_check', { simple: true });
  copy.close();
  if (check !== 'ok') throw new Error('the backup copy does not check');
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
