import { bestFill } from './best-fill.ts';
import { cheapestLoad } from './fit-decreasing.ts';
import type { CuttingModel, Load } from './cutting-model.ts';

/**
 * Fills one board after the other so that a used inch costs least, and repeats each pattern as often as pieces last.
 * @param model - the problem.
 * @param demand - pieces still to be packed, by size.
 * @param favour - raised above 0, long pieces count for more than their length, so that they go first. [-]
 * @returns loads that hold every piece once.
 */
export function patternGreedy(
  model: CuttingModel,
  demand: readonly number[],
  favour: number,
): readonly Load[] {
  const left = [...demand];
  const loads: Load[] = [];
  const spans = model.sizes.map((size) => size.span);
  const longest = model.stocks.at(-1)?.room ?? 0;
  const values = spans.map((span) => span * (1 + favour * (span / longest)));
  while (left.some((count) => count > 0)) {
    const fill = bestFill(spans, left, values, longest);
    let counts: number[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const stock of model.stocks) {
      const value = fill.valueForRoom[stock.room] ?? 0;
      if (value > 0 && stock.cents / value <= least) {
        least = stock.cents / value;
        counts = fill.countsForRoom(stock.room);
      }
    }
    const times = counts.reduce(
      (fewest, count, size) =>
        count === 0 ? fewest : Math.min(fewest, Math.floor((left[size] ?? 0) / count)),
      Number.POSITIVE_INFINITY,
    );
    const sizes = counts.flatMap((count, size) => Array.from({ length: count }, () => size));
    for (let time = 0; time < times; time += 1) loads.push(cheapestLoad(model, sizes));
    for (const [size, count] of counts.entries()) left[size] = (left[size] ?? 0) - count * times;
  }
  return loads;
}
