import { isBetter } from './better-loads.ts';
import { fitDecreasing } from './fit-decreasing.ts';
import { patternGreedy } from './pattern-greedy.ts';
import type { CuttingModel, Load } from './cutting-model.ts';
import type { WorkBudget } from './relaxation.ts';

/** How much long pieces are favoured in the pattern-greedy runs. [-] */
const favours = [0, 0.25, 1];

/**
 * The best of the quick ways: first-fit and best-fit decreasing started on every length, and filling board by board.
 * @param model - the problem.
 * @param demand - pieces still to be packed, by size.
 * @param budget - work that may be done; filling board by board is left out where it would cost too much of it.
 * @param ways - `fits` leaves out filling board by board.
 */
export function greedyLoads(
  model: CuttingModel,
  demand: readonly number[],
  budget: WorkBudget,
  ways: 'all' | 'fits' = 'all',
): readonly Load[] {
  let best: readonly Load[] | undefined;
  const offer = (loads: readonly Load[]): void => {
    if (best === undefined || isBetter(model, loads, best)) best = loads;
  };
  for (const stock of model.stocks.keys()) {
    offer(fitDecreasing(model, demand, stock, 'first'));
    offer(fitDecreasing(model, demand, stock, 'best'));
  }
  const kinds = demand.filter((count) => count > 0).length;
  const cells = kinds * kinds * (model.stocks.at(-1)?.room ?? 0) * favours.length;
  if (ways === 'all' && cells <= budget.cells / 4) {
    budget.cells -= cells;
    for (const favour of favours) offer(patternGreedy(model, demand, favour));
  }
  return best ?? [];
}
