import type { WritableDb } from './database.ts';
import { query } from './query.ts';

/** What is numbered in the order it comes in. */
export type CounterName =
  | 'customer'
  | 'change'
  | 'price-item'
  | 'price'
  | 'estimate'
  | 'cost-entry'
  | 'payment'
  | 'stock';

/** Takes the next number of a counter, 1 first; numbers are given once and have no gaps when all goes well. */
export function takeNumber(db: WritableDb, name: CounterName): number {
  const row = db.row(query.selectFrom('counters').select('last').where('name', '=', name));
  const next = (row?.last ?? 0) + 1;
  db.run(
    row === undefined
      ? query.insertInto('counters').values({ name, last: next })
      : query.updateTable('counters').set({ last: next }).where('name', '=', name),
  );
  return next;
}
