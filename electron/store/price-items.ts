import { mostItems, type PriceEntries } from '../../core/pricing/price-changes.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { takeNumbers } from './counters.ts';
import type { WritableDb } from './database.ts';
import { priceEntriesOf, priceRow } from './price-rows.ts';
import { query } from './query.ts';

/** An item that goes onto the list; `sequence` is its place where it stood there before, null for the end. */
export type NewItem = { readonly item: PriceEntries; readonly sequence: number | null };

/** Rows of one statement: 20 columns each, well below the parameters that SQLite takes. */
const rowsAtOnce = 500;

/** Adds items to the list; none of them where one's id is taken, or where the list would be too long. */
export function addItems(db: WritableDb, items: readonly NewItem[]): Result<undefined, Problem> {
  const ids = new Set(db.rows(query.selectFrom('price_items').select('id')).map(({ id }) => id));
  for (const { item } of items) {
    if (ids.has(item.id)) return fail({ code: 'prices', fault: { what: 'id-taken', id: item.id } });
    ids.add(item.id);
  }
  if (ids.size > mostItems)
    return fail({ code: 'prices', fault: { what: 'list-full', items: ids.size, most: mostItems } });
  let next = takeNumbers(db, 'price-item', items.filter(({ sequence }) => sequence === null).length);
  const rows = items.map(({ item, sequence }) => {
    const place = sequence ?? next;
    if (sequence === null) next += 1;
    return { ...priceRow(item), id: item.id, sequence: place };
  });
  for (let at = 0; at < rows.length; at += rowsAtOnce)
    db.run(query.insertInto('price_items').values(rows.slice(at, at + rowsAtOnce)));
  return ok(undefined);
}

/** Takes an item off the list that was added by mistake; one with a price stays, since estimates may stand on it. */
export function removeItem(db: WritableDb, itemId: string): Result<NewItem, Problem> {
  const row = db.row(query.selectFrom('price_items').selectAll().where('id', '=', itemId));
  if (row === undefined) return fail({ code: 'not-found', what: 'price item' });
  const priced = db.row(query.selectFrom('prices').select('sequence').where('item_id', '=', itemId).limit(1));
  if (priced !== undefined)
    return fail({
      code: 'prices',
      fault: { what: 'changed-since', item: row.description, entry: 'price' },
    });
  db.run(query.deleteFrom('price_items').where('id', '=', itemId));
  return ok({ item: priceEntriesOf(row), sequence: row.sequence });
}
