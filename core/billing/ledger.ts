import { Decimal } from 'decimal.js';
import { daysBetween } from '../units/civil-date.ts';
import { sumUsd, type Usd, usd } from '../units/money.ts';
import type { InvoiceKind } from './invoice.ts';

/** An issued paper as the ledger sees it. Amounts of a credit are what it takes back, above zero. */
export type LedgerPaper = {
  readonly number: number;
  readonly kind: InvoiceKind;
  /** Of a credit: the invoice that it takes back. */
  readonly credits: number | null;
  readonly issuedOn: string;
  readonly dueOn: string;
  readonly amountUsd: Usd;
  readonly taxUsd: Usd;
};

export type LedgerPayment = {
  readonly id: string;
  readonly paidOn: string;
  readonly amountUsd: Usd;
  /** The payment that it takes back; null of one that came in. */
  readonly takesBack: string | null;
};

/** How long past its day an amount is. */
export const ages = ['not-due', '1-30', '31-60', '61-90', 'over-90'] as const;
export type Age = (typeof ages)[number];

/** An invoice and what is still open on it. */
export type OpenInvoice = {
  readonly number: number;
  /** Tax in it. [$] */
  readonly totalUsd: Usd;
  readonly creditedUsd: Usd;
  readonly paidUsd: Usd;
  readonly openUsd: Usd;
  /** Past its due day; 0 or less where it is not due yet. [d] */
  readonly daysPast: number;
  readonly age: Age;
};

/** What a job's papers and payments come to. */
export type Ledger = {
  /** Before tax, credits taken off: deposits; all of it. [$] */
  readonly depositUsd: Usd;
  readonly billedUsd: Usd;
  readonly taxUsd: Usd;
  readonly paidUsd: Usd;
  /** Billed with tax less paid; below zero where the client is ahead. [$] */
  readonly balanceUsd: Usd;
  /** Invoices in the order of their numbers, those that are closed too. */
  readonly invoices: readonly OpenInvoice[];
  /** What is open, by age. [$] */
  readonly aged: Readonly<Record<Age, Usd>>;
};

/**
 * Adds up what was billed, credited and paid. Payments close the invoice that is due first, then the next (the lower number
 * where two are due on a day); what is left over stays with the client as paid ahead.
 * @param papers - issued, in any order. [$]
 * @param payments - and what was taken back of them. [$]
 * @param day - that ages are reckoned on.
 */
export function ledgerOf(
  papers: readonly LedgerPaper[],
  payments: readonly LedgerPayment[],
  day: string,
): Ledger {
  const invoices = papers.filter(({ kind }) => kind !== 'credit');
  const creditsOf = (number: number) => papers.filter(({ credits }) => credits === number);
  const net = invoices.map((invoice) => {
    const credited = creditsOf(invoice.number);
    return {
      invoice,
      amountUsd: less(
        invoice.amountUsd,
        credited.map(({ amountUsd }) => amountUsd),
      ),
      taxUsd: less(
        invoice.taxUsd,
        credited.map(({ taxUsd }) => taxUsd),
      ),
      creditedUsd: sumUsd(credited.flatMap(({ amountUsd, taxUsd }) => [amountUsd, taxUsd])),
    };
  });
  const takenBack = new Set(payments.map(({ takesBack }) => takesBack));
  const paidUsd = sumUsd(
    payments
      .filter(({ id, takesBack }) => takesBack === null && !takenBack.has(id))
      .map(({ amountUsd }) => amountUsd),
  );
  const paidOn = allocate(
    net.map(({ invoice, amountUsd, taxUsd }) => ({ ...invoice, netUsd: sumUsd([amountUsd, taxUsd]) })),
    paidUsd,
  );
  const open = net.map(({ invoice, amountUsd, taxUsd, creditedUsd }): OpenInvoice => {
    const paid = paidOn.get(invoice.number) ?? usd(0);
    const daysPast = daysBetween(invoice.dueOn, day);
    return {
      number: invoice.number,
      totalUsd: sumUsd([invoice.amountUsd, invoice.taxUsd]),
      creditedUsd,
      paidUsd: paid,
      openUsd: less(sumUsd([amountUsd, taxUsd]), [paid]),
      daysPast,
      age: ageOf(daysPast),
    };
  });
  const billedUsd = sumUsd(net.map(({ amountUsd }) => amountUsd));
  const taxUsd = sumUsd(net.map(({ taxUsd: tax }) => tax));
  return {
    depositUsd: sumUsd(
      net.filter(({ invoice }) => invoice.kind === 'deposit').map(({ amountUsd }) => amountUsd),
    ),
    billedUsd,
    taxUsd,
    paidUsd,
    balanceUsd: less(sumUsd([billedUsd, taxUsd]), [paidUsd]),
    invoices: open,
    aged: agedOf(open),
  };
}

/** Which age days past the due day fall under. Common practice, no source. */
export function ageOf(daysPast: number): Age {
  if (daysPast <= 0) return 'not-due';
  if (daysPast <= 30) return '1-30';
  if (daysPast <= 60) return '31-60';
  return daysPast <= 90 ? '61-90' : 'over-90';
}

/** What is open, added up by age. [$] */
export function agedOf(
  invoices: readonly Pick<OpenInvoice, 'age' | 'openUsd'>[],
): Readonly<Record<Age, Usd>> {
  const of = (age: Age): Usd =>
    sumUsd(invoices.filter((invoice) => invoice.age === age).map(({ openUsd }) => openUsd));
  return {
    'not-due': of('not-due'),
    '1-30': of('1-30'),
    '31-60': of('31-60'),
    '61-90': of('61-90'),
    'over-90': of('over-90'),
  };
}

function allocate(
  invoices: readonly { readonly number: number; readonly dueOn: string; readonly netUsd: Usd }[],
  paidUsd: Usd,
): ReadonlyMap<number, Usd> {
  let left = new Decimal(paidUsd);
  const paid = new Map<number, Usd>();
  const inTurn = invoices.toSorted((a, b) => a.dueOn.localeCompare(b.dueOn) || a.number - b.number);
  for (const { number, netUsd } of inTurn) {
    const part = Decimal.max(0, Decimal.min(left, netUsd));
    paid.set(number, usd(part));
    left = left.minus(part);
  }
  return paid;
}

function less(amount: Usd, taken: readonly Usd[]): Usd {
  return usd(new Decimal(amount).minus(sumUsd(taken)));
}
