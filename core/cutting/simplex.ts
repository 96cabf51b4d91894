import { ownColumn, priceTolerance, reducedCents, type Column } from './column.ts';
import type { CuttingModel } from './cutting-model.ts';

/** A vertex of the plan with fractions: as many columns as sizes, and how many boards of each. */
export type Basis = {
  /** Sizes with a demand, one to a row. */
  readonly active: readonly number[];
  readonly columns: Column[];
  /** Boards of each column. */
  readonly level: Float64Array;
  /** Inverse of the square of counts, row by row. */
  readonly inverse: Float64Array;
  /** Price of one piece by size, so that every column in the basis is worth its price. [cents] */
  readonly worth: Float64Array;
  /** Where the search for the next column goes on. */
  from: number;
};

/** Columns looked at before the best of them is taken. */
const columnsAtOnce = 48;

/** Starts with a column of its own for every size. */
export function startBasis(model: CuttingModel, demand: readonly number[]): Basis {
  const active = [...demand.keys()].filter((size) => (demand[size] ?? 0) > 0);
  const rows = active.length;
  const basis: Basis = {
    active,
    columns: active.map((size) => ownColumn(model, demand, size)),
    level: new Float64Array(rows),
    inverse: new Float64Array(rows * rows),
    worth: new Float64Array(demand.length),
    from: 0,
  };
  for (const [row, size] of active.entries()) {
    const count = basis.columns[row]?.counts[0] ?? 1;
    basis.inverse[row * rows + row] = 1 / count;
    basis.level[row] = (demand[size] ?? 0) / count;
  }
  settleWorth(basis);
  return basis;
}

/**
 * Brings in columns until none of them would make the plan cheaper.
 * @returns pivots made.
 */
export function improveBasis(basis: Basis, columns: readonly Column[]): number {
  const most = 50 * (basis.active.length + 10);
  let pivots = 0;
  for (; pivots < most; pivots += 1) {
    const entering = nextColumn(basis, columns);
    if (entering === undefined || !bringIn(basis, entering)) break;
  }
  settleWorth(basis);
  return pivots;
}

/** Computes the worths anew from the basis, so that rounding does not add up over the pivots. */
function settleWorth({ active, columns, inverse, worth }: Basis): void {
  const rows = active.length;
  for (const size of active) worth[size] = 0;
  for (let row = 0; row < rows; row += 1) {
    const cents = columns[row]?.cents ?? 0;
    for (let place = 0; place < rows; place += 1) {
      const size = active[place] ?? 0;
      worth[size] = (worth[size] ?? 0) + cents * (inverse[row * rows + place] ?? 0);
    }
  }
}

/** The best column of the next block that has any worth bringing in. */
function nextColumn(basis: Basis, columns: readonly Column[]): Column | undefined {
  let chosen: Column | undefined;
  let least = 0;
  for (let looked = 0; looked < columns.length; looked += 1) {
    if (chosen !== undefined && looked % columnsAtOnce === 0) break;
    if (basis.from >= columns.length) basis.from = 0;
    const column = columns[basis.from];
    basis.from += 1;
    if (column === undefined) continue;
    const reduced = reducedCents(column, basis.worth);
    if (reduced < least - priceTolerance * Math.max(1, column.cents)) {
      chosen = column;
      least = reduced;
    }
  }
  return chosen;
}

/** Swaps a column for the one that runs out first; false where rounding leaves none to take out. */
function bringIn(basis: Basis, entering: Column): boolean {
  const { active, inverse, level, worth } = basis;
  const rows = active.length;
  const direction = directionOf(basis, entering);
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
  const reduced = reducedCents(entering, worth);
  const rate = direction[leaving] ?? 1;
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
  for (let place = 0; place < rows; place += 1) {
    const size = active[place] ?? 0;
    worth[size] = (worth[size] ?? 0) + reduced * (inverse[from + place] ?? 0);
  }
  level[leaving] = step;
  basis.columns[leaving] = entering;
  return true;
}

/** How fast each column in the basis gives way to the entering one. */
function directionOf({ active, inverse }: Basis, entering: Column): Float64Array {
  const rows = active.length;
  const direction = new Float64Array(rows);
  for (let place = 0; place < rows; place += 1) {
    const index = entering.sizes.indexOf(active[place] ?? -1);
    if (index === -1) continue;
    const count = entering.counts[index] ?? 0;
    for (let row = 0; row < rows; row += 1) {
      direction[row] = (direction[row] ?? 0) + (inverse[row * rows + place] ?? 0) * count;
    }
  }
  return direction;
}
