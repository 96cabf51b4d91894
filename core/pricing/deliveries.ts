import type { CutPlan } from '../cutting/cut-plan-types.ts';
import { usd, type Usd } from '../units/money.ts';
import type { PriceQuestion } from './stock-lengths.ts';

/** The suppliers that boards of these plans are bought from, in the order of the price list. */
export function suppliersUsed(
  { priceList }: Pick<PriceQuestion, 'priceList'>,
  cutPlans: readonly CutPlan[],
): readonly string[] {
  const bought = new Set(
    cutPlans.flatMap(({ boards }) => boards.filter(({ onHand }) => !onHand).map(({ itemId }) => itemId)),
  );
  return [...new Set(priceList.filter(({ id }) => bought.has(id)).map(({ supplier }) => supplier))];
}

/** What a supplier charges to deliver, whatever is bought; nothing where Settings do not say. [$] */
export function deliveryOf({ settings }: Pick<PriceQuestion, 'settings'>, supplier: string): Usd {
  const name = supplier.trim().toLowerCase();
  const found = settings.suppliers.find((one) => one.name.trim().toLowerCase() === name);
  return usd(found?.deliveryUsd ?? 0);
}
