import writeXlsxFile, { type SheetData } from 'write-excel-file/node';
import type { PriceItem } from '../../core/pricing/price-list.ts';
import { priceColumns, type PriceColumn } from '../../core/pricing/price-cells.ts';
import { writePriceRows } from '../../core/pricing/price-csv.ts';

/** Columns of a workbook that hold numbers, and how their cells show them. */
const numbers: ReadonlyMap<PriceColumn, string> = new Map([
  ['length_ft', '0.####'],
  ['package_lb', '0.####'],
  ['package_count', '#,##0'],
  ['width_in', '0.####'],
  ['length_in', '0.####'],
  ['thickness_in', '0.####'],
  ['minimum_pack', '#,##0'],
  ['price_usd', '#,##0.00####'],
]);
const days: ReadonlySet<PriceColumn> = new Set(['observed_on', 'valid_until']);
const wide: ReadonlySet<PriceColumn> = new Set(['description', 'notes', 'supplier', 'grade', 'nail']);

/**
 * Writes the price list as a workbook: the columns of the CSV file, numbers as numbers and days as days, the first row
 * frozen. A text that a spreadsheet might run as a formula gets an apostrophe before it, as in the CSV file.
 */
export async function writePriceWorkbook(items: readonly PriceItem[]): Promise<Uint8Array> {
  const [, ...rows] = writePriceRows(items);
  const header = priceColumns.map((column) => ({ value: column, fontWeight: 'bold' as const }));
  const data: SheetData = [
    header,
    ...rows.map((row) => priceColumns.map((column, index) => cellOf(column, row[index] ?? ''))),
  ];
  return writeXlsxFile(data, {
    sheet: 'Price list',
    stickyRowsCount: 1,
    columns: priceColumns.map((column) => ({ width: wide.has(column) ? 32 : 13 })),
  }).toBuffer();
}

function cellOf(column: PriceColumn, text: string): SheetData[number][number] {
  if (text === '') return null;
  const format = numbers.get(column);
  if (format !== undefined) return { value: Number(text), type: Number, format };
  if (days.has(column)) return { value: new Date(`${text}T00:00:00Z`), type: Date, format: 'yyyy-mm-dd' };
  return { value: withoutControls(text), type: String };
}

/** A workbook is XML, which has no place for control characters. */
function withoutControls(text: string): string {
  // oxlint-disable-next-line no-control-regex
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
}
