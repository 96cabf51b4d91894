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
  return takeNumbers(db, name, 1);
}

/** Takes the next so many numbers of a counter at once, and answers the first of them. */
export function takeNumbers(db: WritableDb, name: CounterName, count: number): number {
  const row = db.row(query.selectFrom('counters').select('last').where('name', '=', name));
  const last = row?.last ?? 0;
  if (count === 0) return last + 1;
  db.run(
    row === undefined
      ? query.insertInto('counters').values({ name, last: last + count })
      : query
          .updateTable('counters')
          .set({ last: last + count })
          .where('name', '=', name),
  );
  return last + 1;
}
