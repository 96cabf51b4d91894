import type { z } from 'zod';
import type { Problem } from '../problems/problem.ts';
import { entryProblems } from '../job/read-job-file.ts';
import { problemSentence } from '../problems/sentence.ts';
import { fail, ok, type Result } from '../result.ts';
import { priceItemSchema, type PriceItem, type PriceObservation } from './price-list.ts';

/** The columns of a price list file, in the order of the export. One row is one price of one item. */
export const priceColumns = [
  'id',
  'category',
  'description',
  'unit',
  'supplier',
  'taxable',
  'retired',
  'section',
  'grade',
  'length_ft',
  'nail',
  'package_lb',
  'package_count',
  'width_in',
  'length_in',
  'thickness_in',
  'price_usd',
  'observed_on',
  'source',
  'valid_until',
] as const;
export type PriceColumn = (typeof priceColumns)[number];

const neededColumns = ['id', 'category', 'description', 'unit', 'price_usd', 'observed_on'] as const;

type Cells = Readonly<Record<PriceColumn, string>>;

/**
 * Reads the rows of a price list file, all or nothing. Rows of one id are prices of one item and agree in everything
 * else; a row without price_usd and observed_on is an item that has no price yet. Blank cells take the default.
 * @param header - names of the columns, in any order; only the needed ones must be there.
 * @param rows - cells as text, without the header. Row 2 is the first, as a spreadsheet counts.
 * @returns items in the order of their first rows; or `csv-columns`, or `csv-row` with row and column.
 */
export function readPriceRows(
  header: readonly string[],
  rows: readonly (readonly string[])[],
): Result<readonly PriceItem[], Problem> {
  const names = header.map((name) =>
    name
      .replace(/^\uFEFF/, '')
      .trim()
      .toLowerCase(),
  );
  const missing = neededColumns.filter((name) => !names.includes(name));
  const unknown = names.filter(
    (name, index) => !priceColumns.some((column) => column === name) || names.indexOf(name) !== index,
  );
  if (missing.length > 0 || unknown.length > 0) return fail({ code: 'csv-columns', missing, unknown });

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

const priceOnlyColumns: ReadonlySet<PriceColumn> = new Set([
  'price_usd',
  'observed_on',
  'source',
  'valid_until',
]);
const itemColumns = priceColumns.filter((column) => column !== 'id' && !priceOnlyColumns.has(column));

/** Columns that hold free text, which is kept as it stands; the others are trimmed. */
const textColumns: ReadonlySet<PriceColumn> = new Set([
  'description',
  'supplier',
  'section',
  'grade',
  'nail',
]);

/** What a spreadsheet takes for the start of a formula. */
const formulaStart = /^'*[=+\-@\t\r]/;

function guarded(cell: string): string {
  return formulaStart.test(cell) ? `'${cell}` : cell;
}

function unguarded(cell: string): string {
  return cell.startsWith("'") && formulaStart.test(cell) ? cell.slice(1) : cell;
}

function cellsOf(names: readonly string[], raw: readonly string[]): Cells {
  const cell = (column: PriceColumn): string => {
    const index = names.indexOf(column);
    const text = index < 0 ? '' : unguarded(raw[index] ?? '');
    return textColumns.has(column) ? text : text.trim();
  };
  return {
    id: cell('id'),
    category: cell('category'),
    description: cell('description'),
    unit: cell('unit'),
    supplier: cell('supplier'),
    taxable: cell('taxable'),
    retired: cell('retired'),
    section: cell('section'),
    grade: cell('grade'),
    length_ft: cell('length_ft'),
    nail: cell('nail'),
    package_lb: cell('package_lb'),
    package_count: cell('package_count'),
    width_in: cell('width_in'),
    length_in: cell('length_in'),
    thickness_in: cell('thickness_in'),
    price_usd: cell('price_usd'),
    observed_on: cell('observed_on'),
    source: cell('source'),
    valid_until: cell('valid_until'),
  };
}

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
    prices: priced
      ? [
          {
            priceUsd: cells.price_usd,
            observedOn: cells.observed_on,
            ...(cells.source === '' ? {} : { source: cells.source }),
            validUntil: cells.valid_until === '' ? null : cells.valid_until,
          },
        ]
      : [],
  };
  const read = priceItemSchema.safeParse(raw);
  return read.success ? ok(read.data) : fail(rowProblem(read.error.issues, raw, cells, row));
}

function rowProblem(issues: readonly z.core.$ZodIssue[], raw: unknown, cells: Cells, row: number): Problem {
  const [first] = entryProblems(issues.slice(0, 1), raw);
  const name = first?.field?.split('.').at(-1) ?? 'id';
  const column = columnOf[name] ?? name;
  const cell = priceColumns.find((known) => known === column);
  const detail =
    first === undefined
      ? 'It cannot be read.'
      : first.code === 'entry-invalid'
        ? first.detail
        : problemSentence(first);
  return {
    code: 'csv-row',
    row,
    column,
    detail: `${cell === undefined || cells[cell] === '' ? '' : `"${cells[cell]}": `}${detail}`,
  };
}

const columnOf: Readonly<Record<string, PriceColumn>> = {
  lengthFt: 'length_ft',
  packageLb: 'package_lb',
  packageCount: 'package_count',
  widthIn: 'width_in',
  lengthIn: 'length_in',
  thicknessIn: 'thickness_in',
  priceUsd: 'price_usd',
  observedOn: 'observed_on',
  validUntil: 'valid_until',
};

function yesOrNo(cell: string): boolean | string {
  if (/^(yes|true|1)$/i.test(cell)) return true;
  return /^(no|false|0)$/i.test(cell) ? false : cell;
}

/** A number, or the text itself, which the schema then refuses by name. */
function numberOrNull(cell: string): number | string | null {
  if (cell === '') return null;
  return /^(\d+\.?\d*|\.\d+)$/.test(cell) ? Number(cell) : cell;
}

function itemCells(item: PriceItem): Omit<Cells, 'price_usd' | 'observed_on' | 'source' | 'valid_until'> {
  return {
    id: item.id,
    category: item.category,
    description: item.description,
    unit: item.unit,
    supplier: item.supplier,
    taxable: item.taxable ? 'yes' : 'no',
    retired: item.retired ? 'yes' : 'no',
    section: item.section,
    grade: item.grade,
    length_ft: text(item.lengthFt),
    nail: item.nail,
    package_lb: text(item.packageLb),
    package_count: text(item.packageCount),
    width_in: text(item.widthIn),
    length_in: text(item.lengthIn),
    thickness_in: text(item.thicknessIn),
  };
}

function text(value: number | null): string {
  return value === null ? '' : String(value);
}
