import type { IndexValue } from '../../core/pricing/history/index-series.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** Every index series with its months in order. */
export function listIndexes(db: ReadableDb): { series: string; values: IndexValue[] }[] {
  const rows = db.rows(query.selectFrom('index_values').selectAll().orderBy('series').orderBy('month'));
  return [...Map.groupBy(rows, ({ series }) => series)].map(([series, ofSeries]) => ({
    series,
    values: ofSeries.map(({ month, value }) => ({ month, value })),
  }));
}

/** Takes months into a series; answers how many said something else before. */
export function putIndexValues(db: WritableDb, series: string, values: readonly IndexValue[]): number {
  const before = new Map(
    db
      .rows(query.selectFrom('index_values').selectAll().where('series', '=', series))
      .map(({ month, value }) => [month, value]),
  );
  let changed = 0;
  for (const { month, value } of values) {
    const old = before.get(month);
    if (old === value) continue;
    if (old !== undefined) changed += 1;
    db.run(
      old === undefined
        ? query.insertInto('index_values').values({ series, month, value })
        : query
            .updateTable('index_values')
            .set({ value })
            .where('series', '=', series)
            .where('month', '=', month),
    );
  }
  return changed;
}

/** Drops a series; answers whether there was one of that name. */
export function removeIndex(db: WritableDb, series: string): boolean {
  return db.run(query.deleteFrom('index_values').where('series', '=', series)) > 0;
}
