import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { percentile } from '../../../core/pricing/history/percentile.ts';
import { type CostStep, priceRisk } from '../../../core/pricing/history/price-risk.ts';
import { validityAdvice } from '../../../core/pricing/history/validity-advice.ts';
import { usd } from '../../../core/units/money.ts';
import { addDays } from '../../../core/units/civil-date.ts';

const day = (at: number) => addDays('2026-01-01', at);

const decimals = (values: readonly (number | string)[]) => values.map((value) => new Decimal(value));

describe('a percentile', () => {
  test('of twelve gauge readings is the handbook’s', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods 7.2.6.2: twelve readings of a gauge study, 90th percentile 95.1981.
    // Readings and answer from memory; the answer also follows by hand: 95.1959 + 0.7 x (95.1990 - 95.1959) = 95.19807.
    const readings = decimals([
      95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199,
      95.1682,
    ]);
    expect(percentile(readings, 0.9).toFixed(4)).toBe('95.1981');
  });

  test('stays at the first and the last value where the place falls outside of them', () => {
    expect(percentile(decimals([3, 1, 2]), 0.9).toString()).toBe('3');
    expect(percentile(decimals([3, 1, 2]), 0.1).toString()).toBe('1');
    expect(percentile(decimals([7]), 0.5).toString()).toBe('7');
  });

  test('of one half is the median that sorting and halving gives', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 1, maxLength: 40 }),
        (values) => {
          const sorted = values.toSorted((a, b) => a - b);
          const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
          const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? 0;
          expect(percentile(decimals(values), 0.5).toNumber()).toBe((upper + lower) / 2);
        },
      ),
    );
  });
});

describe('how far prices move while a quote is open', () => {
  const steps: readonly CostStep[] = [
    { from: day(0), costUsd: '10' },
    { from: day(10), costUsd: '11' },
    { from: day(18), costUsd: '11.55' },
  ];

  test('is counted over every window of the history, by hand', () => {
    // Windows of 5 days from day 0 to day 14: days 5 to 9 hold +10 %, days 13 and 14 hold +5 %, eight hold nothing.
    expect(priceRisk(steps, day(19), 5)).toEqual({
      kind: 'known',
      days: 5,
      firstStart: day(0),
      lastStart: day(14),
      windows: 15,
      medianPercent: '0.0',
      highPercent: '10.0',
      mostPercent: '10.0',
    });
  });

  test('is not told from less than three windows of history, nor from a price that changed once', () => {
    expect(priceRisk(steps, day(19), 7)).toMatchObject({ kind: 'too-little', haveDays: 19, needDays: 21 });
    expect(priceRisk(steps.slice(0, 2), day(200), 5)).toMatchObject({ kind: 'too-little', haveChanges: 1 });
    expect(priceRisk([], day(200), 5)).toMatchObject({ kind: 'too-little', haveDays: 0 });
  });

  test('leaves out prices noted after the day it is asked for', () => {
    const later = [...steps, { from: day(20), costUsd: '99' }];
    expect(priceRisk(later, day(19), 5)).toEqual(priceRisk(steps, day(19), 5));
  });

  test('is below nothing where prices fell', () => {
    const falling = Array.from({ length: 60 }, (_, at) => ({ from: day(at), costUsd: String(100 - at) }));
    const risk = priceRisk(falling, day(59), 10);
    // From 100 to 90 is 10 % down, the least; later windows fall from less, so by more percent.
    expect(risk).toMatchObject({ kind: 'known', mostPercent: '-10.0' });
  });

  test('is the same as reading the price of both days in a plain list of days', () => {
    const history = fc.uniqueArray(
      fc.record({ at: fc.integer({ min: 0, max: 120 }), cents: fc.integer({ min: 500, max: 3000 }) }),
      { minLength: 3, maxLength: 12, selector: ({ at }) => at },
    );
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 20 }), (noted, days) => {
        const sorted = noted.toSorted((a, b) => a.at - b.at);
        const risk = priceRisk(
          sorted.map(({ at, cents }) => ({ from: day(at), costUsd: new Decimal(cents).div(100).toFixed(2) })),
          day(140),
          days,
        );
        const begin = sorted[0]?.at ?? 0;
        const centsOn: number[] = [];
        for (let at = begin; at <= 140; at += 1)
          centsOn[at] = sorted.findLast((one) => one.at <= at)?.cents ?? Number.NaN;
        const rises: number[] = [];
        for (let at = begin; at + days <= 140; at += 1)
          rises.push(((centsOn[at + days] ?? 0) / (centsOn[at] ?? 1) - 1) * 100);
        fc.pre(risk.kind === 'known');
        const most = risk.kind === 'known' ? Number(risk.mostPercent) : Number.NaN;
        const windows = risk.kind === 'known' ? risk.windows : Number.NaN;
        expect(windows).toBe(rises.length);
        expect(Math.abs(most - Math.max(...rises))).toBeLessThan(0.0501);
      }),
    );
  });
});

describe('what to do about a price that has to stay open', () => {
  // Every ten days 5 % dearer: of windows of 15 days, half hold one rise and half hold two.
  const rising: readonly CostStep[] = Array.from({ length: 20 }, (_, at) => ({
    from: day(at * 10),
    costUsd: new Decimal(1.05).pow(at).times(1000).toFixed(2),
  }));
  const advise = (contingencyUsd: string) =>
    validityAdvice(rising, day(199), {
      materialsUsd: usd(2000),
      contingencyUsd: usd(contingencyUsd),
      validDays: 15,
    });

  test('is nothing where the contingency carries a rise that one window in ten passes', () => {
    // Two rises of 5 % are 10.25 %, $205.00 of $2,000.00 at 10.3 % rounded to tenths: $206.00.
    expect(advise('206')).toMatchObject({
      kind: 'known',
      highUsd: '206.00',
      isCarried: true,
      shorterDays: null,
    });
  });

  test('is a shorter time in which no window in ten holds two rises, or a clause at what the contingency carries', () => {
    // $150 carries one rise of 5 % ($100), not two. Of windows of 11 days one in ten starts on the day before a rise and holds two;
    // of 10 days none does. 150 / 2,000 = 7.5 %, so a clause from 7 % on.
    const advice = advise('150');
    expect(advice).toMatchObject({ isCarried: false, triggerPercent: '7' });
    expect(advice.kind === 'known' ? advice.shorterDays : 0).toBeGreaterThanOrEqual(10);
    expect(advice.kind === 'known' ? advice.shorterDays : 0).toBeLessThanOrEqual(11);
  });

  test('is a clause alone where no time at all is short enough', () => {
    const daily: readonly CostStep[] = Array.from({ length: 90 }, (_, at) => ({
      from: day(at),
      costUsd: new Decimal(1.01).pow(at).times(1000).toFixed(2),
    }));
    const advice = validityAdvice(daily, day(89), {
      materialsUsd: usd(2000),
      contingencyUsd: usd(0),
      validDays: 15,
    });
    expect(advice).toMatchObject({ isCarried: false, shorterDays: null, triggerPercent: '1' });
  });
});
