import { setImmediate } from 'node:timers/promises';
import { CsvError, parse } from 'csv-parse';
import { mostColumns, separators, type Separator } from '../../core/pricing/import/layout.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { brokenCsv } from './csv-text.ts';

/** Most rows of a supplier's file. */
const mostRows = 200_000;
/** Text that is read before the host looks after others. [characters] */
const sliceLength = 200_000;
/** Longest row. [characters] */
const longestRow = 1_000_000;

/**
 * Reads long CSV text in slices, so that the host answers others in between. Rows stay in step with the lines of a
 * spreadsheet: blank ones are kept, and rows may have fewer or more cells than others.
 * @param onRows - hears how many rows are read.
 * @returns the rows; or `csv-broken` with the line, `file-too-long`, or `import-stopped`.
 */
export async function readCsvSlices(
  text: string,
  separator: Separator,
  signal: AbortSignal,
  onRows: (rows: number) => void,
): Promise<Result<readonly string[][], Problem>> {
  const parser = parse({
    bom: true,
    delimiter: separator,
    relax_column_count: true,
    skip_empty_lines: false,
    max_record_size: longestRow,
  });
  const rows: string[][] = [];
  const faults: unknown[] = [];
  parser.on('readable', () => {
    for (let row: unknown = parser.read(); row !== null; row = parser.read()) rows.push(row as string[]);
  });
  parser.on('error', (error) => faults.push(error));
  const ended = new Promise<void>((resolve) => {
    parser.on('end', resolve);
    parser.on('close', resolve);
  });
  for (let at = 0; at < text.length && faults.length === 0; at += sliceLength) {
    parser.write(text.slice(at, at + sliceLength));
    await setImmediate();
    if (signal.aborted) {
      parser.destroy();
      return fail({ code: 'prices', fault: { what: 'import-stopped' } });
    }
    if (rows.length > mostRows) {
      parser.destroy();
      return fail({ code: 'prices', fault: { what: 'file-too-long', of: 'rows', most: mostRows } });
    }
    onRows(rows.length);
  }
  if (faults.length === 0) parser.end();
  await ended;
  const [broken] = faults;
  if (broken !== undefined) {
    if (broken instanceof CsvError) return fail(brokenCsv(broken));
    throw broken instanceof Error ? broken : new Error('the reader of CSV failed');
  }
  if (rows.some((row) => row.length > mostColumns))
    return fail({ code: 'prices', fault: { what: 'file-too-long', of: 'columns', most: mostColumns } });
  return ok(rows);
}

/** The sign that parts the cells: the one that stands most evenly in the first lines, outside of quotes. */
export function guessSeparator(text: string): Separator {
  const lines = text
    .slice(0, 20_000)
    .split(/\r?\n|\r/)
    .slice(0, 20)
    .map((line) => line.replace(/"[^"]*"/g, ''))
    .filter((line) => line.trim() !== '');
  let best: Separator = ',';
  let bestScore = 0;
  for (const separator of separators) {
    const counts = lines.map((line) => line.split(separator).length - 1);
    const common = counts.toSorted((a, b) => a - b)[Math.floor(counts.length / 2)] ?? 0;
    const score = common === 0 ? 0 : counts.filter((count) => count === common).length + common / 1000;
    if (score > bestScore) [best, bestScore] = [separator, score];
  }
  return best;
}
