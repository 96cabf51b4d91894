import type { PriceItem } from './price-list.ts';

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
  'species',
  'minimum_pack',
  'notes',
  'price_usd',
  'observed_on',
  'source',
  'valid_until',
] as const;
export type PriceColumn = (typeof priceColumns)[number];

/** One row of a price list file, by column. */
export type Cells = Readonly<Record<PriceColumn, string>>;

/** Columns that hold free text, which is kept as it stands; the others are trimmed. */
const textColumns: ReadonlySet<PriceColumn> = new Set([
  'description',
  'supplier',
  'section',
  'grade',
  'nail',
  'species',
  'notes',
]);

/** What a spreadsheet takes for the start of a formula. */
const formulaStart = /^'*[=+\-@\t\r]/;

/** Puts an apostrophe before what a spreadsheet would run; one that stands there already gets another. */
export function guarded(cell: string): string {
  return formulaStart.test(cell) ? `'${cell}` : cell;
}

/** Takes the apostrophe off again. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && formulaStart.test(cell) ? cell.slice(1) : cell;
}

/** The cells of a row by column, guards taken off; a column that the file lacks is blank. */
export function cellsOf(names: readonly string[], raw: readonly string[]): Cells {
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
    species: cell('species'),
    minimum_pack: cell('minimum_pack'),
    notes: cell('notes'),
    price_usd: cell('price_usd'),
    observed_on: cell('observed_on'),
    source: cell('source'),
    valid_until: cell('valid_until'),
  };
}

/** The cells of an item that do not speak of one price. */
export function itemCells(
  item: PriceItem,
): Omit<Cells, 'price_usd' | 'observed_on' | 'source' | 'valid_until'> {
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
    species: item.species,
    minimum_pack: text(item.minimumPack),
    notes: item.notes,
  };
}

function text(value: number | null): string {
  return value === null ? '' : String(value);
}
