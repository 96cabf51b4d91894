import type { PriceItem, PriceObservation } from '../price-list.ts';

/** From this day on an item costs this, until the next step. */
export type PriceStep = { readonly from: string; readonly observation: PriceObservation };

/**
 * How an item's price went: one step a day that has a price, earliest first. Of several prices of one day the latest in the
 * list holds, as in `priceOn`.
 * @param item - the item with every price that it had.
 * @returns e.g. prices of 03-01, 04-01 and again 04-01 -> two steps, the second at the last price.
 */
export function priceSteps(item: Pick<PriceItem, 'prices'>): readonly PriceStep[] {
  const ofDay = new Map<string, PriceObservation>();
  for (const observation of item.prices) ofDay.set(observation.observedOn, observation);
  return [...ofDay.values()]
    .map((observation) => ({ from: observation.observedOn, observation }))
    .toSorted((a, b) => (a.from < b.from ? -1 : 1));
}

/**
 * The step that holds on a day.
 * @param steps - earliest first.
 * @param day - a civil day.
 * @returns the last step on or before the day, found by halving; undefined where all are later.
 */
export function stepOn<S extends { readonly from: string }>(steps: readonly S[], day: string): S | undefined {
  let low = 0;
  let high = steps.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((steps[middle]?.from ?? '') <= day) low = middle + 1;
    else high = middle;
  }
  return steps[low - 1];
}
