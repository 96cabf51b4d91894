import { Decimal } from 'decimal.js';
import type { Problem } from '../../problems/problem.ts';
import { fail, ok, type Result } from '../../result.ts';
import { entriesOf, type EntryName, type PriceChange, type PriceEntries } from '../price-changes.ts';
import type { PriceItem, PriceObservation } from '../price-list.ts';
import { readEntryText, writeEntryText } from './entry-text.ts';
import { readNumber } from './written-number.ts';

/** A column of the table of prices that can be typed into: an entry of the item, or its price. */
export type CellColumn = EntryName | 'price';

const mostUsd = 1_000_000;

/** What a cell of the table holds, as one would type it; blank where there is nothing. */
export function writeCell(column: CellColumn, item: PriceItem, today: string): string {
  return column === 'price'
    ? (heldPrice(item, today)?.priceUsd ?? '')
    : writeEntryText(column, entriesOf(item));
}

/** What the text of a cell does to its item: other entries, or a price; null where it changes nothing. */
export type CellEffect =
  | { readonly kind: 'entries'; readonly to: PriceEntries }
  | { readonly kind: 'price'; readonly priceUsd: string };

/**
 * Reads what is typed or pasted into a cell of the table.
 * @param column - which cell.
 * @param text - e.g. `12 ft`, `$1,250.00`; a blank price leaves the item's prices as they are.
 * @param entries - the item, other cells of the same paste taken in.
 * @param heldUsd - the price that holds; null where there is none. [$/unit]
 */
export function readCell(
  column: CellColumn,
  text: string,
  entries: PriceEntries,
  heldUsd: string | null,
): Result<CellEffect | null, Problem> {
  if (column === 'price') return readPriceCell(text, heldUsd);
  const read = readEntryText(column, text);
  if (!read.ok) return read;
  const to = { ...entries, ...read.value };
  return ok(to[column] === entries[column] ? null : { kind: 'entries', to });
}

function readPriceCell(text: string, heldUsd: string | null): Result<CellEffect | null, Problem> {
  if (text.trim() === '') return ok(null);
  const read = readNumber(text, 'point');
  if (!read.ok) return fail({ code: 'money-unreadable', typed: text });
  const value = new Decimal(read.value);
  if (value.isNegative() || value.gt(mostUsd))
    return fail({ code: 'out-of-range', what: text.trim().slice(0, 40), least: '$0', most: '$1,000,000' });
  return ok(heldUsd !== null && value.eq(heldUsd) ? null : { kind: 'price', priceUsd: read.value });
}

/** The change of the list for a price that was typed into the table: seen today, on a list. */
export function typedPrice(itemId: string, priceUsd: string, today: string): PriceChange {
  return {
    kind: 'note-price',
    itemId,
    price: { priceUsd, observedOn: today, source: 'list', validUntil: null },
  };
}

/** The price of an item that holds today: of a list of today there is one at most, which may be of a later day. */
export function heldPrice(item: PriceItem, today: string): PriceObservation | undefined {
  return item.prices.findLast(({ observedOn }) => observedOn <= today);
}

/**
 * The list as it stands once changes are made, to be shown before the host has answered.
 * @param list - the list with the prices of today.
 */
export function withChanges(
  list: readonly PriceItem[],
  changes: readonly PriceChange[],
): readonly PriceItem[] {
  const changed = new Map<string, PriceItem>();
  const added: PriceItem[] = [];
  const byId = new Map(list.map((item) => [item.id, item]));
  const now = (id: string): PriceItem | undefined => changed.get(id) ?? byId.get(id);
  for (const change of changes) {
    if (change.kind === 'add-item') {
      const item = { ...change.item, prices: [] };
      byId.set(item.id, item);
      added.push(item);
      continue;
    }
    const item = now(change.kind === 'entries' ? change.to.id : change.itemId);
    if (item === undefined) continue;
    if (change.kind === 'entries') changed.set(item.id, { ...change.to, prices: item.prices });
    if (change.kind === 'note-price') {
      const isNewest = item.prices.every(({ observedOn }) => observedOn <= change.price.observedOn);
      changed.set(item.id, isNewest ? { ...item, prices: [change.price] } : item);
    }
  }
  return [...list, ...added].map((item) => changed.get(item.id) ?? item);
}
