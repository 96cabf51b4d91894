import { isBetter } from './better-loads.ts';
import { cheapestLoad } from './fit-decreasing.ts';
import { greedyLoads } from './greedy-loads.ts';
import { columnKey, columnOf, type Column } from './column.ts';
import { relax, type WorkBudget } from './relaxation.ts';
import { lowerBoundCents } from './lower-bound.ts';
import { centsOf, type CuttingModel, type Load } from './cutting-model.ts';

/**
 * Turns the plan in fractions into whole boards: takes the whole part of every column (or, where there is none, rounds
 * up the column nearest to a whole board), solves again for what is left, and at each step also lets the greedy ways
 * finish the rest. Stops as soon as the bound is met.
 * @param model - the problem.
 * @param budget - work that may be done.
 * @returns the best loads found, and the worths that the first solution proves.
 */
export function dive(
  model: CuttingModel,
  budget: WorkBudget,
): { readonly loads: readonly Load[]; readonly worth: Float64Array } {
  const left = model.sizes.map((size) => size.demand);
  const taken: Load[] = [];
  let pool: Column[] = [];
  let best = greedyLoads(model, left, budget);
  let worth: Float64Array | undefined;
  let bound = 0;
  while (left.some((count) => count > 0)) {
    const relaxation = relax(model, left, pool, budget);
    if (worth === undefined) {
      worth = relaxation.worth;
      bound = lowerBoundCents(model, worth, centsOf(model, best));
    }
    if (centsOf(model, best) <= bound) break;
    takeColumns(model, relaxation.columns, left, taken);
    const candidate = [...taken, ...greedyLoads(model, left, budget, 'fits')];
    if (isBetter(model, candidate, best)) best = candidate;
    if (budget.cells <= 0) break;
    pool = clipped(pool, left);
  }
  return { loads: best, worth: worth ?? new Float64Array(model.sizes.length) };
}

function takeColumns(
  model: CuttingModel,
  columns: readonly { readonly column: Column; readonly boards: number }[],
  left: number[],
  taken: Load[],
): void {
  const nearest = columns.reduce<{ readonly column: Column; readonly boards: number } | undefined>(
    (chosen, candidate) =>
      chosen === undefined || candidate.boards > chosen.boards + 1e-9 ? candidate : chosen,
    undefined,
  );
  const whole = columns.filter(({ boards }) => boards >= 1 - 1e-6);
  for (const { column, boards } of whole.length > 0 || nearest === undefined ? whole : [nearest]) {
    const times = whole.length > 0 ? Math.floor(boards + 1e-6) : 1;
    for (let time = 0; time < times; time += 1) take(model, column, left, taken);
  }
}

function take(model: CuttingModel, column: Column, left: number[], taken: Load[]): void {
  const sizes = column.sizes.flatMap((size, index) =>
    Array.from({ length: Math.min(column.counts[index] ?? 0, left[size] ?? 0) }, () => size),
  );
  if (sizes.length === 0) return;
  for (const size of sizes) left[size] = (left[size] ?? 0) - 1;
  taken.push(cheapestLoad(model, sizes));
}

/** Columns cut down to the pieces that are left, each once. */
function clipped(pool: readonly Column[], left: readonly number[]): Column[] {
  const kept = new Map<string, Column>();
  for (const column of pool) {
    const counts = left.map(() => 0);
    for (const [index, size] of column.sizes.entries()) {
      counts[size] = Math.min(column.counts[index] ?? 0, left[size] ?? 0);
    }
    const cut = columnOf(column.stock, column.cents, counts);
    if (cut.sizes.length > 0) kept.set(columnKey(cut), cut);
  }
  return [...kept.values()];
}
