import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Migration } from '../../migrations/migration.ts';
import { migrations as ourMigrations } from '../../migrations/migrations.ts';
import { backUpOnline, backUpTo, moveIntoPlace } from './backup.ts';
import { storeProblem } from './classify.ts';
import { handlesOf, type ReadableDb, type WritableDb } from './database.ts';
import { takeLock, type ShopLock } from './lock.ts';
import { migrate, newestVersion } from './migrator.ts';
import { applicationId, peekShopFile } from './peek.ts';
import { setPragmas } from './pragmas.ts';

/** An open shop file. */
export type Store = {
  /** Reads; the handle cannot write. */
  read<T>(work: (db: ReadableDb) => T): T;
  /**
   * Writes, all or nothing and on the disk before it returns. A problem as answer rolls everything back, as a thrown
   * bug does. The work is synchronous: nothing else can come between.
   */
  write<T>(work: (db: WritableDb) => Result<T, Problem>): Result<T, Problem>;
  /** Copies the whole file, as it is when the copying ends, and checks the copy; writes may go on meanwhile. */
  backUp(target: string): Promise<void>;
  /** Name, columns and rows of every table, for the export: SQLite's own tables left out. */
  tables(): readonly TableRows[];
  /** Leaves the file whole and in one piece, with no log beside it. */
  close(): void;
};

/** A table, whole. */
export type TableRows = {
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: Iterable<readonly unknown[]>;
};

export const shopFileName = 'shop.eavewright';

/**
 * Opens the shop file of a folder, making it when the folder has none. A file that is not ours, damaged, newer, in use or
 * not to be written is refused as it stands.
 * @param folder - where the shop file lives; made when missing.
 * @param migrations - the schema; tests hand in others.
 */
export function openShop(
  folder: string,
  migrations: readonly Migration[] = ourMigrations,
): Result<Store, Problem> {
  let lock: ShopLock | undefined;
  try {
    mkdirSync(folder, { recursive: true });
    const path = join(folder, shopFileName);
    lock = takeLock(`${path}-lock`);
    if (!existsSync(path)) createShopFile(path, migrations);
    const version = peekShopFile(path, newestVersion(migrations));
    if (!version.ok) {
      lock.release();
      return version;
    }
    return ok(storeOf(openForWriting(path, folder, migrations), lock));
  } catch (error) {
    lock?.release();
    const problem = storeProblem(error);
    if (problem === undefined) throw error;
    return fail(problem);
  }
}

/** Makes a shop file under another name first, so that a half-made one never carries the real name. */
function createShopFile(path: string, migrations: readonly Migration[]): void {
  const unfinished = `${path}.unfinished`;
  for (const leftover of [unfinished, `${unfinished}-journal`]) rmSync(leftover, { force: true });
  const database = new BetterSqlite3(unfinished);
  try {
    database.pragma(`application_id = ${applicationId}`);
    migrate(database, migrations, () => undefined);
  } finally {
    database.close();
  }
  moveIntoPlace(unfinished, path);
}

function openForWriting(
  path: string,
  folder: string,
  migrations: readonly Migration[],
): BetterSqlite3.Database {
  const database = new BetterSqlite3(path, { fileMustExist: true, timeout: 0 });
  try {
    setPragmas(database);
    migrate(database, migrations, (from) =>
      backUpTo(database, join(folder, 'backups', `before-update-from-${from}.eavewright`)),
    );
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

/** Carries a refusal out of the transaction, so that better-sqlite3 rolls back. */
class Refused extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super('refused');
    this.problem = problem;
  }
}

function storeOf(database: BetterSqlite3.Database, lock: ShopLock): Store {
  const { readable, writable } = handlesOf(database);
  return {
    read: (work) => work(readable),
    write<T>(work: (db: WritableDb) => Result<T, Problem>): Result<T, Problem> {
      const once = database.transaction((): T => {
        const result = work(writable);
        if (!result.ok) throw new Refused(result.problem);
        return result.value;
      });
      try {
        return ok(once.immediate());
      } catch (error) {
        if (error instanceof Refused) return fail(error.problem);
        throw error;
      }
    },
    backUp: (target) => backUpOnline(database, target),
    tables: () => tablesOf(database),
    close() {
      if (!database.open) return;
      try {
        // At rest the file stands alone, so that a plain copy of it is whole and a read-only medium can hold it.
        database.pragma('wal_checkpoint(TRUNCATE)');
        database.pragma('journal_mode = DELETE');
      } catch (error) {
        // A full disk may refuse the tidying; the log holds everything and the next open takes it in.
        if (storeProblem(error) === undefined) throw error;
      } finally {
        database.close();
        lock.release();
      }
    },
  };
}

function tablesOf(database: BetterSqlite3.Database): readonly TableRows[] {
  const names = database
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")
    .pluck()
    .all() as string[];
  return names.map((name) => {
    const all = database.prepare(`SELECT * FROM "${name}"`);
    return {
      name,
      columns: all.columns().map((column) => column.name),
      rows: all.raw().iterate() as Iterable<readonly unknown[]>,
    };
  });
}
