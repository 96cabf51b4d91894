import { bestFill } from './best-fill.ts';
import { columnKey, columnOf, priceTolerance, quickColumns, type Column } from './column.ts';
import { improveBasis, startBasis } from './simplex.ts';
import type { CuttingModel } from './cutting-model.ts';

/** What is left of the work that a plan may do, counted in table cells so that it is the same on every machine. */
export type WorkBudget = { cells: number };

/** The plan with fractions of boards allowed, and the worth of each size that proves how little it can cost. */
export type Relaxation = {
  readonly columns: readonly { readonly column: Column; readonly boards: number }[];
  /** Price of one piece of each size in the best proof found, zero or more. [cents] */
  readonly worth: Float64Array;
};

/**
 * Solves the cutting problem with fractions of boards, by column generation: a small revised simplex over the columns
 * known so far; then a quick fill, and where that finds nothing an exact knapsack, for the next ones worth adding.
 * Source: P. C. Gilmore and R. E. Gomory, "A Linear Programming Approach to the Cutting-Stock Problem", Operations
 * Research 9 (1961); bound during the process after A. A. Farley (1990). Both from memory.
 * @param model - the problem.
 * @param demand - pieces by size; the fractions cut exactly these.
 * @param pool - columns known already; new ones are appended.
 * @param budget - work that may be done; when it runs out the best proof so far is returned.
 */
export function relax(
  model: CuttingModel,
  demand: readonly number[],
  pool: Column[],
  budget: WorkBudget,
): Relaxation {
  const basis = startBasis(model, demand);
  const rows = basis.active.length;
  const spans = model.sizes.map((size) => size.span);
  const longest = model.stocks.at(-1)?.room ?? 0;
  const seen = new Set<string>();
  let proof: { readonly cents: number; readonly worth: Float64Array } = { cents: -1, worth: basis.worth };
  const add = (candidates: readonly Column[]): boolean => {
    const before = pool.length;
    for (const column of candidates) {
      const key = columnKey(column);
      if (seen.has(key)) continue;
      seen.add(key);
      pool.push(column);
    }
    return pool.length > before;
  };
  for (;;) {
    const pivots = improveBasis(basis, pool);
    budget.cells -= (pivots + 1) * rows * rows;
    const worth = basis.worth.map((value) => Math.max(0, value));
    if (add(quickColumns(model, demand, worth)) && budget.cells > 0) continue;
    const fill = bestFill(spans, demand, worth, longest);
    budget.cells -= fill.cells;
    const dear: Column[] = [];
    let overpriced = 1;
    for (const [stock, { room, cents }] of model.stocks.entries()) {
      const value = fill.valueForRoom[room] ?? 0;
      if (value > overpriced * cents) overpriced = cents === 0 ? Number.POSITIVE_INFINITY : value / cents;
      if (value > cents + priceTolerance * Math.max(1, cents)) {
        dear.push(columnOf(stock, cents, fill.countsForRoom(room)));
      }
    }
    const total = basis.active.reduce((sum, size) => sum + (worth[size] ?? 0) * (demand[size] ?? 0), 0);
    if (total / overpriced > proof.cents) proof = { cents: total / overpriced, worth };
    if (!add(dear) || budget.cells <= 0) break;
  }
  return {
    columns: basis.columns.map((column, row) => ({ column, boards: basis.level[row] ?? 0 })),
    worth: proof.worth,
  };
}
