import { fitDecreasing } from './fit-decreasing.ts';
import type { CuttingModel, Load, StockChoice } from './cutting-model.ts';

/** What the whole purchase costs when every board has the same length. */
export type OneLengthPlan = {
  readonly stock: StockChoice;
  readonly cents: number;
  readonly boards: number;
  /** The same boards, each swapped for the cheapest length that holds what is in it. */
  readonly reselected: readonly Load[];
};

/**
 * First-fit decreasing with a single stock length, on the length where that costs least: what a careful person does by
 * hand, and the measure for the plan.
 * @param model - the problem.
 * @returns the cheapest such purchase; or null where no length holds every piece.
 */
export function bestOneLength(model: CuttingModel): OneLengthPlan | null {
  const longestSpan = model.sizes[0]?.span ?? 0;
  const demand = model.sizes.map((size) => size.demand);
  let best: OneLengthPlan | null = null;
  for (const [index, stock] of model.stocks.entries()) {
    if (stock.room < longestSpan) continue;
    const reselected = fitDecreasing(model, demand, index, 'first');
    const cents = reselected.length * stock.cents;
    if (best === null || cents < best.cents) best = { stock, cents, boards: reselected.length, reselected };
  }
  return best;
}
