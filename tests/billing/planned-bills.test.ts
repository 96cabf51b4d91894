import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plannedBills } from '../../core/billing/planned-bills.ts';
import { paymentSchema } from '../../core/offer/offer-document.ts';
import { sumUsd, usd } from '../../core/units/money.ts';
import { cents } from './books.ts';

const plan = (payments: readonly object[]) =>
  payments.map((payment, index) =>
    paymentSchema.parse({ id: `p${index}`, when: `Stage ${index}`, ...payment }),
  );

describe('payments that a quote has planned', () => {
  // By hand: half of 1,065.00 is 532.50; its share of the price before tax, 1,000.00, is 500.00.
  test('are billed at their share of the price before tax', () => {
    const bills = plannedBills(plan([{ kind: 'percent', value: '50' }, { kind: 'rest' }]), {
      priceUsd: usd(1000),
      totalUsd: usd(1065),
    });
    expect(bills.map(({ amountUsd }) => amountUsd)).toEqual(['500.00', '500.00']);
  });

  test('that do not add up to the total are not offered', () => {
    const bills = plannedBills(plan([{ kind: 'amount', value: '100' }]), {
      priceUsd: usd(1000),
      totalUsd: usd(1000),
    });
    expect(bills).toEqual([]);
  });

  test('bill the price to the cent, whatever the percentages and the tax', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 100, max: 9_000_000 }),
        fc.integer({ min: 0, max: 900_000 }),
        (hundredths, price, tax) => {
          const payments = [
            ...hundredths.map((value) => ({ kind: 'percent', value: String(value / 100) })),
            { kind: 'rest' },
          ];
          const priceUsd = usd(price / 100);
          const totalUsd = sumUsd([priceUsd, usd(tax / 100)]);
          const bills = plannedBills(plan(payments), { priceUsd, totalUsd });
          expect(bills).toHaveLength(payments.length);
          expect(bills.reduce((sum, { amountUsd }) => sum + cents(amountUsd), 0n)).toBe(BigInt(price));
        },
      ),
    );
  });
});
