import { bestFill } from './best-fill.ts';
import type { Left } from './column.ts';
import { longestRoom, type CuttingModel, type Load } from './cutting-model.ts';
import { selectStocks } from './select-stocks.ts';

/**
 * Fills one board after the other so that a used inch costs least, and repeats each pattern as often as pieces and boards
 * last.
 * @param model - the problem.
 * @param left - pieces still to be packed, and boards that there still are.
 * @param favour - raised above 0, long pieces count for more than their length, so that they go first. [-]
 * @returns loads that hold every piece once; undefined where boards run out.
 */
export function patternGreedy(model: CuttingModel, left: Left, favour: number): readonly Load[] | undefined {
  const demand = [...left.demand];
  const supply = [...left.supply];
  const contents: number[][] = [];
  const longest = longestRoom(model);
  const values = model.sizes.map(({ span }) => span * (1 + favour * (span / longest)));
  while (demand.some((count) => count > 0)) {
    const fill = bestFill(model, demand, values);
    let chosen: number | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const [stock, { cents }] of model.stocks.entries()) {
      const value = fill.valueOf(stock);
      if (value <= 0 || (supply[stock] ?? 0) <= 0 || cents / value > least) continue;
      least = cents / value;
      chosen = stock;
    }
    if (chosen === undefined) return undefined;
    const counts = fill.countsOf(chosen);
    const times = counts.reduce(
      (fewest, count, size) =>
        count === 0 ? fewest : Math.min(fewest, Math.floor((demand[size] ?? 0) / count)),
      supply[chosen] ?? 0,
    );
    const sizes = counts.flatMap((count, size) => Array.from({ length: count }, () => size));
    for (let time = 0; time < times; time += 1) contents.push(sizes);
    supply[chosen] = (supply[chosen] ?? 0) - times;
    for (const [size, count] of counts.entries()) demand[size] = (demand[size] ?? 0) - count * times;
  }
  return selectStocks(model, contents, left.supply);
}
