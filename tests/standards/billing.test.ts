import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import type { ContractSum } from '../../core/billing/contract-sum.ts';
import { type BilledBefore, billAskSchema, makeInvoice } from '../../core/billing/invoice.ts';
import { ledgerOf } from '../../core/billing/ledger.ts';
import { sumUsd, usd } from '../../core/units/money.ts';

/** A contract of lump sums without tax. */
function contractOf(prices: readonly string[]): ContractSum {
  const parts = prices.map((price, index) => ({
    key: `phase/${index}`,
    label: `Part ${index}`,
    priceUsd: usd(price),
    taxableUsd: usd(0),
  }));
  const revisedUsd = sumUsd(parts.map(({ priceUsd }) => priceUsd));
  return { parts, quotedUsd: revisedUsd, changes: [], revisedUsd, taxableUsd: usd(0) };
}

/** Bills one month after the other, as far as the parts are then. */
function months(contract: ContractSum, retainagePercent: string, percents: readonly (readonly string[])[]) {
  let billed = new Decimal(0);
  return percents.map((month) => {
    const before: BilledBefore = { depositUsd: usd(0), otherUsd: usd(billed), taxUsd: usd(0), done: {} };
    const ask = {
      ...billAskSchema.parse({ kind: 'progress' }),
      percents: Object.fromEntries(month.map((percent, index) => [`phase/${index}`, percent])),
      retainagePercent,
    };
    const bill = makeInvoice(contract, ask, before, '0');
    if (!bill.ok) throw new Error(JSON.stringify(bill.problem));
    billed = billed.plus(bill.value.amountUsd);
    return bill.value;
  });
}

describe('progress payments with retainage', () => {
  // The rule of the federal clause on payments under fixed-price construction contracts, 48 CFR 52.232-5 (from memory):
  // monthly payments on the work put in place, of which at most 10 percent may be held back. The month's payment is the work
  // to date less what is held back of it less the payments before, as public contract handbooks and textbooks of construction
  // management reckon it (form from memory). Figures by hand:
  //   contract 100,000; month 1: 20,000 in place, 2,000 held, 18,000 paid;
  //   month 2: 55,000 in place, 5,500 held, 49,500 less 18,000 = 31,500; month 3: 90,000, 9,000, 81,000 less 49,500 = 31,500.
  test('pay each month the work to date, less what is held back, less what was paid before', () => {
    const contract = contractOf(['40000', '60000']);
    const bills = months(contract, '10', [
      ['50', '0'],
      ['100', '25'],
      ['100', '83.3333333'],
    ]);
    expect(bills.map(({ workToDateUsd }) => workToDateUsd)).toEqual(['20000.00', '55000.00', '90000.00']);
    expect(bills.map(({ retainedUsd }) => retainedUsd)).toEqual(['2000.00', '5500.00', '9000.00']);
    expect(bills.map(({ amountUsd }) => amountUsd)).toEqual(['18000.00', '31500.00', '31500.00']);
  });

  // Retainage may be lowered once half of the work is done (common in public contracts; from memory): by hand, 10 % of
  // 50,000 was 5,000 held; at 80,000 and 5 % 4,000 are held: 76,000 less 45,000 billed is 31,000, so 1,000 of what was held
  // comes with the 30,000 of work.
  test('lowered on the way give part of what was held back with the next bill', () => {
    const contract = contractOf(['100000']);
    const ask = {
      ...billAskSchema.parse({ kind: 'progress' }),
      percents: { 'phase/0': '80' },
      retainagePercent: '5',
    };
    const bill = makeInvoice(
      contract,
      ask,
      { depositUsd: usd(0), otherUsd: usd(45_000), taxUsd: usd(0), done: {} },
      '0',
    );
    expect(bill).toMatchObject({ ok: true, value: { amountUsd: '31000.00', retainedUsd: '4000.00' } });
  });
});

describe('ageing of what is owed', () => {
  // Classes of 30 days past the due day: common practice, no source. By hand: due 2026-03-01, looked at on 2026-05-30, is
  // 90 days past (30 of March, 30 of April, 30 of May); the day after it is over 90.
  test('goes by the due day, and the ninetieth day still counts as 61 to 90', () => {
    const paper = {
      number: 1,
      kind: 'progress',
      credits: null,
      issuedOn: '2026-02-15',
      dueOn: '2026-03-01',
      amountUsd: usd(1000),
      taxUsd: usd(0),
    } as const;
    expect(ledgerOf([paper], [], '2026-05-30').aged['61-90']).toBe('1000.00');
    expect(ledgerOf([paper], [], '2026-05-31').aged['over-90']).toBe('1000.00');
  });
});
