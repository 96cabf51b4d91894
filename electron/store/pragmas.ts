import type BetterSqlite3 from 'better-sqlite3';

/**
 * What must hold while the shop file is open, with the value that SQLite reads back.
 *
 * better-sqlite3 is compiled with NORMAL as the default in WAL mode, and NORMAL may lose the last saves on a power cut:
 * so FULL is set and read back on every open.
 */
const wanted: readonly (readonly [pragma: string, set: string, readBack: unknown])[] = [
  ['journal_mode', 'WAL', 'wal'],
  ['synchronous', 'FULL', 2],
  ['foreign_keys', 'ON', 1],
  ['trusted_schema', 'OFF', 0],
  ['cell_size_check', 'ON', 1],
];

/** Sets the pragmas and reads each back; a value that did not take is a bug and throws. */
export function setPragmas(database: BetterSqlite3.Database): void {
  for (const [pragma, set, expected] of wanted) {
    database.pragma(`${pragma} = ${set}`);
    const found: unknown = database.pragma(pragma, { simple: true });
    if (found !== expected) throw new Error(`pragma ${pragma} is ${String(found)}, not ${String(expected)}`);
  }
}
