import { allOf } from './column.ts';
import { fitDecreasing } from './fit-decreasing.ts';
import { needAlone, type CuttingModel, type Load, type StockChoice } from './cutting-model.ts';

/** What the whole purchase costs when every board has the same length. */
export type OneLengthPlan = {
  readonly stock: StockChoice;
  readonly cents: number;
  readonly boards: number;
  /** The same boards, each swapped for the cheapest length that holds what is in it. */
  readonly reselected: readonly Load[];
};

/**
 * First-fit decreasing with a single length to buy, on the length where that costs least: what a careful person does by
 * hand, and the measure for the plan.
 * @param model - the problem.
 * @returns the cheapest such purchase; or null where no length holds every piece.
 */
export function bestOneLength(model: CuttingModel): OneLengthPlan | null {
  const mostNeed = model.sizes.reduce((most, _, size) => Math.max(most, needAlone(model, size)), 0);
  const left = allOf(model);
  let best: OneLengthPlan | null = null;
  for (const [index, stock] of model.stocks.entries()) {
    if (stock.room < mostNeed || stock.available !== Number.POSITIVE_INFINITY) continue;
    const reselected = fitDecreasing(model, left, [index], 'first');
    if (reselected === undefined) continue;
    const cents = reselected.length * stock.priceCents;
    if (best === null || cents < best.cents) best = { stock, cents, boards: reselected.length, reselected };
  }
  return best;
}
