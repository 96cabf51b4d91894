import { Decimal } from 'decimal.js';
import { splitUsd, sumUsd, type Usd, usd, zeroUsd } from '../units/money.ts';
import type { OfferFault } from '../problems/offer-fault.ts';
import type { PlannedPayment } from './offer-document.ts';

/** A payment in dollars. */
export type DuePayment = { readonly id: string; readonly when: string; readonly amountUsd: Usd };

/** The payments of a price, and what is wrong with them. */
export type PaymentPlan = {
  readonly payments: readonly DuePayment[];
  /** What is left of the total, less than nothing where they come to more. [$] */
  readonly leftUsd: Usd;
  /** Null where they add up to the cent; else what is wrong, and at which payment. */
  readonly fault: { readonly at: number; readonly fault: OfferFault } | null;
};

/**
 * Turns a plan of payments into dollars that add up to the total.
 *
 * Amounts stand as they are. A percentage is of the total, rounded to cents half up; where percentages and amounts take
 * all of it without a payment of the rest, the cents of rounding are shared out by largest remainder instead. The rest
 * is what is left.
 * @param plan - in the order in which they are due.
 * @param totalUsd - what the client pays in all. [$]
 * @returns e.g. a third, a third and the rest of 100.00 at 33.33 % -> 33.33, 33.33, 33.34. [$]
 */
export function paymentPlan(plan: readonly PlannedPayment[], totalUsd: Usd): PaymentPlan {
  const total = new Decimal(totalUsd);
  const percents = plan.map(({ kind, value }) => (kind === 'percent' ? new Decimal(value) : new Decimal(0)));
  const amounts = plan.map(({ kind, value }) => (kind === 'amount' ? usd(value) : zeroUsd));
  const rests = plan.flatMap(({ kind }, at) => (kind === 'rest' ? [at] : []));
  const ofPercents = total.minus(sumUsd(amounts));
  const percentSum = percents.reduce((sum, percent) => sum.plus(percent), new Decimal(0));
  const takesAll =
    rests.length === 0 && percentSum.gt(0) && usd(total.times(percentSum).div(100)) === usd(ofPercents);
  const shares = takesAll
    ? splitUsd(usd(ofPercents), percents)
    : percents.map((percent) => usd(total.times(percent).div(100)));
  const fixed = plan.map((_, at) => sumUsd([amounts[at] ?? zeroUsd, shares[at] ?? zeroUsd]));
  const left = usd(total.minus(sumUsd(fixed)));
  const [rest, secondRest] = rests;
  const payments = plan.map(({ id, when }, at) => ({
    id,
    when,
    amountUsd: at === rest && !left.startsWith('-') ? left : (fixed[at] ?? zeroUsd),
  }));
  const stillLeft = usd(total.minus(sumUsd(payments.map(({ amountUsd }) => amountUsd))));
  return { payments, leftUsd: stillLeft, fault: faultOf(plan.length, secondRest, stillLeft) };
}

function faultOf(count: number, secondRest: number | undefined, leftUsd: Usd): PaymentPlan['fault'] {
  if (count === 0) return null;
  if (secondRest !== undefined) return { at: secondRest, fault: { what: 'two-rests' } };
  return leftUsd === zeroUsd ? null : { at: count - 1, fault: { what: 'payments-do-not-add-up', leftUsd } };
}
