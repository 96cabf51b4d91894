import { isBetter } from './better-loads.ts';
import { allOf, columnKey, columnOf, sizesOfColumn, type Column, type Left, type Worths } from './column.ts';
import { greedyLoads } from './greedy-loads.ts';
import { relax, type Relaxation, type WorkBudget } from './relaxation.ts';
import { selectStocks } from './select-stocks.ts';
import { lowerBound, type ProvenBound } from './lower-bound.ts';
import { centsOf, type CuttingModel, type Load } from './cutting-model.ts';

/** What diving found. */
export type Dived = {
  /** The best loads; undefined where boards ran out in every way tried. */
  readonly loads: readonly Load[] | undefined;
  readonly bound: ProvenBound;
  readonly worths: Worths;
};

/**
 * Turns the plan in fractions into whole boards: takes the whole part of every column (or, where there is none, rounds
 * up the column nearest to a whole board), solves again for what is left, and at each step also lets the greedy ways
 * finish the rest. Stops as soon as the bound is met.
 * @param model - the problem.
 * @param budget - work that may be done.
 * @param pool - columns known already; those of the first solution are appended.
 */
export function dive(model: CuttingModel, budget: WorkBudget, pool: Column[] = []): Dived {
  const all = allOf(model);
  const demand = [...all.demand];
  const supply = [...all.supply];
  const taken: number[][] = [];
  let known: readonly Column[] = pool;
  let best = greedyLoads(model, all, budget);
  const relaxed = relax(model, all, pool, budget);
  const ceiling = best === undefined ? Number.POSITIVE_INFINITY : centsOf(model, best);
  const bound = lowerBound(model, relaxed, ceiling);
  let relaxation: Relaxation = relaxed;
  while (demand.some((count) => count > 0)) {
    if (best !== undefined && centsOf(model, best) <= bound.cents) break;
    if (!takeColumns(relaxation.columns, demand, supply, taken)) break;
    const rest = greedyLoads(model, { demand, supply }, budget, 'fits');
    const candidate =
      rest === undefined ? undefined : selectStocks(model, [...taken, ...rest.map(({ sizes }) => sizes)]);
    if (candidate !== undefined && (best === undefined || isBetter(model, candidate, best))) best = candidate;
    if (budget.cells <= 0 || budget.stopped?.() === true) break;
    const clippedPool = clipped(known, { demand, supply });
    known = clippedPool;
    relaxation = relax(model, { demand, supply }, clippedPool, budget);
  }
  return { loads: best, bound, worths: relaxed.worths };
}

/** Takes whole boards out of a plan in fractions; false where there are none to take. */
function takeColumns(
  columns: Relaxation['columns'],
  demand: number[],
  supply: number[],
  taken: number[][],
): boolean {
  const nearest = columns.reduce<Relaxation['columns'][number] | undefined>(
    (chosen, candidate) =>
      chosen === undefined || candidate.boards > chosen.boards + 1e-9 ? candidate : chosen,
    undefined,
  );
  const whole = columns.filter(({ boards }) => boards >= 1 - 1e-6);
  let took = false;
  for (const { column, boards } of whole.length > 0 || nearest === undefined ? whole : [nearest]) {
    const times = whole.length > 0 ? Math.floor(boards + 1e-6) : 1;
    for (let time = 0; time < times; time += 1) took = take(column, demand, supply, taken) || took;
  }
  return took;
}

function take(column: Column, demand: number[], supply: number[], taken: number[][]): boolean {
  const { sizes: kinds, counts } = column;
  const sizes = sizesOfColumn({
    sizes: kinds,
    counts: kinds.map((size, index) => Math.min(counts[index] ?? 0, demand[size] ?? 0)),
  });
  if (sizes.length === 0 || (supply[column.stock] ?? 0) <= 0) return false;
  for (const size of sizes) demand[size] = (demand[size] ?? 0) - 1;
  supply[column.stock] = (supply[column.stock] ?? 0) - 1;
  taken.push(sizes);
  return true;
}

/** Columns cut down to the pieces that are left, of boards that there still are, each once. */
function clipped(pool: readonly Column[], { demand, supply }: Left): Column[] {
  const kept = new Map<string, Column>();
  for (const column of pool) {
    if ((supply[column.stock] ?? 0) <= 0) continue;
    const counts = demand.map(() => 0);
    for (const [index, size] of column.sizes.entries()) {
      counts[size] = Math.min(column.counts[index] ?? 0, demand[size] ?? 0);
    }
    const cut = columnOf(column.stock, column.cents, counts);
    if (cut.sizes.length > 0) kept.set(columnKey(cut), cut);
  }
  return [...kept.values()];
}
