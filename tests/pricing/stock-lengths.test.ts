import { describe, expect, test } from 'vitest';
import { longestUsableIn, stockLengths } from '../../core/pricing/stock-lengths.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { priceItem } from './make-price.ts';

const board = (id: string, lengthFt: number, priceUsd: string, more: Record<string, unknown> = {}) =>
  priceItem({
    id,
    unit: 'each',
    section: '2x6',
    grade: 'No.2',
    lengthFt,
    description: id,
    prices: [{ priceUsd, observedOn: '2026-04-13' }],
    ...more,
  });
const ask = (priceList: ReturnType<typeof board>[], cutting: Record<string, unknown> = {}) => ({
  asOf: '2026-04-30',
  priceList,
  settings: shopSettingsSchema.parse({ cutting }),
});
const wanted = { section: '2x6', grade: 'No.2' };

describe('the lengths that a stock comes in', () => {
  test('are in sixteenths and cents, shortest first, the cheapest item of each', () => {
    const list = [board('long', 16, '12.90'), board('short', 8, '6.38'), board('other yard', 16, '12.40')];
    expect(stockLengths(ask(list), wanted).lengths).toEqual([
      { itemId: 'short', lengthSixteenths: 1536, priceCents: 638 },
      { itemId: 'other yard', lengthSixteenths: 3072, priceCents: 1240 },
    ]);
  });

  test('leave out what the shop cannot carry, what is retired, and other grades and sections', () => {
    const list = [
      board('a', 8, '6'),
      board('b', 20, '20'),
      board('c', 10, '8', { retired: true }),
      board('d', 12, '9', { grade: 'No.1' }),
      board('e', 14, '9', { section: '2x4' }),
    ];
    const { lengths } = stockLengths(ask(list, { excludedLengthsFt: [20] }), wanted);
    expect(lengths.map(({ itemId }) => itemId)).toEqual(['a']);
  });

  test('are matched without regard to case; a stock without a grade takes any where the list grades all', () => {
    const list = [board('a', 8, '6')];
    expect(stockLengths(ask(list), { section: '2x6', grade: 'no.2' }).lengths).toHaveLength(1);
    expect(stockLengths(ask(list), { section: '2x6', grade: '' }).lengths).toHaveLength(1);
    const graded = [board('a', 8, '6'), board('b', 10, '7', { grade: '' })];
    const plain = stockLengths(ask(graded), { section: '2x6', grade: '' }).lengths;
    expect(plain.map(({ itemId }) => itemId)).toEqual(['b']);
  });

  test('come with a problem for each item that has no usable price', () => {
    const list = [
      board('bare', 8, '6', { prices: [] }),
      board('later', 10, '6', { prices: [{ priceUsd: '6', observedOn: '2026-05-02' }] }),
      board('by sheet', 12, '6', { unit: 'sheet' }),
    ];
    const { lengths, problems } = stockLengths(ask(list), wanted);
    expect(lengths).toEqual([]);
    expect(problems.map(({ code }) => code)).toEqual(['no-price', 'price-not-yet', 'unit-does-not-fit']);
  });

  test('give the longest less both end trims', () => {
    expect(longestUsableIn(ask([board('a', 8, '6'), board('b', 16, '12')]), wanted)).toBe(191);
    expect(longestUsableIn(ask([]), wanted)).toBeNull();
  });
});
