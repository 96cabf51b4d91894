import type { PriceObservation } from '../../core/pricing/price-list.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { takeNumbers } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { priceObservationOf } from './price-rows.ts';
import { query } from './query.ts';

/** A price of an item, with its number in the order of the list. */
export type NumberedPrice = {
  readonly itemId: string;
  readonly price: PriceObservation;
  readonly sequence: number;
};

/** Rows of one statement: many, so that a long file is quick, and few enough for the parameters of SQLite. */
const rowsAtOnce = 500;

/** Adds prices under the numbers that they have. */
export function addNumberedPrices(db: WritableDb, prices: readonly NumberedPrice[]): void {
  for (let at = 0; at < prices.length; at += rowsAtOnce)
    db.run(
      query.insertInto('prices').values(
        prices.slice(at, at + rowsAtOnce).map(({ itemId, price, sequence }) => ({
          sequence,
          item_id: itemId,
          price_usd: price.priceUsd,
          observed_on: price.observedOn,
          source: price.source,
          valid_until: price.validUntil,
        })),
      ),
    );
}

/** Takes prices away by their numbers; false where one of them is not there. */
export function removeNumberedPrices(db: WritableDb, prices: readonly NumberedPrice[]): boolean {
  let removed = 0;
  for (let at = 0; at < prices.length; at += rowsAtOnce)
    removed += db.run(
      query.deleteFrom('prices').where(
        'sequence',
        'in',
        prices.slice(at, at + rowsAtOnce).map(({ sequence }) => sequence),
      ),
    );
  return removed === prices.length;
}

/**
 * Notes prices that are new, in their order.
 * @returns those that were, with their numbers.
 */
export function notePrices(
  db: WritableDb,
  notes: readonly PriceNote[],
): Result<readonly NumberedPrice[], Problem> {
  const known = knownItems(db, notes);
  if (notes.some(({ itemId }) => !known.has(itemId))) return fail({ code: 'not-found', what: 'price item' });
  const fresh = newPrices(db, notes);
  const first = takeNumbers(db, 'price', fresh.length);
  const numbered = fresh.map(({ itemId, price }, index) => ({ itemId, price, sequence: first + index }));
  addNumberedPrices(db, numbered);
  return ok(numbered);
}

function knownItems(db: ReadableDb, notes: readonly PriceNote[]): ReadonlySet<string> {
  const [only] = notes;
  const all = query.selectFrom('price_items').select('id');
  const rows = db.rows(notes.length === 1 && only !== undefined ? all.where('id', '=', only.itemId) : all);
  return new Set(rows.map(({ id }) => id));
}

/**
 * Which of some prices are new. Those of one item and day that its prices of that day already end with are not; nor is one
 * that says what the latest of its day says.
 * @returns the new ones in their order.
 */
function newPrices(db: ReadableDb, notes: readonly PriceNote[]): readonly PriceNote[] {
  const stored = sameDayPrices(db, notes);
  const given = new Map<string, PriceObservation[]>();
  for (const note of notes) push(given, dayOf(note), note.price);
  const known = new Set<string>();
  for (const [day, prices] of given) {
    const tail = (stored.get(day) ?? []).slice(-prices.length);
    if (tail.length === prices.length && tail.every((price, index) => saysTheSame(price, prices[index])))
      known.add(day);
  }
  const latest = new Map([...stored].map(([day, prices]) => [day, prices.at(-1)]));
  return notes.filter((note) => {
    const day = dayOf(note);
    if (known.has(day) || saysTheSame(note.price, latest.get(day))) return false;
    latest.set(day, note.price);
    return true;
  });
}

/** A price that is to be noted. */
export type PriceNote = { readonly itemId: string; readonly price: PriceObservation };

/** Above so many prices, those of their days are read at once instead of item by item. */
const manyNotes = 200;

/** The prices that stand on the list for the items and days of some prices, in their order. */
function sameDayPrices(
  db: ReadableDb,
  notes: readonly PriceNote[],
): ReadonlyMap<string, readonly PriceObservation[]> {
  const found = new Map<string, PriceObservation[]>();
  const all = query.selectFrom('prices').selectAll().orderBy('sequence');
  const asked = new Map(notes.map((note) => [dayOf(note), note]));
  const rows =
    notes.length > manyNotes
      ? [...new Set(notes.map(({ price }) => price.observedOn))].flatMap((day) =>
          db.rows(all.where('observed_on', '=', day)),
        )
      : [...asked.values()].flatMap(({ itemId, price }) =>
          db.rows(all.where('item_id', '=', itemId).where('observed_on', '=', price.observedOn)),
        );
  for (const row of rows) {
    const note = { itemId: row.item_id, price: priceObservationOf(row) };
    push(found, dayOf(note), note.price);
  }
  return found;
}

function dayOf({ itemId, price }: PriceNote): string {
  return `${itemId}\n${price.observedOn}`;
}

function push<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

function saysTheSame(a: PriceObservation, b: PriceObservation | undefined): boolean {
  return (
    b !== undefined && a.priceUsd === b.priceUsd && a.source === b.source && a.validUntil === b.validUntil
  );
}
