import type BetterSqlite3 from 'better-sqlite3';
import type { Migration } from '../../migrations/migration.ts';

/**
 * Brings a database to the newest schema, one migration a transaction, each with its `user_version`.
 *
 * Foreign keys go off before BEGIN: inside a transaction the pragma is ignored without a word, and the usual rebuild of
 * a table (copy, drop, rename) would then delete its child rows through ON DELETE CASCADE. They are checked before COMMIT.
 * @param database - open for writing, no transaction.
 * @param migrations - oldest first, numbered in tens.
 * @param backUp - makes a copy; called once before the first change of a database that holds something.
 */
export function migrate(
  database: BetterSqlite3.Database,
  migrations: readonly Migration[],
  backUp: (fromVersion: number) => void,
): void {
  assertNumbering(migrations);
  const from = userVersion(database);
  const pending = migrations.filter((migration) => migration.version > from);
  if (pending.length === 0) return;
  if (from > 0) backUp(from);
  for (const migration of pending) runMigration(database, migration);
}

/** Schema version of an open database. */
export function userVersion(database: BetterSqlite3.Database): number {
  const version: unknown = database.pragma('user_version', { simple: true });
  if (typeof version !== 'number') throw new Error('user_version is not a number');
  return version;
}

/** The newest schema version that a list of migrations reaches. */
export function newestVersion(migrations: readonly Migration[]): number {
  return migrations.at(-1)?.version ?? 0;
}

function runMigration(database: BetterSqlite3.Database, migration: Migration): void {
  database.pragma('foreign_keys = OFF');
  try {
    database
      .transaction(() => {
        migration.update({ exec: (sql) => void database.exec(sql) });
        const broken = database.pragma('foreign_key_check') as readonly unknown[];
        if (broken.length > 0)
          throw new Error(`migration ${migration.version} leaves rows without their parent`);
        database.pragma(`user_version = ${migration.version}`);
      })
      .immediate();
  } finally {
    database.pragma('foreign_keys = ON');
  }
}

function assertNumbering(migrations: readonly Migration[]): void {
  let last = 0;
  for (const { version, name } of migrations) {
    if (version % 10 !== 0 || version <= last)
      throw new Error(`migration ${version} (${name}) is out of order`);
    last = version;
  }
}
