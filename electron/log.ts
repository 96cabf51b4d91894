/**
 * Writes a bug to standard error: where it happened, never what was being worked on. Messages can carry a client's
 * words, so only the error's name, code and places in the program are written.
 */
export function logBug(where: string, error: unknown): void {
  process.stderr.write(`Eavewright: bug in ${where}: ${describe(error)}\n`);
}

function describe(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  const code = 'code' in error && typeof error.code === 'string' ? ` ${error.code}` : '';
  const places = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return `${error.name}${code}\n${places.slice(0, 8).join('\n')}`;
}
