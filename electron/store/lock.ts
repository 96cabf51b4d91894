import BetterSqlite3 from 'better-sqlite3';

/** The right to use a shop file. Freed by `release`, and by the system when the process dies, however it dies. */
export type ShopLock = { readonly release: () => void };

/** Locks that are held: a collected database would let go of its lock without a word. */
const held = new Set<BetterSqlite3.Database>();

/**
 * Takes the lock beside a shop file: a SQLite file held by BEGIN EXCLUSIVE, so that a killed program leaves none behind.
 * @param lockPath - the lock file's path; made when missing.
 * @throws SqliteError `SQLITE_BUSY` at once when another program holds it.
 */
export function takeLock(lockPath: string): ShopLock {
  const database = new BetterSqlite3(lockPath, { timeout: 0 });
  try {
    database.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    database.close();
    throw error;
  }
  held.add(database);
  return {
    release() {
      held.delete(database);
      if (database.open) database.close();
    },
  };
}
