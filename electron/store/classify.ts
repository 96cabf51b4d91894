import type { Problem } from '../../core/problems/problem.ts';

/**
 * Says in the program's own terms what SQLite or the file system refused, by code and never by message.
 * @param error - whatever was thrown.
 * @returns the problem, or undefined where it is a bug of ours.
 */
export function storeProblem(error: unknown): Problem | undefined {
  const code = codeOf(error);
  if (code === undefined) return undefined;
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT') return { code: 'disk-full' };
  // A file-size limit shows as a failed write, and so does a disk that went away.
  if (code === 'SQLITE_IOERR_WRITE' || code === 'EFBIG') return { code: 'disk-full' };
  if (code === 'SQLITE_NOTADB') return { code: 'shop-file-not-ours' };
  if (code.startsWith('SQLITE_CORRUPT')) return { code: 'shop-file-damaged' };
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return { code: 'shop-file-in-use' };
  if (readOnlyCodes.has(code) || code.startsWith('SQLITE_READONLY')) return { code: 'shop-file-read-only' };
  return undefined;
}

const readOnlyCodes: ReadonlySet<string> = new Set([
  'SQLITE_CANTOPEN',
  'SQLITE_CANTOPEN_ISDIR',
  'SQLITE_PERM',
  'SQLITE_IOERR_DELETE',
  'EACCES',
  'EPERM',
  'EROFS',
  'ENOTDIR',
  'EEXIST',
  'EISDIR',
]);

function codeOf(error: unknown): string | undefined {
  if (typeof error !== 'object' || error === null || !('code' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}
