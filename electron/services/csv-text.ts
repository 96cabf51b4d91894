import { CsvError, parse } from 'csv-parse/sync';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';

export type CsvTable = { readonly header: string[]; readonly rows: string[][] };

/**
 * Reads CSV text as a header and rows of plain text: nothing is guessed to be a number, and no cell can name a property.
 * @returns the table; or `csv-broken` with the line where reading stopped.
 */
export function readCsv(text: string): Result<CsvTable, Problem> {
  try {
    const [header, ...rows] = parse(text, { bom: true, skip_empty_lines: true, columns: false });
    return header === undefined
      ? fail({ code: 'csv-broken', row: 1, detail: 'the file is empty' })
      : ok({ header: header.map((title) => title.trim()), rows });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return fail(brokenCsv(error));
  }
}

/** What is wrong with CSV text, and in which line. */
export function brokenCsv(error: { readonly code: string }): Problem {
  const line = (error as { readonly lines?: unknown }).lines;
  return {
    code: 'csv-broken',
    row: typeof line === 'number' ? line : 1,
    detail: details[error.code] ?? 'it is not well-formed',
  };
}

const details: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED: 'a quotation mark is not closed',
  CSV_INVALID_CLOSING_QUOTE: 'text follows a closing quotation mark',
  INVALID_OPENING_QUOTE: 'a quotation mark stands inside a cell that does not begin with one',
  CSV_MAX_RECORD_SIZE: 'a row goes on without an end; is a quotation mark open',
  CSV_RECORD_INCONSISTENT_FIELDS_LENGTH: 'it has more or fewer cells than the first row',
};

/** Writes rows as CSV text, every cell quoted, lines ended as spreadsheets expect. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\r\n`).join('');
}
