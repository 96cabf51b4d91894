import { bestFill } from './best-fill.ts';
import {
  columnKey,
  columnOf,
  priceTolerance,
  quickColumns,
  type Column,
  type Left,
  type Worths,
} from './column.ts';
import { improveBasis, startBasis } from './simplex.ts';
import type { CuttingModel } from './cutting-model.ts';

/** What is left of the work that a plan may do, counted in table cells so that it is the same on every machine. */
export type WorkBudget = {
  cells: number;
  /** Whether the work is no longer wanted. */
  readonly stopped?: () => boolean;
};

/** The plan with fractions of boards allowed, and the worths that prove how little it can cost. */
export type Relaxation = {
  readonly columns: readonly { readonly column: Column; readonly boards: number }[];
  /** Worths in the best proof found, zero or more. [cents] */
  readonly worths: Worths;
  /** Whether no further column would make it cheaper. */
  readonly finished: boolean;
};

/**
 * Solves the cutting problem with fractions of boards, by column generation: a small revised simplex over the columns
 * known so far; then a quick fill, and where that finds nothing an exact knapsack, for the next ones worth adding.
 * Source: P. C. Gilmore and R. E. Gomory, "A Linear Programming Approach to the Cutting-Stock Problem", Operations
 * Research 9 (1961); bound during the process after A. A. Farley (1990). Both from memory.
 * @param model - the problem.
 * @param left - pieces by size, which the fractions cut exactly, and boards by stock.
 * @param pool - columns known already; new ones are appended.
 * @param budget - work that may be done; when it runs out the best proof so far is returned.
 * @param phantomCents - price of a piece that no board is left for, by size; absent: beyond any true one. [cents]
 */
export function relax(
  model: CuttingModel,
  left: Left,
  pool: Column[],
  budget: WorkBudget,
  phantomCents?: (size: number) => number,
): Relaxation {
  const basis = startBasis(model, left, phantomCents);
  const rows = basis.held.length;
  const seen = new Set(pool.map(columnKey));
  let proof: Worths & { readonly cents: number } = {
    cents: Number.NEGATIVE_INFINITY,
    worth: basis.worth,
    tax: basis.tax,
  };
  let finished = false;
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
  const spent = (): boolean => budget.cells <= 0 || budget.stopped?.() === true;
  for (;;) {
    const pivots = improveBasis(basis, pool);
    budget.cells -= (pivots + 1) * rows * rows;
    const worths: Worths = {
      worth: basis.worth.map((value) => Math.max(0, value)),
      tax: basis.tax.map((value) => Math.max(0, value)),
    };
    if (add(quickColumns(model, left, worths)) && !spent()) continue;
    const fill = bestFill(model, left.demand, worths.worth);
    budget.cells -= fill.cells;
    const dear: Column[] = [];
    let overpriced = 1;
    for (const [stock, { cents }] of model.stocks.entries()) {
      if ((left.supply[stock] ?? 0) <= 0) continue;
      const value = fill.valueOf(stock);
      const price = cents + (worths.tax[stock] ?? 0);
      if (value > overpriced * price) overpriced = price === 0 ? Number.POSITIVE_INFINITY : value / price;
      if (value > price + priceTolerance * Math.max(1, price))
        dear.push(columnOf(stock, cents, fill.countsOf(stock)));
    }
    const gross = basis.active.reduce(
      (sum, size) => sum + (worths.worth[size] ?? 0) * (left.demand[size] ?? 0),
      0,
    );
    const taxes = basis.scarce.reduce(
      (sum, stock) => sum + (worths.tax[stock] ?? 0) * (left.supply[stock] ?? 0),
      0,
    );
    // Lowered until no board holds more than its price and tax, the worths are a proof; taxes are not lowered with them.
    const proven = gross / overpriced - taxes;
    if (proven > proof.cents) proof = { cents: proven, ...worths };
    if (!add(dear)) {
      finished = true;
      break;
    }
    if (spent()) break;
  }
  return {
    columns: basis.held.flatMap((held, row) =>
      held.kind === 'cut' ? [{ column: held.column, boards: basis.level[row] ?? 0 }] : [],
    ),
    worths: proof,
    finished,
  };
}
