import * as fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { entriesOf } from '../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../core/pricing/price-list.ts';
import { changePrices, type StoredChange } from '../../electron/store/price-changes.ts';
import { listPrices } from '../../electron/store/prices.ts';
import { openShop, type Store } from '../../electron/store/open-shop.ts';
import { ok } from '../../core/result.ts';
import { anyPriceList } from '../pricing/any-price-list.ts';
import { priceItem } from '../pricing/make-price.ts';
import { temporaryFolder } from './temporary-folder.ts';

let store: Store | undefined;
afterEach(() => store?.close());

/** An empty shop file. */
function emptyShop(): Store {
  const opened = openShop(temporaryFolder());
  if (!opened.ok) throw new Error(opened.problem.code);
  store = opened.value;
  return opened.value;
}

/** Makes changes that must hold, and answers what undoes them. */
function change(shop: Store, changes: readonly StoredChange[]): readonly StoredChange[] {
  let undo: readonly StoredChange[] = [];
  const done = shop.write((db) => {
    const made = changePrices(db, changes);
    if (!made.ok) return made;
    undo = made.value;
    return ok({});
  });
  expect(done).toMatchObject({ ok: true });
  return undo;
}

const filling = (items: readonly PriceItem[]): readonly StoredChange[] => [
  ...items.map((item): StoredChange => ({ kind: 'add-item', item: entriesOf(item), sequence: null })),
  ...items.flatMap(({ id, prices }) =>
    prices.map((price): StoredChange => ({ kind: 'note-price', itemId: id, price })),
  ),
];

/** Changes that such a list can take, as a person makes them one after another. */
function changesOf(
  items: readonly PriceItem[],
  picks: readonly (readonly [number, number])[],
): StoredChange[] {
  const now = items.map(entriesOf);
  return picks.map(([what, which]): StoredChange => {
    const place = which % items.length;
    const item = now[place];
    if (item === undefined) throw new Error('the list is empty');
    const to = { ...item, minimumPack: what + 1, description: `${what} and ${which}`, supplier: '' };
    if (what % 2 === 1) now[place] = to;
    const price = {
      priceUsd: String(what),
      observedOn: '2026-05-01',
      source: 'list',
      validUntil: null,
    } as const;
    return what % 2 === 0
      ? { kind: 'note-price', itemId: item.id, price }
      : { kind: 'entries', from: item, to };
  });
}

describe('changes of the price list', () => {
  test('are taken back to the letter, however many there were, and can be made again', () => {
    const shop = emptyShop();
    fc.assert(
      fc.property(
        anyPriceList,
        fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 12 }),
        (items, picks) => {
          const emptied = shop.read(listPrices);
          const fill = change(shop, filling(items));
          const filled = shop.read(listPrices);
          const undo = change(shop, changesOf(items, picks));
          const changed = shop.read(listPrices);
          const redo = change(shop, undo);
          expect(shop.read(listPrices)).toEqual(filled);
          const undoAgain = change(shop, redo);
          expect(shop.read(listPrices)).toEqual(changed);
          change(shop, undoAgain);
          change(shop, fill);
          expect(shop.read(listPrices)).toEqual(emptied);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('a price that is taken back out of the middle goes back to its place', () => {
    const shop = emptyShop();
    const entries = entriesOf(priceItemNamed('a'));
    change(shop, [
      { kind: 'add-item', item: entries, sequence: null },
      ...['1', '2', '3'].map(
        (usd): StoredChange => ({ kind: 'note-price', itemId: 'a', price: priceOf(usd) }),
      ),
    ]);
    const undo = change(shop, [{ kind: 'take-back', itemId: 'a', price: priceOf('2') }]);
    expect(shop.read(listPrices)[0]?.prices.map(({ priceUsd }) => priceUsd)).toEqual(['1', '3']);
    change(shop, undo);
    expect(shop.read(listPrices)[0]?.prices.map(({ priceUsd }) => priceUsd)).toEqual(['1', '2', '3']);
  });

  test('an item that has got a price since it was added is not taken off the list', () => {
    const shop = emptyShop();
    const undo = change(shop, [{ kind: 'add-item', item: entriesOf(priceItemNamed('a')), sequence: null }]);
    change(shop, [
      {
        kind: 'note-price',
        itemId: 'a',
        price: { priceUsd: '1', observedOn: '2026-05-01', source: 'list', validUntil: null },
      },
    ]);
    expect(shop.write((db) => changePrices(db, undo))).toMatchObject({
      ok: false,
      problem: { fault: { what: 'changed-since', entry: 'price' } },
    });
  });
});

function priceItemNamed(id: string): PriceItem {
  return priceItem({ id, unit: 'each' });
}

function priceOf(priceUsd: string) {
  return { priceUsd, observedOn: '2026-05-01', source: 'list', validUntil: null } as const;
}
