import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceSteps, stepOn } from '../../../core/pricing/history/price-steps.ts';
import { priceChangesSince } from '../../../core/pricing/history/price-changes-since.ts';
import { supplierSpreads } from '../../../core/pricing/history/supplier-spread.ts';
import { readIndexSeries, rebased } from '../../../core/pricing/history/index-series.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { addDays } from '../../../core/units/civil-date.ts';
import { priceItem } from '../make-price.ts';

const list = (price: string, on: string) => [
  priceItem({ id: 'a', unit: 'each', prices: [{ priceUsd: price, observedOn: on }] }),
];

const board = (id: string, supplier: string, unit: 'each' | 'MBF', priceUsd: string) =>
  priceItem({
    id,
    supplier,
    unit,
    section: '2x6',
    grade: 'No.2',
    lengthFt: 16,
    prices: [{ priceUsd, observedOn: '2026-03-01' }],
  });

const observation = fc.record({
  priceUsd: fc.integer({ min: 1, max: 9999 }).map(String),
  observedOn: fc.integer({ min: 0, max: 60 }).map((at) => addDays('2026-01-01', at)),
});

describe('the price of a day', () => {
  test('found by halving the history is the one that a look at every price finds', () => {
    fc.assert(
      fc.property(
        fc.array(observation, { maxLength: 30 }),
        fc.integer({ min: -5, max: 70 }),
        (prices, at) => {
          const item = priceItem({ unit: 'each', prices });
          const day = addDays('2026-01-01', at);
          const scanned = priceOn(item, day, 45);
          expect(stepOn(priceSteps(item), day)?.observation).toEqual(
            scanned.ok ? scanned.value.observation : undefined,
          );
        },
      ),
    );
  });
});

describe('what changed since a day', () => {
  test('names the item with both prices and the percent between them', () => {
    // 8.00 to 8.60 is 7.5 % by hand.
    const [change] = priceChangesSince(
      list('8', '2026-01-05'),
      list('8.60', '2026-03-01'),
      '2026-02-01',
      '2026-03-02',
    );
    expect(change).toMatchObject({ percent: '7.5', before: { priceUsd: '8' }, after: { priceUsd: '8.60' } });
  });

  test('leaves out a price that was asked again and stayed, and calls a first price new', () => {
    expect(
      priceChangesSince(list('8', '2026-01-05'), list('8.00', '2026-03-01'), '2026-02-01', '2026-03-02'),
    ).toEqual([]);
    const [first] = priceChangesSince(
      list('8', '2026-02-20'),
      list('8', '2026-02-20'),
      '2026-02-01',
      '2026-03-02',
    );
    expect(first).toMatchObject({ before: null, percent: null });
  });
});

describe('suppliers of the same thing', () => {
  test('are compared by the board, whatever unit they sell it by', () => {
    // A 2x6 of 16 ft holds 16 board feet, so $750 a thousand is $12.00 a board; $13.20 is 10 % more.
    const [spread] = supplierSpreads(
      [board('a', 'One Yard', 'each', '13.20'), board('b', 'Other Yard', 'MBF', '750')],
      '2026-03-10',
      45,
    );
    expect(spread?.spreadPercent).toBe('10.0');
    expect(spread?.offers.map(({ itemId, eachUsd }) => [itemId, eachUsd])).toEqual([
      ['b', '12'],
      ['a', '13.2'],
    ]);
  });

  test('are not told of a thing that one alone sells, and old prices are marked', () => {
    expect(supplierSpreads([board('a', 'One Yard', 'each', '13')], '2026-03-10', 45)).toEqual([]);
    const spreads = supplierSpreads(
      [board('a', 'One Yard', 'each', '13'), board('b', 'Other Yard', 'each', '13')],
      '2026-06-10',
      45,
    );
    expect(spreads[0]?.offers.every(({ stale }) => stale)).toBe(true);
  });
});

describe('an index of prices', () => {
  test('is read in each way of writing a month, a heading passed over', () => {
    const read = readIndexSeries([
      ['Month', 'Value'],
      ['2026-02', '101.5'],
      ['1/2026', '100'],
      ['Mar 2026', '102'],
      ['2026-04-15', '103'],
    ]);
    expect(read.ok && read.value.map(({ month, value }) => `${month} ${value}`)).toEqual([
      '2026-01 100',
      '2026-02 101.5',
      '2026-03 102',
      '2026-04 103',
    ]);
  });

  test.each([
    [['2026-13', '4'], 'no month'],
    [['2026-02-30', '4'], 'no month'],
    [['2026-02', '1,5'], 'no value above zero'],
    [['2026-02', '0'], 'no value above zero'],
    [['2026-01', '5'], 'twice'],
  ])('tells the row that cannot be read: %j', (row, words) => {
    const read = readIndexSeries([['2026-01', '100'], row]);
    expect(read.ok ? undefined : read.problem).toMatchObject({
      code: 'csv-broken',
      row: 2,
      detail: expect.stringContaining(words) as unknown,
    });
  });

  test('stands at 100 with the price in the first month that both have', () => {
    const against = rebased(
      [
        { from: '2026-03-31', costUsd: '8' },
        { from: '2026-05-10', costUsd: '9' },
      ],
      [
        { month: '2026-02', value: '240' },
        { month: '2026-03', value: '250' },
        { month: '2026-04', value: '260' },
      ],
    );
    expect(against).toEqual({
      baseMonth: '2026-03',
      index: [
        { month: '2026-02', value: '96.00' },
        { month: '2026-03', value: '100.00' },
        { month: '2026-04', value: '104.00' },
      ],
      prices: [
        { from: '2026-03-31', value: '100.00' },
        { from: '2026-05-10', value: '112.50' },
      ],
    });
  });

  test('without a month in common is held against nothing', () => {
    expect(rebased([{ from: '2026-03-31', costUsd: '8' }], [{ month: '2026-02', value: '1' }])).toBe(
      undefined,
    );
  });
});
