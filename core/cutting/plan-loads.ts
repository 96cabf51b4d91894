import { isBetter } from './better-loads.ts';
import { allOf, type Column, type Worths } from './column.ts';
import { dive } from './dive.ts';
import { greedyLoads } from './greedy-loads.ts';
import { groupSizes, ungroup, type GroupedModels } from './group-sizes.ts';
import { improvePairs } from './improve-pairs.ts';
import { lowerBound, type ProvenBound } from './lower-bound.ts';
import { relax } from './relaxation.ts';
import { selectStocks } from './select-stocks.ts';
import { centsOf, type CuttingModel, type Load } from './cutting-model.ts';

/** Sizes up to which the problem is solved as it stands; beyond, neighbouring sizes are drawn together. */
const mostSizes = 60;

/** Work for a plan, in table cells; about a fifth of a second. */
const workCells = 60_000_000;

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
 * @returns the best loads found, and the bound; undefined where boards ran out in every way tried.
 */
export function planLoads(model: CuttingModel): FoundLoads | undefined {
  const found = model.sizes.length <= mostSizes ? planAsItStands(model) : planGrouped(model);
  if (found === undefined || centsOf(model, found.loads) <= found.bound.cents) return found;
  const improved = improvePairs(model, found.loads, { cells: workCells / 6 });
  const loads = isBetter(model, improved, found.loads) ? improved : found.loads;
  return { ...found, loads };
}

function planAsItStands(model: CuttingModel): FoundLoads | undefined {
  const pool: Column[] = [];
  const { loads, bound } = dive(model, { cells: workCells }, pool);
  return loads === undefined ? undefined : { loads, bound, pool };
}

function planGrouped(model: CuttingModel): FoundLoads | undefined {
  const greedy = greedyLoads(model, allOf(model), { cells: workCells / 6 });
  const grouped = groupSizes(model, mostSizes);
  const dived = dive(grouped.roundedUp, { cells: workCells / 2 });
  const loads =
    dived.loads === undefined ? undefined : selectStocks(model, ungroup(model, grouped, dived.loads));
  const best =
    loads !== undefined && (greedy === undefined || isBetter(model, loads, greedy)) ? loads : greedy;
  if (best === undefined) return undefined;
  const { worths } = relax(grouped.roundedDown, allOf(grouped.roundedDown), [], { cells: workCells / 3 });
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
