import type { z } from 'zod';
import type { Problem } from '../problems/problem.ts';
import { entryProblems } from '../job/read-job-file.ts';
import { problemSentence } from '../problems/sentence.ts';
import { shortened } from '../problems/shortened.ts';
import { fail, ok, type Result } from '../result.ts';
import { isMonthFirst, readDay } from '../units/written-date.ts';
import { cellsOf, guarded, itemCells, priceColumns, type Cells, type PriceColumn } from './price-cells.ts';
import { priceItemSchema, type PriceItem, type PriceObservation } from './price-list.ts';

const neededColumns = ['id', 'category', 'description', 'unit', 'price_usd', 'observed_on'] as const;

/**
 * Reads the rows of a price list file, all or nothing. Rows of one id are prices of one item and agree in everything
 * else; a row without price_usd and observed_on is an item that has no price yet. Blank cells take the default. Days are
 * read as `2026-04-30` or as a spreadsheet of the United States writes them, month first: `4/30/2026`.
 * @param header - names of the columns, in any order; only the needed ones must be there.
 * @param rows - cells as text, without the header. Row 2 is the first, as a spreadsheet counts.
 * @returns items in the order of their first rows; or `csv-columns`, `csv-no-rows`, or `csv-row` with row and
 * column.
 */
export function readPriceRows(
  header: readonly string[],
  rows: readonly (readonly string[])[],
): Result<readonly PriceItem[], Problem> {
  const names = header.map(plainName);
  const missing = neededColumns.filter((name) => !names.includes(name));
  const unknown = names.filter(
    (name, index) => !priceColumns.some((column) => column === name) || names.indexOf(name) !== index,
  );
  if (missing.length > 0 || unknown.length > 0) return fail({ code: 'csv-columns', missing, unknown });

  if (rows.length === 0) return fail({ code: 'csv-no-rows' });

  const firstRows = new Map<
    string,
    { readonly cells: Cells; readonly row: number; readonly item: PriceItem }
  >();
  const prices = new Map<string, PriceObservation[]>();
  for (const [index, raw] of rows.entries()) {
    const row = index + 2;
    if (raw.length !== names.length)
      return fail({
        code: 'csv-broken',
        row,
        detail: `${raw.length} cells under ${names.length} columns`,
      });
    const cells = cellsOf(names, raw);
    const read = readRow(cells, row);
    if (!read.ok) return read;
    const known = firstRows.get(read.value.id);
    if (known === undefined) {
      firstRows.set(read.value.id, { cells, row, item: read.value });
      prices.set(read.value.id, [...read.value.prices]);
      continue;
    }
    const differs = itemColumns.find((column) => known.cells[column].trim() !== cells[column].trim());
    if (differs !== undefined)
      return fail({
        code: 'csv-row',
        row,
        column: differs,
        detail: `It differs from row ${known.row}, which has the same id. Make them agree, or give one another id.`,
      });
    prices.get(read.value.id)?.push(...read.value.prices);
  }
  return ok([...firstRows.values()].map(({ item }) => ({ ...item, prices: prices.get(item.id) ?? [] })));
}

/**
 * Writes a price list as rows, the header first. A cell that a spreadsheet would run as a formula gets a leading
 * apostrophe, which `readPriceRows` takes off again.
 */
export function writePriceRows(items: readonly PriceItem[]): string[][] {
  return [
    [...priceColumns],
    ...items.flatMap((item) => {
      const own = itemCells(item);
      const observations = item.prices.length === 0 ? [undefined] : item.prices;
      return observations.map((observation) => {
        const cells: Cells = {
          ...own,
          price_usd: observation?.priceUsd ?? '',
          observed_on: observation?.observedOn ?? '',
          source: observation?.source ?? '',
          valid_until: observation?.validUntil ?? '',
        };
        return priceColumns.map((column) => guarded(cells[column]));
      });
    }),
  ];
}

/** The first day of the file that was read month first, as it stands there; undefined where there is none. */
export function firstMonthFirstDate(
  header: readonly string[],
  rows: readonly (readonly string[])[],
): string | undefined {
  const days = header.flatMap((name, index) =>
    ['observed_on', 'valid_until'].includes(plainName(name)) ? [index] : [],
  );
  return rows.flatMap((row) => days.map((index) => row[index]?.trim() ?? '')).find(isMonthFirst);
}

function plainName(name: string): string {
  return name
    .replace(/^\uFEFF/, '')
    .trim()
    .toLowerCase();
}

const priceOnlyColumns: ReadonlySet<PriceColumn> = new Set([
  'price_usd',
  'observed_on',
  'source',
  'valid_until',
]);
const itemColumns = priceColumns.filter((column) => column !== 'id' && !priceOnlyColumns.has(column));

function readRow(cells: Cells, row: number): Result<PriceItem, Problem> {
  const priced = cells.price_usd !== '' || cells.observed_on !== '';
  const raw = {
    id: cells.id,
    category: cells.category,
    description: cells.description,
    unit: cells.unit,
    supplier: cells.supplier,
    ...(cells.taxable === '' ? {} : { taxable: yesOrNo(cells.taxable) }),
    ...(cells.retired === '' ? {} : { retired: yesOrNo(cells.retired) }),
    section: cells.section,
    grade: cells.grade,
    lengthFt: numberOrNull(cells.length_ft),
    nail: cells.nail,
    packageLb: numberOrNull(cells.package_lb),
    packageCount: numberOrNull(cells.package_count),
    widthIn: cells.width_in === '' ? null : cells.width_in,
    lengthIn: cells.length_in === '' ? null : cells.length_in,
    thicknessIn: cells.thickness_in === '' ? null : cells.thickness_in,
    species: cells.species,
    ...(cells.minimum_pack === '' ? {} : { minimumPack: numberOrNull(cells.minimum_pack) }),
    notes: cells.notes,
    prices: priced
      ? [
          {
            priceUsd: cells.price_usd,
            observedOn: readDay(cells.observed_on),
            ...(cells.source === '' ? {} : { source: cells.source }),
            validUntil: cells.valid_until === '' ? null : readDay(cells.valid_until),
          },
        ]
      : [],
  };
  const read = priceItemSchema.safeParse(raw);
  return read.success ? ok(read.data) : fail(rowProblem(read.error.issues, raw, cells, row));
}

function rowProblem(issues: readonly z.core.$ZodIssue[], raw: unknown, cells: Cells, row: number): Problem {
  const [first] = entryProblems(issues, raw);
  const name = first?.field?.split('.').at(-1) ?? 'id';
  const column = columnOf[name] ?? name;
  const cell = priceColumns.find((known) => known === column);
  const detail =
    first === undefined
      ? 'It cannot be read.'
      : isDay(name)
        ? 'Write a day as 2026-04-30, or month first with the year in full, as 4/30/2026.'
        : first.code === 'entry-invalid'
          ? first.detail
          : problemSentence(first);
  return {
    code: 'csv-row',
    row,
    column,
    // What is not told as an entry repeats the cell in its own sentence.
    detail:
      cell === undefined || cells[cell] === '' || (first !== undefined && first.code !== 'entry-invalid')
        ? detail
        : `"${shortened(cells[cell])}": ${detail}`,
  };
}

const columnOf: Readonly<Record<string, PriceColumn>> = {
  lengthFt: 'length_ft',
  packageLb: 'package_lb',
  packageCount: 'package_count',
  widthIn: 'width_in',
  lengthIn: 'length_in',
  thicknessIn: 'thickness_in',
  minimumPack: 'minimum_pack',
  priceUsd: 'price_usd',
  observedOn: 'observed_on',
  validUntil: 'valid_until',
};

function isDay(name: string): boolean {
  return name === 'observedOn' || name === 'validUntil';
}

function yesOrNo(cell: string): boolean | string {
  if (/^(yes|true|1)$/i.test(cell)) return true;
  return /^(no|false|0)$/i.test(cell) ? false : cell;
}

/** A number, or the text itself, which the schema then refuses by name. */
function numberOrNull(cell: string): number | string | null {
  if (cell === '') return null;
  return /^(\d+\.?\d*|\.\d+)$/.test(cell) ? Math.min(Number(cell), Number.MAX_VALUE) : cell;
}
