import { isBetter } from './better-loads.ts';
import { allOf, type Column, type Worths } from './column.ts';
import { dive } from './dive.ts';
import { greedyLoads } from './greedy-loads.ts';
import { groupSizes, ungroup, type GroupedModels } from './group-sizes.ts';
import { improvePairs } from './improve-pairs.ts';
import { lowerBound, type ProvenBound } from './lower-bound.ts';
import { relax, type WorkBudget } from './relaxation.ts';
import { selectStocks } from './select-stocks.ts';
import { centsOf, type CuttingModel, type Load } from './cutting-model.ts';

/** How much work a plan may be. */
export type Effort = {
  /** Sizes up to which the problem is solved as it stands; beyond, neighbouring sizes are drawn together. */
  readonly mostSizes: number;
  /** Work in table cells. */
  readonly cells: number;
};

/** For a plan at once; a fifth of a second at most. */
export const atOnce: Effort = { mostSizes: 60, cells: 60_000_000 };

/** For a plan that may take its time; some seconds. */
export const atLeisure: Effort = { mostSizes: 600, cells: 1_500_000_000 };

/** Loads for every piece, and the least that any loads can count for. */
export type FoundLoads = {
  readonly loads: readonly Load[];
  readonly bound: ProvenBound;
  /** Patterns met on the way. */
  readonly pool: readonly Column[];
};

/**
 * Finds loads for every piece, and the least that any loads can cost.
 * @param model - the problem.
 * @param effort - how much work it may be.
 * @param stopped - whether the work is no longer wanted.
 * @returns the best loads found, and the bound; undefined where boards ran out in every way tried.
 */
export function planLoads(
  model: CuttingModel,
  { mostSizes, cells }: Effort = atOnce,
  stopped: () => boolean = () => false,
): FoundLoads | undefined {
  const budget = (share: number): WorkBudget => ({ cells: cells / share, stopped });
  const found =
    model.sizes.length <= mostSizes
      ? planAsItStands(model, budget(1))
      : planGrouped(model, mostSizes, budget);
  if (found === undefined || centsOf(model, found.loads) <= found.bound.cents) return found;
  const improved = improvePairs(model, found.loads, budget(6));
  const loads = isBetter(model, improved, found.loads) ? improved : found.loads;
  return { ...found, loads };
}

function planAsItStands(model: CuttingModel, budget: WorkBudget): FoundLoads | undefined {
  const pool: Column[] = [];
  const { loads, bound } = dive(model, budget, pool);
  return loads === undefined ? undefined : { loads, bound, pool };
}

function planGrouped(
  model: CuttingModel,
  mostSizes: number,
  budget: (share: number) => WorkBudget,
): FoundLoads | undefined {
  const greedy = greedyLoads(model, allOf(model), budget(6));
  const grouped = groupSizes(model, mostSizes);
  const dived = dive(grouped.roundedUp, budget(2));
  const loads =
    dived.loads === undefined ? undefined : selectStocks(model, ungroup(model, grouped, dived.loads));
  const best =
    loads !== undefined && (greedy === undefined || isBetter(model, loads, greedy)) ? loads : greedy;
  if (best === undefined) return undefined;
  const { worths } = relax(grouped.roundedDown, allOf(grouped.roundedDown), [], budget(3));
  const relaxed = { worths: ungroupedWorths(model, grouped, worths), finished: false };
  return { loads: best, bound: lowerBound(model, relaxed, centsOf(model, best)), pool: [] };
}

/** Worths of the true sizes: each as much as its group, rounded down, is worth. */
function ungroupedWorths(model: CuttingModel, { members }: GroupedModels, worths: Worths): Worths {
  const worth = new Float64Array(model.sizes.length);
  for (const [group, sizes] of members.entries())
    for (const size of sizes) worth[size] = worths.worth[group] ?? 0;
  return { worth, tax: worths.tax };
}
