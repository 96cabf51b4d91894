import type { priceHistoryCommands } from '../../core/contract/price-history-commands.ts';
import { readIndexSeries } from '../../core/pricing/history/index-series.ts';
import { priceChangesSince } from '../../core/pricing/history/price-changes-since.ts';
import { supplierSpreads } from '../../core/pricing/history/supplier-spread.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { listIndexes, putIndexValues, removeIndex } from '../store/index-values.ts';
import { getPriceItem, listPricesOn } from '../store/prices.ts';
import { getSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { readCsv } from './csv-text.ts';

/** What prices did over time. */
export function priceHistoryHandlers(context: Context): Pick<Handlers, keyof typeof priceHistoryCommands> {
  const { store } = context;
  return {
    'prices.histories': ({ itemIds }) =>
      ok(store.read((db) => [...new Set(itemIds)].flatMap((itemId) => getPriceItem(db, itemId) ?? []))),
    'prices.changesSince': ({ since }) =>
      store.read((db) => {
        const today = context.today();
        return ok([...priceChangesSince(listPricesOn(db, since), listPricesOn(db, today), since, today)]);
      }),
    'prices.spread': ({ on }) =>
      store.read((db) => {
        const { priceStaleDays } = getSettings(db).settings.money;
        return ok(
          supplierSpreads(listPricesOn(db, on), on, priceStaleDays).map((spread) => ({
            ...spread,
            offers: [...spread.offers],
          })),
        );
      }),
    'prices.indexes': () => ok(store.read(listIndexes)),
    'prices.importIndex': ({ series, text }) => {
      const table = readCsv(text);
      if (!table.ok) return table;
      const read = readIndexSeries([table.value.header, ...table.value.rows]);
      if (!read.ok) return read;
      return store.write((db) =>
        ok({ months: read.value.length, changed: putIndexValues(db, series, read.value) }),
      );
    },
    'prices.removeIndex': ({ series }) =>
      store.write((db) =>
        removeIndex(db, series) ? ok({}) : fail({ code: 'not-found', what: 'index series' }),
      ),
  };
}
