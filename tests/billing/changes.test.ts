import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeFromDesign } from '../../core/billing/change-from-design.ts';
import { changePriceUsd, contractSum } from '../../core/billing/contract-sum.ts';
import { type BilledBefore, billAskSchema, makeInvoice } from '../../core/billing/invoice.ts';
import { ledgerOf } from '../../core/billing/ledger.ts';
import { usd } from '../../core/units/money.ts';
import { anyJob, booksOf, cents, day, line, lineOf, orderOf, settings } from './books.ts';

describe('the contract with its change orders', () => {
  // By hand: 10,000 as quoted, three tails at 145.50 are 436.50, a gutter left out takes 600 off: 9,836.50.
  test('is the quote, what was added, less what was taken off', () => {
    const contract = contractSum(
      {
        lines: [line('Framing', 'labour', '6000.00'), line('Soffit', 'material', '4000.00')],
        priceUsd: usd(10_000),
      },
      [
        { number: 1, order: orderOf([lineOf('3', '145.50')]) },
        { number: 2, order: orderOf([lineOf('-1', '600')]) },
      ],
      settings,
    );
    expect(contract.revisedUsd).toBe('9836.50');
    expect(contract.parts.map(({ key }) => key)).toEqual([
      'phase/Framing',
      'phase/Soffit',
      'change/1',
      'change/2',
    ]);
  });

  test('with something taken off asks that it comes off first, before a bill is larger than the contract', () => {
    const contract = contractSum(
      { lines: [line('Framing', 'labour', '1000.00')], priceUsd: usd(1000) },
      [{ number: 1, order: orderOf([lineOf('-1', '300')]) }],
      settings,
    );
    const bill = (percents: Readonly<Record<string, string>>) =>
      makeInvoice(contract, { ...billAskSchema.parse({ kind: 'progress' }), percents }, nothing, '0');
    expect(bill({ 'phase/Framing': '100' })).toMatchObject({
      ok: false,
      problem: { fault: { what: 'more-than-contract', kind: 'progress' } },
    });
    expect(bill({ 'phase/Framing': '100', 'change/1': '100' })).toMatchObject({
      ok: true,
      value: { amountUsd: '700.00', balanceToFinishUsd: '0.00' },
    });
  });
});

const nothing: BilledBefore = { depositUsd: usd(0), otherUsd: usd(0), taxUsd: usd(0), done: {} };

describe('sales tax on a contract that a change makes less taxed', () => {
  const quoted = {
    lines: [line('Framing', 'material', '5000.00', { taxable: true }), line('Soffit', 'labour', '5000.00')],
    priceUsd: usd(10_000),
  };
  const untaxed = { number: 1, order: orderOf([lineOf('1', '10000')]) };
  const progress = { ...billAskSchema.parse({ kind: 'progress' }), percents: {} };
  // By hand: 5,000 of 10,000 is taxed at 10 %. 8,000 billed bear 400. With 10,000 untaxed more, a quarter is taxed: the
  // next 1,000 make 9,000 billed, whose tax is 225: less than was billed, so none is asked for.
  test('asks for none until it has evened out', () => {
    const contract = contractSum(quoted, [untaxed], settings);
    const bill = makeInvoice(
      contract,
      { ...progress, percents: { 'phase/Framing': '100', 'phase/Soffit': '80' } },
      { ...nothing, otherUsd: usd(8000), taxUsd: usd(400) },
      '10',
    );
    expect(bill).toMatchObject({ ok: true, value: { amountUsd: '1000.00', taxUsd: '0.00' } });
  });

  test('comes out to the rate on the taxed part with the final bill', () => {
    const contract = contractSum(quoted, [untaxed], settings);
    const bill = makeInvoice(
      contract,
      billAskSchema.parse({ kind: 'final' }),
      { ...nothing, otherUsd: usd(8000), taxUsd: usd(800) },
      '10',
    );
    expect(bill).toMatchObject({ ok: true, value: { amountUsd: '12000.00', taxUsd: '-300.00' } });
  });

  test('is credited first where the final bill would come to less than nothing', () => {
    const contract = contractSum(quoted, [], settings);
    const bill = makeInvoice(
      contract,
      billAskSchema.parse({ kind: 'final' }),
      { ...nothing, otherUsd: usd(9900), taxUsd: usd(800) },
      '10',
    );
    expect(bill).toMatchObject({
      ok: false,
      problem: { fault: { what: 'tax-over-billed', overUsd: '300.00' } },
    });
  });
});

describe('a change order from the design', () => {
  const accepted = {
    lines: [line('Framing', 'labour', '6000.00'), line('Soffit', 'material', '4000.00', { taxable: true })],
  };
  const now = {
    lines: [
      line('Framing', 'labour', '6500.25'),
      line('Soffit', 'material', '3900.00', { taxable: true }),
      line('Paint', 'sub', '700.00'),
    ],
  };

  test('says for each phase what the difference of its share of the price is', () => {
    const order = changeFromDesign(accepted, now, [], settings);
    expect(order?.lines.map(({ phase, unitPriceUsd }) => [phase, unitPriceUsd])).toEqual([
      ['Framing', '500.25'],
      ['Soffit', '-100'],
      ['Paint', '700'],
    ]);
    expect(order === null ? '' : changePriceUsd(order)).toBe('1100.25');
  });

  test('counts nothing twice: once it is approved, the same design makes no further one', () => {
    const first = changeFromDesign(accepted, now, [], settings);
    const earlier = first === null ? [] : [first];
    expect(changeFromDesign(accepted, now, earlier, settings)).toBeNull();
    const later = { lines: [...now.lines, line('Clean-up', 'permit', '85.00')] };
    const second = changeFromDesign(accepted, later, earlier, settings);
    expect(second === null ? '' : changePriceUsd(second)).toBe('85.00');
  });

  test('leaves what was agreed by hand out of it', () => {
    const byHand = orderOf([lineOf('3', '145.50')]);
    const order = changeFromDesign(accepted, now, [byHand], settings);
    expect(order === null ? '' : changePriceUsd(order)).toBe('1100.25');
  });
});

describe('change orders, bills, credits and payments in any order', () => {
  test('leave contract and changes = billed + to bill, and no balance that is not owed or paid ahead', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const books = booksOf(job);
        for (const one of job.steps) {
          books.step(one);
          expect(books.wrong).toEqual([]);
          const ledger = ledgerOf(books.papers, books.payments, day);
          const contract = books.contract();
          const quotedAndChanged =
            cents(contract.quotedUsd) +
            contract.changes.reduce((sum, { priceUsd }) => sum + cents(priceUsd), 0n);
          expect(cents(contract.revisedUsd)).toBe(quotedAndChanged);
          expect(cents(ledger.billedUsd)).toBe(books.billedCents);
          expect(books.billedCents <= quotedAndChanged).toBe(true);
          expect(cents(ledger.paidUsd)).toBe(books.paidCents);
          expect(cents(ledger.balanceUsd)).toBe(books.billedCents + cents(ledger.taxUsd) - books.paidCents);
          for (const { openUsd } of ledger.invoices) expect(Number(openUsd)).toBeGreaterThanOrEqual(0);
          const open = ledger.invoices.reduce((sum, { openUsd }) => sum + cents(openUsd), 0n);
          const aged = Object.values(ledger.aged).reduce((sum, amount) => sum + cents(amount), 0n);
          expect(aged).toBe(open);
          const owed = cents(ledger.balanceUsd);
          expect(open).toBe(owed > 0n ? owed : 0n);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('end with a final bill that takes all the rest, releases what was held back, and evens out the tax', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const books = booksOf(job);
        for (const one of job.steps) books.step(one);
        const contract = books.contract();
        const leftCents = cents(contract.revisedUsd) - books.billedCents;
        const final = books.issue({ kind: 'final', retainagePercent: '10' });
        fc.pre(final.ok);
        expect(final.ok ? cents(final.value.amountUsd) : 0n).toBe(leftCents);
        expect(books.heldCents).toBe(0n);
        const ledger = ledgerOf(books.papers, books.payments, day);
        expect(ledger.billedUsd).toBe(contract.revisedUsd);
        expect(ledger.taxUsd).toBe(
          usd(new Decimal(contract.taxableUsd).times(job.taxHundredths).div(10_000)),
        );
      }),
      { numRuns: 300 },
    );
  });

  test('release at the end exactly what the progress bills held back', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 100, max: 900_000 }), { minLength: 3, maxLength: 3 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 200 }),
        (prices, percents, held) => {
          const books = booksOf({ prices, taxed: [], taxHundredths: 0, steps: [] });
          let workCents = 0n;
          for (const tenths of percents.toSorted((a, b) => a - b)) {
            const bill = books.issue({
              kind: 'progress',
              percents: Object.fromEntries(
                books.contract().parts.map(({ key }) => [key, String(tenths / 10)]),
              ),
              retainagePercent: String(held / 10),
            });
            if (bill.ok) workCents = cents(bill.value.workToDateUsd);
          }
          const heldCents = books.heldCents;
          expect(workCents - books.billedCents).toBe(heldCents);
          const rest = cents(books.contract().revisedUsd) - workCents;
          const final = books.issue({ kind: 'final', retainagePercent: '10' });
          expect(final.ok ? cents(final.value.amountUsd) : 0n).toBe(rest + heldCents);
        },
      ),
    );
  });
});
