import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PlannedPayment } from '../../core/offer/offer-document.ts';
import { paymentPlan } from '../../core/offer/payments.ts';
import { offerSentence } from '../../core/problems/offer-fault.ts';
import { sumUsd, usd } from '../../core/units/money.ts';

function payment(kind: PlannedPayment['kind'], value = '0', id = 'p1'): PlannedPayment {
  return { id, when: 'Some day', kind, value };
}

test('a third, a third and the rest of $100 are 33.33, 33.33 and 33.34', () => {
  const plan = paymentPlan(
    [payment('percent', '33.33'), payment('percent', '33.33'), payment('rest')],
    usd('100'),
  );
  expect(plan.payments.map(({ amountUsd }) => amountUsd)).toEqual(['33.33', '33.33', '33.34']);
  expect(plan.fault).toBeNull();
});

test('of $1,000.01 in four quarters the first takes the odd cent', () => {
  const quarters = Array.from({ length: 4 }, () => payment('percent', '25'));
  const plan = paymentPlan(quarters, usd('1000.01'));
  expect(plan.payments.map(({ amountUsd }) => amountUsd)).toEqual(['250.01', '250.00', '250.00', '250.00']);
  expect(plan.fault).toBeNull();
});

test('$1,000 down, 50 % and the rest of $7,570 are 1,000, 3,785 and 2,785', () => {
  const plan = paymentPlan(
    [payment('amount', '1000'), payment('percent', '50'), payment('rest')],
    usd('7570'),
  );
  expect(plan.payments.map(({ amountUsd }) => amountUsd)).toEqual(['1000.00', '3785.00', '2785.00']);
});

test('payments that leave some of the price, or ask for more, say how much at the last of them', () => {
  const less = paymentPlan([payment('percent', '40'), payment('percent', '50')], usd('200'));
  expect(less.fault).toEqual({ at: 1, fault: { what: 'payments-do-not-add-up', leftUsd: '20.00' } });
  const more = paymentPlan([payment('amount', '150'), payment('amount', '60'), payment('rest')], usd('200'));
  expect(more.fault).toEqual({ at: 2, fault: { what: 'payments-do-not-add-up', leftUsd: '-10.00' } });
  expect(more.fault && offerSentence(more.fault.fault)).toContain('$10.00 more than the price');
});

test('only one payment can take the rest; no payment at all is no fault', () => {
  expect(paymentPlan([payment('rest'), payment('rest')], usd('10')).fault).toEqual({
    at: 1,
    fault: { what: 'two-rests' },
  });
  expect(paymentPlan([], usd('10')).fault).toBeNull();
});

const cents = fc.integer({ min: 0, max: 5_000_000 }).map((value) => usd(new Decimal(value).div(100)));
const percent = fc.integer({ min: 1, max: 4000 }).map((value) => new Decimal(value).div(100).toFixed(2));

test('with a last payment of the rest the dollars add up to the price to the cent, whatever the percentages', () => {
  fc.assert(
    fc.property(cents, fc.array(percent, { maxLength: 2 }), (total, percents) => {
      const plan = paymentPlan(
        [...percents.map((value) => payment('percent', value)), payment('rest')],
        total,
      );
      expect(sumUsd(plan.payments.map(({ amountUsd }) => amountUsd))).toBe(total);
      expect(plan.fault).toBeNull();
      for (const { amountUsd } of plan.payments) expect(Number(amountUsd)).toBeGreaterThanOrEqual(0);
    }),
  );
});

test('percentages of one hundred add up to the price to the cent, each within a cent of its own share', () => {
  const shares = fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(cents, shares, (total, weights) => {
      const sum = weights.reduce((all, weight) => all + weight, 0);
      // The last takes what is left of one hundred, so that the percentages themselves add up.
      const firsts = weights
        .slice(0, -1)
        .map((weight) => new Decimal(weight).times(100).div(sum).toDecimalPlaces(2));
      const last = firsts.reduce((left, one) => left.minus(one), new Decimal(100));
      const percents = [...firsts, last];
      const plan = paymentPlan(
        percents.map((value) => payment('percent', value.toFixed(2))),
        total,
      );
      expect(sumUsd(plan.payments.map(({ amountUsd }) => amountUsd))).toBe(total);
      for (const [at, { amountUsd }] of plan.payments.entries()) {
        const exact = new Decimal(total).times(percents[at] ?? 0).div(100);
        expect(exact.minus(amountUsd).abs().lt('0.01')).toBe(true);
      }
    }),
  );
});
