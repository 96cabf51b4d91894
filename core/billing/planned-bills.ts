import { paymentPlan } from '../offer/payments.ts';
import type { PlannedPayment } from '../offer/offer-document.ts';
import { splitUsd, type Usd } from '../units/money.ts';

/** A payment that the accepted quote has planned, as a bill of it would ask before tax. */
export type PlannedBill = { readonly when: string; readonly amountUsd: Usd };

/**
 * What the payments of an accepted quote are before tax: each its share of the price, by largest remainder, so that they add
 * up to the price to the cent. None where the plan does not add up to the total.
 * Worked: half and half of 1,065.00, of which 65.00 is tax -> 500.00 and 500.00.
 * @param plan - as it stands in the quote.
 * @param estimate - price before tax to the client, and the total with it. [$]
 */
export function plannedBills(
  plan: readonly PlannedPayment[],
  { priceUsd, totalUsd }: { readonly priceUsd: Usd; readonly totalUsd: Usd },
): readonly PlannedBill[] {
  const { payments, fault } = paymentPlan(plan, totalUsd);
  if (fault !== null || payments.length === 0) return [];
  const shares = splitUsd(
    priceUsd,
    payments.map(({ amountUsd }) => amountUsd),
  );
  return payments.map(({ when }, index) => ({ when, amountUsd: shares[index] ?? priceUsd }));
}
