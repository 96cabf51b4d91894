import { problemSentence } from '../../problems/sentence.ts';
import { changedEntries, entriesOf, type PriceChange, type PriceEntries } from '../price-changes.ts';
import type { PriceItem } from '../price-list.ts';
import { heldPrice, readCell, typedPrice, writeCell, type CellColumn } from './table-cells.ts';

/** A cell that a paste changes. */
export type PastedCell = {
  readonly itemId: string;
  readonly description: string;
  readonly column: CellColumn;
  readonly from: string;
  readonly to: string;
};

/** A cell of the block that cannot be read, counted from 1 as it stands in the block. */
export type PasteFault = {
  readonly row: number;
  readonly description: string;
  readonly column: CellColumn;
  readonly typed: string;
  readonly detail: string;
};

/** What a paste does, before it is done. */
export type Paste = {
  readonly cells: readonly PastedCell[];
  readonly faults: readonly PasteFault[];
  /** Rows and columns of the block that lie beyond the table. */
  readonly rowsBeyond: number;
  readonly columnsBeyond: number;
  readonly changes: readonly PriceChange[];
};

/**
 * Lays a block from a spreadsheet into the table, from one cell on.
 * @param text - cells parted by tabs, rows by line breaks; a cell with either of them stands in quotes.
 * @param rows - the items as the table shows them, from the row of the first cell on.
 * @param columns - columns of the table from that of the first cell on; null for one that cannot be typed into.
 * @param today - the day of prices in the block.
 */
export function pasteBlock(
  text: string,
  rows: readonly PriceItem[],
  columns: readonly (CellColumn | null)[],
  today: string,
): Paste {
  const block = blockOf(text);
  const cells: PastedCell[] = [];
  const faults: PasteFault[] = [];
  const changes: PriceChange[] = [];
  for (const [index, line] of block.entries()) {
    const item = rows[index];
    if (item === undefined) break;
    const was = entriesOf(item);
    let entries: PriceEntries = was;
    const heldUsd = heldPrice(item, today)?.priceUsd ?? null;
    for (const [place, typed] of line.entries()) {
      const column = columns[place];
      if (column === undefined || column === null) continue;
      const told = { description: item.description, column };
      const read = readCell(column, typed, entries, heldUsd);
      if (!read.ok) faults.push({ row: index + 1, ...told, typed, detail: problemSentence(read.problem) });
      if (!read.ok || read.value === null) continue;
      const from = writeCell(column, item, today);
      const isPrice = read.value.kind === 'price';
      if (read.value.kind === 'entries') entries = read.value.to;
      else changes.push(typedPrice(item.id, read.value.priceUsd, today));
      const to = isPrice ? typed.trim() : writeCell(column, { ...entries, prices: [] }, today);
      cells.push({ itemId: item.id, ...told, from, to });
    }
    if (changedEntries(was, entries).length > 0) changes.push({ kind: 'entries', from: was, to: entries });
  }
  return {
    cells,
    faults,
    rowsBeyond: Math.max(0, block.length - rows.length),
    columnsBeyond: Math.max(0, Math.max(0, ...block.map((line) => line.length)) - columns.length),
    changes,
  };
}

/**
 * Reads a block as spreadsheets put it on the clipboard.
 * @returns rows of cells, e.g. two lines `a TAB b` -> two rows of two; the line break at the end begins no row.
 */
export function blockOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at <= text.length) {
    const { cell, next } = cellAt(text, at);
    row.push(cell);
    at = next;
    if (text[at] === '\t') {
      at += 1;
      continue;
    }
    rows.push(row);
    row = [];
    at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
    // The break behind the last row is not the start of another.
    if (at >= text.length) break;
  }
  return rows;
}

function cellAt(text: string, from: number): { readonly cell: string; readonly next: number } {
  const quoted = /^"((?:[^"]|"")*)"(?=[\t\r\n]|$)/.exec(text.slice(from, from + 5000));
  if (quoted !== null)
    return { cell: (quoted[1] ?? '').replaceAll('""', '"'), next: from + quoted[0].length };
  let next = from;
  while (next < text.length && !'\t\r\n'.includes(text[next] ?? '')) next += 1;
  return { cell: text.slice(from, next), next };
}
