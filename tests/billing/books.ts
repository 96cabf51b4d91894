import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { type ChangeOrder, changeOrderSchema } from '../../core/billing/change-order.ts';
import { changePriceUsd, contractSum } from '../../core/billing/contract-sum.ts';
import { makeCredit } from '../../core/billing/credit.ts';
import { type BilledBefore, type BillAsk, billAskSchema, makeInvoice } from '../../core/billing/invoice.ts';
import { type LedgerPaper, type LedgerPayment, ledgerOf } from '../../core/billing/ledger.ts';
import type { Phase } from '../../core/eave/phases.ts';
import type { CostLine } from '../../core/pricing/estimate-types.ts';
import { decimalText, sumUsd, usd } from '../../core/units/money.ts';

export const settings = { phases: [] };
export const day = '2026-06-30';

/** A cost line of an estimate, invented. */
export function line(
  phase: Phase,
  kind: CostLine['kind'],
  priceUsd: string,
  more: Partial<CostLine> = {},
): CostLine {
  return {
    id: `${phase}/${kind}`,
    phase,
    kind,
    description: phase,
    clientWording: phase,
    quantity: decimalText(1),
    unit: 'each',
    unitPriceUsd: usd(priceUsd),
    costUsd: usd(priceUsd),
    priceUsd: usd(priceUsd),
    taxable: false,
    trace: [],
    ...more,
  } as unknown as CostLine;
}

export const lineOf = (quantity: string, unitPriceUsd: string, more: object = {}) => ({
  id: 'a',
  phase: 'Framing',
  kind: 'labour',
  description: 'Rotted tail repaired',
  quantity,
  unit: 'each',
  unitPriceUsd,
  ...more,
});
export const orderOf = (lines: readonly object[], more: object = {}): ChangeOrder =>
  changeOrderSchema.parse({ reason: 'hidden', lines, ...more });

/** What may happen next on a job, as fast-check makes it up. */
const happenings = fc.array(
  fc.oneof(
    fc.record({
      what: fc.constant('change' as const),
      hundredths: fc.integer({ min: -300, max: 300 }),
      cents: fc.integer({ min: 0, max: 300_000 }),
      taxable: fc.boolean(),
    }),
    fc.record({
      what: fc.constant('progress' as const),
      tenths: fc.integer({ min: 0, max: 1000 }),
      held: fc.integer({ min: 0, max: 200 }),
    }),
    fc.record({
      what: fc.constant('sum' as const),
      kind: fc.constantFrom('deposit' as const, 'stage' as const),
      cents: fc.integer({ min: 1, max: 500_000 }),
    }),
    fc.record({
      what: fc.constant('credit' as const),
      which: fc.nat(),
      share: fc.integer({ min: 1, max: 100 }),
    }),
    fc.record({ what: fc.constant('pay' as const), cents: fc.integer({ min: 1, max: 1_500_000 }) }),
    fc.record({ what: fc.constant('take-back' as const), which: fc.nat() }),
  ),
  { maxLength: 14 },
);
type Happening = (typeof happenings extends fc.Arbitrary<infer H> ? H : never) extends readonly (infer O)[]
  ? O
  : never;

/** A job's books, kept by the functions under test alone; its own sums are kept in whole cents beside them. */
class Books {
  readonly papers: LedgerPaper[] = [];
  readonly payments: LedgerPayment[] = [];
  readonly changes: { number: number; order: ChangeOrder }[] = [];
  /** The oracle: cents billed before tax, credits taken off; cents paid; cents held back by the last progress bill. */
  billedCents = 0n;
  paidCents = 0n;
  heldCents = 0n;
  /** Bills that ask for nothing or less, or do not add up. */
  readonly wrong: unknown[] = [];
  private readonly quoted;
  private readonly tax: string;

  constructor(prices: readonly string[], taxed: readonly boolean[], tax: string) {
    const phases: readonly Phase[] = ['Framing', 'Soffit', 'Paint'];
    this.quoted = {
      lines: prices.map((price, index) =>
        line(phases[index] ?? 'Clean-up', 'material', price, { taxable: taxed[index] ?? false }),
      ),
      priceUsd: sumUsd(prices.map((price) => usd(price))),
    };
    this.tax = tax;
  }

  contract() {
    return contractSum(this.quoted, this.changes, settings);
  }

  before(): BilledBefore {
    const ledger = ledgerOf(this.papers, this.payments, day);
    return {
      depositUsd: ledger.depositUsd,
      otherUsd: usd(new Decimal(ledger.billedUsd).minus(ledger.depositUsd)),
      taxUsd: ledger.taxUsd,
      done: {},
    };
  }

  issue(ask: Partial<BillAsk> & Pick<BillAsk, 'kind'>) {
    const bill = makeInvoice(
      this.contract(),
      { ...billAskSchema.parse({ kind: ask.kind }), ...ask },
      this.before(),
      this.tax,
    );
    if (!bill.ok) return bill;
    const { kind, amountUsd, taxUsd, totalUsd, retainedUsd } = bill.value;
    if (Number(amountUsd) <= 0 || Number(totalUsd) < 0 || sumUsd([amountUsd, taxUsd]) !== totalUsd)
      this.wrong.push(bill.value);
    this.papers.push({
      number: this.papers.length + 1,
      kind,
      credits: null,
      issuedOn: day,
      dueOn: day,
      amountUsd,
      taxUsd,
    });
    this.billedCents += cents(amountUsd);
    if (kind !== 'deposit' && kind !== 'stage') this.heldCents = cents(retainedUsd);
    return bill;
  }

  step(one: Happening): void {
    if (one.what === 'change') this.change(one);
    else if (one.what === 'sum')
      this.issue({ kind: one.kind, depositUsd: usd(new Decimal(one.cents).div(100)) });
    else if (one.what === 'progress')
      this.issue({
        kind: 'progress',
        percents: Object.fromEntries(
          this.contract().parts.map(({ key, priceUsd }) => [
            key,
            Number(priceUsd) < 0 ? '100' : String(one.tenths / 10),
          ]),
        ),
        retainagePercent: String(one.held / 10),
      });
    else if (one.what === 'credit') this.credit(one.which, one.share);
    else if (one.what === 'pay') {
      const amountUsd = usd(new Decimal(one.cents).div(100));
      this.payments.push({ id: `p${this.payments.length}`, paidOn: day, amountUsd, takesBack: null });
      this.paidCents += BigInt(one.cents);
    } else this.takeBack(one.which);
  }

  private change({ hundredths, cents: price, taxable }: Extract<Happening, { what: 'change' }>): void {
    const order = orderOf([lineOf(String(hundredths / 100), usd(new Decimal(price).div(100)), { taxable })]);
    const after = new Decimal(this.contract().revisedUsd).plus(changePriceUsd(order));
    // The host refuses a change that would bring the contract below what is billed.
    if (after.lt(ledgerOf(this.papers, this.payments, day).billedUsd)) return;
    this.changes.push({ number: this.changes.length + 1, order });
  }

  private credit(which: number, share: number): void {
    const invoices = this.papers.filter(({ kind }) => kind !== 'credit');
    const invoice = invoices[which % Math.max(1, invoices.length)];
    if (invoice === undefined) return;
    const earlier = this.papers.filter(({ credits }) => credits === invoice.number);
    const credited = {
      amountUsd: sumUsd(earlier.map(({ amountUsd }) => amountUsd)),
      taxUsd: sumUsd(earlier.map(({ taxUsd }) => taxUsd)),
    };
    const left = new Decimal(invoice.amountUsd).minus(credited.amountUsd);
    const credit = makeCredit(invoice, credited, usd(left.times(share).div(100)));
    if (!credit.ok) return;
    this.papers.push({
      number: this.papers.length + 1,
      kind: 'credit',
      credits: invoice.number,
      issuedOn: day,
      dueOn: day,
      amountUsd: credit.value.amountUsd,
      taxUsd: credit.value.taxUsd,
    });
    this.billedCents -= cents(credit.value.amountUsd);
  }

  private takeBack(which: number): void {
    const gone = new Set(this.payments.map(({ takesBack }) => takesBack));
    const open = this.payments.filter(({ id, takesBack }) => takesBack === null && !gone.has(id));
    const payment = open[which % Math.max(1, open.length)];
    if (payment === undefined) return;
    this.payments.push({ ...payment, id: `p${this.payments.length}`, takesBack: payment.id });
    this.paidCents -= cents(payment.amountUsd);
  }
}

export const cents = (amount: string): bigint => BigInt(new Decimal(amount).times(100).toFixed(0));

export const anyJob = fc.record({
  prices: fc.array(fc.integer({ min: 1, max: 900_000 }), { minLength: 3, maxLength: 3 }),
  taxed: fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }),
  taxHundredths: fc.integer({ min: 0, max: 1200 }),
  steps: happenings,
});

export function booksOf({
  prices,
  taxed,
  taxHundredths,
}: typeof anyJob extends fc.Arbitrary<infer J> ? J : never) {
  return new Books(
    prices.map((price) => new Decimal(price).div(100).toFixed(2)),
    taxed,
    new Decimal(taxHundredths).div(100).toFixed(),
  );
}
