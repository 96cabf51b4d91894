import { Decimal } from 'decimal.js';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { type Usd, usd } from '../units/money.ts';

/** What a credit takes back of one invoice. */
export type CreditFigures = {
  readonly invoiceNumber: number;
  readonly amountUsd: Usd;
  readonly taxUsd: Usd;
  /** Below zero: what it takes off what is owed. */
  readonly totalUsd: Usd;
};

/**
 * Credits an invoice, in whole or in part. A part takes its share of the tax along, rounded to cents half up; the last part
 * takes what is left of it, so that credits of a whole invoice close it to the cent.
 * @param invoice - its number and what it asked for. [$]
 * @param credited - what earlier credits took back of it. [$]
 * @param amountUsd - to take back, before tax. [$]
 * @returns or `credit-too-large`.
 */
export function makeCredit(
  invoice: { readonly number: number; readonly amountUsd: Usd; readonly taxUsd: Usd },
  credited: { readonly amountUsd: Usd; readonly taxUsd: Usd },
  amountUsd: string,
): Result<CreditFigures, Problem> {
  const left = new Decimal(invoice.amountUsd).minus(credited.amountUsd);
  const amount = new Decimal(usd(amountUsd));
  if (amount.lte(0) || amount.gt(left))
    return fail({
      code: 'billing',
      fault: { what: 'credit-too-large', leftUsd: usd(left), invoice: invoice.number },
      field: 'amountUsd',
    });
  const taxLeft = new Decimal(invoice.taxUsd).minus(credited.taxUsd);
  const share = amount.eq(left)
    ? taxLeft
    : Decimal.min(
        taxLeft,
        new Decimal(usd(new Decimal(invoice.taxUsd).times(amount).div(invoice.amountUsd))),
      );
  return ok({
    invoiceNumber: invoice.number,
    amountUsd: usd(amount),
    taxUsd: usd(share),
    totalUsd: usd(amount.plus(share).neg()),
  });
}
