import { bestFill } from './best-fill.ts';
import type { CuttingModel } from './cutting-model.ts';

/** A way to cut one board: the stock, the sizes cut from it, and how many of each. */
export type Column = {
  readonly stock: number;
  readonly cents: number;
  readonly sizes: readonly number[];
  /** Beside each of `sizes`. */
  readonly counts: readonly number[];
};

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
    const count = basis[row]?.counts[0] ?? 1;
    inverse[row * rows + row] = 1 / count;
    level[row] = (demand[size] ?? 0) / count;
  }
  const usable = pool.filter(({ sizes, counts }) =>
    sizes.every((size, index) => (counts[index] ?? 0) <= (demand[size] ?? 0)),
  );
  const spans = model.sizes.map((size) => size.span);
  const longest = model.stocks.at(-1)?.room ?? 0;
  const worth = new Float64Array(spans.length);
  let proof: { readonly cents: number; readonly worth: Float64Array } = { cents: -1, worth: worth.slice() };
  const seen = new Set<string>();

  for (;;) {
    for (let pivots = 0; pivots < 50 * (rows + 10); pivots += 1) {
      setWorth(worth, basis, inverse, active);
      const entering = cheapestColumn(usable, worth);
      if (entering === undefined || !pivot(entering, basis, inverse, level, active)) break;
      budget.cells -= rows * rows + usable.length * 4;
    }
    setWorth(worth, basis, inverse, active);
    const positive = worth.map((value) => Math.max(0, value));
    const fill = bestFill(spans, demand, positive, longest);
    budget.cells -= fill.cells;
    let overpriced = 1;
    let added = 0;
    for (const [stock, { room, cents }] of model.stocks.entries()) {
      const value = fill.valueForRoom[room] ?? 0;
      if (value > overpriced * cents) overpriced = cents === 0 ? Number.POSITIVE_INFINITY : value / cents;
      if (value <= cents + tolerance * Math.max(1, cents)) continue;
      const column = columnOf(stock, cents, fill.countsForRoom(room));
      const key = columnKey(column);
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
  const cents = model.stocks[best.stock]?.cents ?? 0;
  return { stock: best.stock, cents, sizes: [size], counts: [best.count] };
}

/** Makes a column of counts by size. */
export function columnOf(stock: number, cents: number, countBySize: readonly number[]): Column {
  const sizes = [...countBySize.keys()].filter((size) => (countBySize[size] ?? 0) > 0);
  return { stock, cents, sizes, counts: sizes.map((size) => countBySize[size] ?? 0) };
}

/** Text that is the same for equal columns. */
export function columnKey({ stock, sizes, counts }: Column): string {
  return `${stock}:${sizes.join()}:${counts.join()}`;
}

function setWorth(
  worth: Float64Array,
  basis: readonly Column[],
  inverse: Float64Array,
  active: readonly number[],
): void {
  const rows = active.length;
  const sums = new Float64Array(rows);
  for (const [row, { cents }] of basis.entries()) {
    for (let place = 0; place < rows; place += 1) {
      sums[place] = (sums[place] ?? 0) + cents * (inverse[row * rows + place] ?? 0);
    }
  }
  for (const [place, size] of active.entries()) worth[size] = sums[place] ?? 0;
}

function cheapestColumn(columns: readonly Column[], worth: Float64Array): Column | undefined {
  let chosen: Column | undefined;
  let least = 0;
  for (const column of columns) {
    const { sizes, counts, cents } = column;
    let reduced = cents;
    for (let index = 0; index < sizes.length; index += 1) {
      reduced -= (counts[index] ?? 0) * (worth[sizes[index] ?? 0] ?? 0);
    }
    if (reduced < least - tolerance * Math.max(1, cents)) {
      chosen = column;
      least = reduced;
    }
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
  for (const [place, size] of active.entries()) {
    const index = entering.sizes.indexOf(size);
    if (index === -1) continue;
    const count = entering.counts[index] ?? 0;
    for (let row = 0; row < rows; row += 1) {
      direction[row] = (direction[row] ?? 0) + (inverse[row * rows + place] ?? 0) * count;
    }
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
  const rate = direction[leaving] ?? 0;
  const from = leaving * rows;
  for (let place = from; place < from + rows; place += 1) inverse[place] = (inverse[place] ?? 0) / rate;
  for (let row = 0; row < rows; row += 1) {
    const factor = direction[row] ?? 0;
    if (row === leaving || factor === 0) continue;
    level[row] = Math.max(0, (level[row] ?? 0) - factor * step);
    const to = row * rows;
    for (let place = 0; place < rows; place += 1) {
      inverse[to + place] = (inverse[to + place] ?? 0) - factor * (inverse[from + place] ?? 0);
    }
  }
  level[leaving] = step;
  basis[leaving] = entering;
  return true;
}
