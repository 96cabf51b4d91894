import { appendFileSync, mkdirSync, readFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** The log is begun anew at this size, and one older log is kept. [B] */
const mostLogBytes = 256 * 1024;

let logPath: string | undefined;

/**
 * Keeps bugs in a file of this folder from now on, beside standard error.
 * @param folder - the data folder; a log that cannot be written is not worth a message.
 */
export function keepLogIn(folder: string): void {
  logPath = join(folder, 'log', 'eavewright.log');
}

/**
 * Writes a bug to standard error and the log: where it happened, never what was being worked on. Messages can carry a
 * client's words, so only the error's name, code and places in the program are written.
 */
export function logBug(where: string, error: unknown): void {
  const text = `Eavewright: bug in ${where}: ${describe(error)}\n`;
  process.stderr.write(text);
  append(text);
}

/**
 * The log's last lines, oldest first.
 * @param most - so many lines at most. [-]
 */
export function lastLogLines(most: number): readonly string[] {
  if (logPath === undefined) return [];
  return [`${logPath}.old`, logPath]
    .flatMap(linesOf)
    .filter((line) => line !== '')
    .slice(-most);
}

function append(text: string): void {
  if (logPath === undefined) return;
  try {
    mkdirSync(join(logPath, '..'), { recursive: true });
    if (sizeOf(logPath) + text.length > mostLogBytes) renameSync(logPath, `${logPath}.old`);
    appendFileSync(logPath, `${new Date().toISOString()} ${text}`);
  } catch {
    // A full or read-only disk: the bug went to standard error.
  }
}

function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0;
}

function linesOf(path: string): readonly string[] {
  try {
    return readFileSync(path, 'utf8').split('\n');
  } catch {
    return [];
  }
}

function describe(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  const code = 'code' in error && typeof error.code === 'string' ? ` ${error.code}` : '';
  const places = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return `${error.name}${code}\n${places.slice(0, 8).join('\n')}`;
}
