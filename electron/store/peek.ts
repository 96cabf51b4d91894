import { closeSync, existsSync, fstatSync, openSync, readSync } from 'node:fs';
import BetterSqlite3 from 'better-sqlite3';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { storeProblem } from './classify.ts';

/** Marks a SQLite file as a shop file of ours: "Eave" in ASCII. */
export const applicationId = 0x45617665;

/**
 * Looks at a shop file without changing a byte of it.
 * @param path - the file; must exist.
 * @param newest - the newest schema that this program knows.
 * @returns its schema version; or why it is refused. An empty file is refused, though SQLite would take it.
 */
export function peekShopFile(path: string, newest: number): Result<number, Problem> {
  try {
    const header = readHeader(path);
    if (header === undefined) return fail({ code: 'shop-file-not-ours' });
    if (header.readInt32BE(68) !== applicationId) return fail({ code: 'shop-file-not-ours' });
    // Without a log beside it the header is the truth, and a newer file need not even be opened to be refused.
    if (!existsSync(`${path}-wal`) && header.readInt32BE(60) > newest)
      return fail({ code: 'shop-file-newer' });
    return readVersion(path, newest);
  } catch (error) {
    const problem = storeProblem(error);
    if (problem === undefined) throw error;
    return fail(problem);
  }
}

function readHeader(path: string): Buffer | undefined {
  const file = openSync(path, 'r');
  try {
    if (fstatSync(file).size < 512) return undefined;
    const header = Buffer.alloc(100);
    readSync(file, header, 0, 100, 0);
    return header.toString('latin1', 0, 16) === 'SQLite format 3\0' ? header : undefined;
  } finally {
    closeSync(file);
  }
}

function readVersion(path: string, newest: number): Result<number, Problem> {
  const database = new BetterSqlite3(path, { readonly: true, fileMustExist: true, timeout: 0 });
  try {
    const version: unknown = database.pragma('user_version', { simple: true });
    if (typeof version !== 'number') throw new Error('user_version is not a number');
    if (version > newest) return fail({ code: 'shop-file-newer' });
    const check: unknown = database.pragma('quick_check(1)', { simple: true });
    return check === 'ok' ? ok(version) : fail({ code: 'shop-file-damaged' });
  } finally {
    database.close();
  }
}
