import { fail, ok } from '../../core/result.ts';
import { firstMonthFirstDate, readPriceRows, writePriceRows } from '../../core/pricing/price-csv.ts';
import { entriesOf } from '../../core/pricing/price-changes.ts';
import type { Handlers } from '../handlers.ts';
import type { StoredChange } from '../store/price-changes.ts';
import {
  addPrices,
  getPriceItem,
  hasPriceItem,
  listPrices,
  listPricesOn,
  putPriceItem,
  removePrice,
} from '../store/prices.ts';
import type { Context } from './context.ts';
import { readCsv, writeCsv } from './csv-text.ts';
import type { PriceSteps } from './price-steps.ts';

type PriceCommands =
  | 'prices.list'
  | 'prices.ofItem'
  | 'prices.saveItem'
  | 'prices.observe'
  | 'prices.removeObservation'
  | 'prices.importCsv'
  | 'prices.exportCsv';

/** The shop's price list. */
export function priceHandlers(context: Context, steps: PriceSteps): Pick<Handlers, PriceCommands> {
  const { store } = context;
  return {
    'prices.list': ({ on }) =>
      ok([
        ...store.read((db) =>
          on === undefined ? listPrices(db) : listPricesOn(db, on === 'today' ? context.today() : on),
        ),
      ]),
    'prices.ofItem': ({ itemId }) => {
      const item = store.read((db) => getPriceItem(db, itemId));
      return item === undefined ? fail({ code: 'not-found', what: 'price item' }) : ok(item);
    },
    'prices.saveItem': ({ item }) =>
      store.write((db) => {
        putPriceItem(db, item);
        return ok({});
      }),
    'prices.observe': ({ itemId, observation }) =>
      store.write((db) => {
        if (!hasPriceItem(db, itemId)) return fail({ code: 'not-found', what: 'price item' });
        addPrices(db, itemId, [observation]);
        return ok({});
      }),
    'prices.removeObservation': ({ itemId, observation }) =>
      store.write((db) =>
        removePrice(db, itemId, observation) ? ok({}) : fail({ code: 'not-found', what: 'price' }),
      ),
    'prices.importCsv': ({ text }) => {
      const table = readCsv(text);
      if (!table.ok) return table;
      const items = readPriceRows(table.value.header, table.value.rows);
      if (!items.ok) return items;
      const monthFirst = firstMonthFirstDate(table.value.header, table.value.rows) ?? null;
      return store.write((db) => {
        const stored = new Map(listPricesOn(db, context.today()).map((item) => [item.id, entriesOf(item)]));
        const changes = items.value.flatMap(({ prices: _prices, ...to }): StoredChange[] => {
          const from = stored.get(to.id);
          return [
            from === undefined
              ? { kind: 'add-item', item: to, sequence: null }
              : { kind: 'entries', from, to },
          ];
        });
        const notes = items.value.flatMap(({ id, prices }) =>
          prices.map((price): StoredChange => ({ kind: 'note-price', itemId: id, price })),
        );
        const done = steps.change(db, [...changes, ...notes]);
        if (!done.ok) return done;
        const { stepId, changed } = done.value;
        return ok({ stepId, items: items.value.length, prices: changed - changes.length, monthFirst });
      });
    },
    'prices.exportCsv': () => {
      const rows = writePriceRows(store.read(listPrices));
      return ok({ fileName: `price-list-${context.today()}.csv`, text: writeCsv(rows) });
    },
  };
}
