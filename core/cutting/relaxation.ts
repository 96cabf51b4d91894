import { bestFill } from './best-fill.ts';
import type { CuttingModel } from './cutting-model.ts';

/** A way to cut one board: how many of each size, on which stock. */
export type Column = { readonly stock: number; readonly counts: readonly number[] };

/** What is left of the work that a plan may do, counted in table cells so that it is the same on every machine. */
export type WorkBudget = { cells: number };

/** The plan with fractions of boards allowed, and the worth of each size that proves how little it can cost. */
export type Relaxation = {
  readonly columns: readonly { readonly column: Column; readonly boards: number }[];
  /** Price of one piece of each size in the best proof found, zero or more. [cents] */
  readonly worth: Float64Array;
};

const tolerance = 1e-7;

/**
 * Solves the cutting problem with fractions of boards, by column generation: a small revised simplex over the columns
 * known so far, and a knapsack that finds the next one worth adding.
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
  const active = [...demand.keys()].filter((size) => (demand[size] ?? 0) > 0);
  const rows = active.length;
  const basis: Column[] = active.map((size) => ownColumn(model, demand, size));
  const inverse = new Float64Array(rows * rows);
  const level = new Float64Array(rows);
  for (const [row, size] of active.entries()) {
    const count = basis[row]?.counts[size] ?? 1;
    inverse[row * rows + row] = 1 / count;
    level[row] = (demand[size] ?? 0) / count;
  }
  const usable = pool.filter((column) => column.counts.every((count, size) => count <= (demand[size] ?? 0)));
  const spans = model.sizes.map((size) => size.span);
  const longest = model.stocks.at(-1)?.room ?? 0;
  const centsOfColumn = (column: Column): number => model.stocks[column.stock]?.cents ?? 0;
  const worth = new Float64Array(spans.length);
  let proof: { readonly cents: number; readonly worth: Float64Array } = { cents: -1, worth: worth.slice() };
  const seen = new Set<string>();

  for (;;) {
    for (let pivots = 0; pivots < 50 * (rows + 10); pivots += 1) {
      setWorth(worth, basis.map(centsOfColumn), inverse, active);
      const entering = cheapestColumn(usable, worth, centsOfColumn);
      if (entering === undefined || !pivot(entering, basis, inverse, level, active)) break;
      budget.cells -= rows * rows + usable.length * 4;
    }
    setWorth(worth, basis.map(centsOfColumn), inverse, active);
    const positive = worth.map((value) => Math.max(0, value));
    const fill = bestFill(spans, demand, positive, longest);
    budget.cells -= fill.cells;
    let overpriced = 1;
    let added = 0;
    for (const [stock, { room, cents }] of model.stocks.entries()) {
      const value = fill.valueForRoom[room] ?? 0;
      if (value > overpriced * cents) overpriced = cents === 0 ? Number.POSITIVE_INFINITY : value / cents;
      if (value <= cents + tolerance * Math.max(1, cents)) continue;
      const column: Column = { stock, counts: fill.countsForRoom(room) };
      const key = `${stock}:${column.counts.join()}`;
      if (seen.has(key)) continue;
      seen.add(key);
      usable.push(column);
      pool.push(column);
      added += 1;
    }
    const total = active.reduce((sum, size) => sum + (positive[size] ?? 0) * (demand[size] ?? 0), 0);
    if (total / overpriced > proof.cents) proof = { cents: total / overpriced, worth: positive };
    if (added === 0 || budget.cells <= 0) break;
  }
  return {
    columns: basis.map((column, row) => ({ column, boards: level[row] ?? 0 })),
    worth: proof.worth,
  };
}

/** A column of one size alone, on the stock that makes a piece of it cheapest. */
function ownColumn(model: CuttingModel, demand: readonly number[], size: number): Column {
  const span = model.sizes[size]?.span ?? 1;
  let best = { stock: -1, count: 1, each: Number.POSITIVE_INFINITY };
  for (const [stock, { room, cents }] of model.stocks.entries()) {
    const count = Math.min(Math.floor(room / span), demand[size] ?? 0);
    if (count > 0 && cents / count < best.each) best = { stock, count, each: cents / count };
  }
  return { stock: best.stock, counts: demand.map((_, index) => (index === size ? best.count : 0)) };
}

function setWorth(
  worth: Float64Array,
  cents: readonly number[],
  inverse: Float64Array,
  active: readonly number[],
): void {
  const rows = active.length;
  for (const [place, size] of active.entries()) {
    let sum = 0;
    for (let row = 0; row < rows; row += 1) sum += (cents[row] ?? 0) * (inverse[row * rows + place] ?? 0);
    worth[size] = sum;
  }
}

function cheapestColumn(
  columns: readonly Column[],
  worth: Float64Array,
  centsOfColumn: (column: Column) => number,
): Column | undefined {
  let chosen: Column | undefined;
  let least = 0;
  for (const column of columns) {
    const cents = centsOfColumn(column);
    let reduced = cents;
    for (let size = 0; size < column.counts.length; size += 1) {
      const count = column.counts[size] ?? 0;
      if (count !== 0) reduced -= count * (worth[size] ?? 0);
    }
    if (reduced < least - tolerance * Math.max(1, cents)) [chosen, least] = [column, reduced];
  }
  return chosen;
}

/** Brings a column into the basis; false where rounding leaves nothing to take out. */
function pivot(
  entering: Column,
  basis: Column[],
  inverse: Float64Array,
  level: Float64Array,
  active: readonly number[],
): boolean {
  const rows = active.length;
  const direction = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (const [place, size] of active.entries()) {
      const count = entering.counts[size] ?? 0;
      if (count !== 0) sum += (inverse[row * rows + place] ?? 0) * count;
    }
    direction[row] = sum;
  }
  let leaving = -1;
  let step = Number.POSITIVE_INFINITY;
  for (let row = 0; row < rows; row += 1) {
    const rate = direction[row] ?? 0;
    if (rate > 1e-9 && (level[row] ?? 0) / rate < step - 1e-12) {
      leaving = row;
      step = (level[row] ?? 0) / rate;
    }
  }
  if (leaving === -1) return false;
  const rate = direction[leaving] ?? 1;
  for (let place = 0; place < rows; place += 1) {
    inverse[leaving * rows + place] = (inverse[leaving * rows + place] ?? 0) / rate;
  }
  for (let row = 0; row < rows; row += 1) {
    if (row === leaving) continue;
    const factor = direction[row] ?? 0;
    if (factor === 0) continue;
    level[row] = Math.max(0, (level[row] ?? 0) - factor * step);
    for (let place = 0; place < rows; place += 1) {
      inverse[row * rows + place] =
        (inverse[row * rows + place] ?? 0) - factor * (inverse[leaving * rows + place] ?? 0);
    }
  }
  level[leaving] = step;
  basis[leaving] = entering;
  return true;
}
