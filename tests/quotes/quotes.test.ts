import * as fc from 'fast-check';
import { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import type { CostLine, Estimate } from '../../core/pricing/estimate-types.ts';
import { compareEstimates } from '../../core/quotes/compare-estimates.ts';
import { daysLeft, quoteStateOn, stepsFrom } from '../../core/quotes/quote-state.ts';
import { addDays } from '../../core/units/civil-date.ts';
import { decimalText, sumUsd, usd } from '../../core/units/money.ts';

test('a sent quote is good through the whole of its last day and has lapsed on the next', () => {
  const quote = { state: 'sent', validUntil: '2026-05-15' } as const;
  expect(quoteStateOn(quote, '2026-05-15')).toBe('sent');
  expect(quoteStateOn(quote, '2026-05-16')).toBe('lapsed');
  expect(quoteStateOn({ ...quote, state: 'accepted' }, '2026-06-30')).toBe('accepted');
});

test.each([
  ['2026-05-01', null],
  ['2026-05-08', 7],
  ['2026-05-14', 1],
  ['2026-05-15', 0],
  ['2026-05-16', null],
])('on %s a quote good until 2026-05-15 is said to have %s days left', (day, left) => {
  expect(daysLeft({ state: 'sent', validUntil: '2026-05-15' }, day)).toBe(left);
});

test('only a draft is sent, only a sent or lapsed quote is answered, and every quote can be followed by another', () => {
  const states = ['draft', 'sent', 'lapsed', 'accepted', 'declined'] as const;
  expect(states.filter((state) => stepsFrom(state).includes('send'))).toEqual(['draft']);
  expect(states.filter((state) => stepsFrom(state).includes('accept'))).toEqual(['sent', 'lapsed']);
  expect(states.every((state) => stepsFrom(state).includes('renew'))).toBe(true);
});

function line(id: string, quantity: string, unitCostUsd: string): CostLine {
  return {
    id,
    takeoffLineId: id,
    kind: 'material',
    phase: 'Framing',
    description: id,
    clientWording: id,
    quantity: decimalText(quantity),
    unit: 'each',
    unitCostUsd: decimalText(unitCostUsd),
    costUsd: usd(new Decimal(quantity).times(unitCostUsd)),
    priceUsd: usd(0),
    taxable: true,
    supplier: '',
    stalePriceOf: null,
    rateMark: null,
    madeOf: [],
  };
}

function estimate(lines: readonly CostLine[], priceUsd: string): Estimate {
  return {
    asOf: '2026-04-30',
    lines,
    totals: [],
    directCostUsd: sumUsd(lines.map(({ costUsd }) => costUsd)),
    priceUsd: usd(priceUsd),
    totalUsd: usd(priceUsd),
    profitMarkupPercent: decimalText(0),
    profitMarginPercent: decimalText(0),
    grossMarginPercent: decimalText(0),
    grossMarkupPercent: decimalText(0),
    lacks: [],
    notes: [],
    validUntil: addDays('2026-04-30', 15),
  };
}

test('boards that went from $70 to $75 take a margin of 30 % at a price of $1,000 to 25 %', () => {
  const change = compareEstimates(
    estimate([line('boards', '10', '70')], '1000'),
    estimate([line('boards', '10', '75')], '1072'),
  );
  expect(change).toMatchObject({
    marginBeforePercent: '30',
    marginIfPriceStaysPercent: '25',
    totalBeforeUsd: '1000.00',
    totalAfterUsd: '1072.00',
    lines: [{ id: 'boards', costDifferenceUsd: '50.00' }],
  });
});

type Row = { readonly at: number; readonly quantity: number; readonly cents: number };

function asEstimate(rows: readonly Row[]): Estimate {
  const byId = new Map(rows.map((row) => [row.at, row]));
  return estimate(
    [...byId].map(([at, row]) => line(`line ${at}`, String(row.quantity), (row.cents / 100).toFixed(2))),
    '5000',
  );
}

test('lines that came and went are told, equal lines are not, and the differences add up to that of the direct cost', () => {
  const lines = fc.array(
    fc.record({ at: fc.nat({ max: 9 }), quantity: fc.nat({ max: 50 }), cents: fc.nat({ max: 9999 }) }),
    { maxLength: 10 },
  );
  fc.assert(
    fc.property(lines, lines, (old, now) => {
      const [before, after] = [asEstimate(old), asEstimate(now)];
      const change = compareEstimates(before, after);
      expect(sumUsd(change.lines.map(({ costDifferenceUsd }) => costDifferenceUsd))).toBe(
        usd(new Decimal(after.directCostUsd).minus(before.directCostUsd)),
      );
      for (const one of change.lines) expect(one.before).not.toEqual(one.after);
    }),
  );
  expect(compareEstimates(asEstimate([]), asEstimate([])).lines).toEqual([]);
});
