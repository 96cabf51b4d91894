import { readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { computeJob } from '../../core/job/compute-job.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import {
  basketSteps,
  type BasketLine,
  type MaterialBasket,
} from '../../core/pricing/history/material-basket.ts';
import { priceRisk } from '../../core/pricing/history/price-risk.ts';
import { priceSteps } from '../../core/pricing/history/price-steps.ts';
import { usd, zeroUsd } from '../../core/units/money.ts';
import { addDays } from '../../core/units/civil-date.ts';
import { getPriceItem, listPricesOn } from '../../electron/store/prices.ts';
import { openShop, type Store } from '../../electron/store/open-shop.ts';
import { sideBySide } from './measure.ts';
import { fillShop, largeShop, smallShop } from './store.ts';

/** Materials of the basket that is drawn. */
const basketItems = 25;

/**
 * Times what is asked of a price history, in a shop with a million dated prices beside one with ten thousand: the list as of a
 * day long past, one item's chart, a basket's chart with how far it moved, and the sample job priced anew on a past day.
 * @returns medians and their ratios, large over small. [ms]
 */
export async function timePriceHistory(): Promise<Readonly<Record<string, number>>> {
  const folders = { large: fillShop(largeShop), small: fillShop(smallShop) };
  const stores = { large: opened(folders.large), small: opened(folders.small) };
  try {
    const times = await sideBySide({ ...works('large', stores.large), ...works('small', stores.small) }, 5);
    return Object.fromEntries(
      ['asOf', 'itemChart', 'basketChart', 'rePrice'].flatMap((what) => {
        const [large, small] = [times[`large ${what}`] ?? Number.NaN, times[`small ${what}`] ?? Number.NaN];
        return [
          [`${what}Ms`, round(large)],
          [`${what}SmallMs`, round(small)],
          [`${what}Ratio`, round(large / small)],
        ];
      }),
    );
  } finally {
    for (const store of Object.values(stores)) store.close();
    for (const folder of Object.values(folders)) rmSync(folder, { recursive: true, force: true });
  }
}

function works(name: string, store: Store): Readonly<Record<string, () => unknown>> {
  const ids = Array.from({ length: basketItems }, (_, at) => `item-${at * 7}`);
  const basket: MaterialBasket = { lines: ids.map(lineOf), fixedUsd: zeroUsd, fixed: [] };
  const sample = sampleJob();
  return {
    [`${name} asOf`]: () => store.read((db) => listPricesOn(db, '2019-06-30')),
    [`${name} itemChart`]: () => {
      const item = store.read((db) => getPriceItem(db, 'item-7'));
      return item === undefined ? [] : priceSteps(item);
    },
    [`${name} basketChart`]: () => {
      const items = store.read((db) => ids.flatMap((id) => getPriceItem(db, id) ?? []));
      const steps = basketSteps(basket, items);
      return priceRisk(steps, steps.at(-1)?.from ?? '2025-12-31', 15);
    },
    [`${name} rePrice`]: () => {
      // The shop's own list of that day with the sample's items in it: what pricing a job anew has to read and to reckon.
      const ofDay = store.read((db) => listPricesOn(db, addDays(sample.asOf, -7)));
      const priced = computeJob({ ...sample, priceList: [...sample.priceList, ...ofDay] });
      if (!priced.ok) throw new Error(JSON.stringify(priced.problem));
      return priced.value;
    },
  };
}

function lineOf(itemId: string): BasketLine {
  return { lineId: itemId, description: itemId, itemId, quantity: '4', unit: 'each', costUsd: usd(0) };
}

function sampleJob() {
  const file = readJobFile(
    readFileSync(fileURLToPath(new URL('../../fixtures/sample-job.json', import.meta.url)), 'utf8'),
  );
  if (!file.ok) throw new Error(JSON.stringify(file.problem));
  return file.value;
}

function opened(folder: string): Store {
  const store = openShop(folder);
  if (!store.ok) throw new Error(store.problem.code);
  return store.value;
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}
