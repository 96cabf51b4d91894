import { allOf, ownColumn, priceTolerance, reducedCents, type Column, type Left } from './column.ts';
import type { CuttingModel } from './cutting-model.ts';

/** One column of the basis: a way to cut; boards of a stock left unused; or a phantom piece where no board is left. */
type Held =
  | { readonly kind: 'cut'; readonly column: Column }
  | { readonly kind: 'unused'; readonly stock: number }
  | { readonly kind: 'phantom'; readonly size: number };

/** A vertex of the plan with fractions: as many columns as rows, and how many boards of each. */
export type Basis = {
  /** Sizes with a demand, one to a row. */
  readonly active: readonly number[];
  /** Stocks that there are only so many of, one to a row behind the sizes. */
  readonly scarce: readonly number[];
  readonly held: Held[];
  /** Boards of each column. */
  readonly level: Float64Array;
  /** What the rows ask for: pieces, then boards at most. */
  readonly wanted: Float64Array;
  /** Inverse of the square of columns, row by row. */
  readonly inverse: Float64Array;
  /** Price of one piece by size, and what one board more of a stock would save, so that no column held loses or gains. [cents] */
  readonly worth: Float64Array;
  readonly tax: Float64Array;
  readonly rowOfSize: Int32Array;
  readonly rowOfStock: Int32Array;
  /** Price of a piece that no board is left for, by size. [cents] */
  readonly phantomCents: (size: number) => number;
  /** Where the search for the next column goes on. */
  from: number;
  pivotsSinceInverted: number;
};

/** Columns looked at before the best of them is taken. */
const columnsAtOnce = 48;

/** Smallest figure that is divided by. */
const leastPivot = 1e-9;

/**
 * Starts with a column of its own for every size, and every scarce board unused.
 * @param phantomCents - price of a piece that no board is left for, by size; absent: beyond any true one. [cents]
 */
export function startBasis(
  model: CuttingModel,
  left: Left = allOf(model),
  phantomCents: (size: number) => number = beyondAnyCents(model, left),
): Basis {
  const active = [...left.demand.keys()].filter((size) => (left.demand[size] ?? 0) > 0);
  const scarce = [...model.stocks.keys()].filter(
    (stock) => (left.supply[stock] ?? 0) !== Number.POSITIVE_INFINITY && (left.supply[stock] ?? 0) > 0,
  );
  const rows = active.length + scarce.length;
  const rowOfSize = new Int32Array(model.sizes.length).fill(-1);
  for (const [row, size] of active.entries()) rowOfSize[size] = row;
  const rowOfStock = new Int32Array(model.stocks.length).fill(-1);
  for (const [index, stock] of scarce.entries()) rowOfStock[stock] = active.length + index;
  const basis: Basis = {
    active,
    scarce,
    held: [
      ...active.map((size): Held => {
        const column = ownColumn(model, left.demand, size);
        return column === undefined ? { kind: 'phantom', size } : { kind: 'cut', column };
      }),
      ...scarce.map((stock): Held => ({ kind: 'unused', stock })),
    ],
    level: new Float64Array(rows),
    wanted: Float64Array.from([
      ...active.map((size) => left.demand[size] ?? 0),
      ...scarce.map((stock) => left.supply[stock] ?? 0),
    ]),
    inverse: new Float64Array(rows * rows),
    worth: new Float64Array(model.sizes.length),
    tax: new Float64Array(model.stocks.length),
    rowOfSize,
    rowOfStock,
    phantomCents,
    from: 0,
    pivotsSinceInverted: 0,
  };
  for (let row = 0; row < rows; row += 1) {
    const held = basis.held[row];
    const count = held?.kind === 'cut' ? (held.column.counts[0] ?? 1) : 1;
    basis.inverse[row * rows + row] = 1 / count;
    basis.level[row] = (basis.wanted[row] ?? 0) / count;
  }
  settleWorth(basis);
  return basis;
}

function beyondAnyCents(model: CuttingModel, left: Left): () => number {
  const pieces = left.demand.reduce((sum, count) => sum + count, 0);
  const dearest = model.stocks.reduce((most, { cents }) => Math.max(most, cents), 0);
  return () => (dearest + 1) * (pieces + 1);
}

/**
 * Brings in columns until none of them would make the plan cheaper.
 * @returns pivots made.
 */
export function improveBasis(basis: Basis, columns: readonly Column[]): number {
  const most = 50 * (basis.held.length + 10);
  let pivots = 0;
  for (; pivots < most; pivots += 1) {
    const entering = nextColumn(basis, columns);
    if (entering === undefined || !bringIn(basis, entering)) break;
  }
  settleWorth(basis);
  return pivots;
}

/** Computes the worths anew from the basis, so that rounding does not add up over the pivots. */
function settleWorth(basis: Basis): void {
  const { active, scarce, held, inverse, worth, tax } = basis;
  const rows = held.length;
  const dual = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    const cents = centsOfHeld(basis, held[row]);
    if (cents === 0) continue;
    for (let place = 0; place < rows; place += 1)
      dual[place] = (dual[place] ?? 0) + cents * (inverse[row * rows + place] ?? 0);
  }
  for (const [row, size] of active.entries()) worth[size] = dual[row] ?? 0;
  for (const [index, stock] of scarce.entries()) tax[stock] = -(dual[active.length + index] ?? 0);
}

function centsOfHeld({ phantomCents }: Basis, held: Held | undefined): number {
  if (held?.kind === 'cut') return held.column.cents;
  return held?.kind === 'phantom' ? phantomCents(held.size) : 0;
}

/** The best column of the next block that has any worth bringing in. */
function nextColumn(basis: Basis, columns: readonly Column[]): Held | undefined {
  for (const stock of basis.scarce)
    if ((basis.tax[stock] ?? 0) < -priceTolerance) return { kind: 'unused', stock };
  let chosen: Column | undefined;
  let least = 0;
  for (let looked = 0; looked < columns.length; looked += 1) {
    if (chosen !== undefined && looked % columnsAtOnce === 0) break;
    if (basis.from >= columns.length) basis.from = 0;
    const column = columns[basis.from];
    basis.from += 1;
    if (column === undefined) continue;
    const reduced = reducedCents(column, basis);
    if (reduced < least - priceTolerance * Math.max(1, column.cents)) {
      chosen = column;
      least = reduced;
    }
  }
  return chosen === undefined ? undefined : { kind: 'cut', column: chosen };
}

/** Swaps a column for the one that runs out first; false where rounding leaves none to take out. */
function bringIn(basis: Basis, entering: Held): boolean {
  const { held, inverse, level } = basis;
  const rows = held.length;
  const direction = directionOf(basis, entering);
  let leaving = -1;
  let step = Number.POSITIVE_INFINITY;
  for (let row = 0; row < rows; row += 1) {
    const rate = direction[row] ?? 0;
    if (rate > leastPivot && (level[row] ?? 0) / rate < step - 1e-12) {
      leaving = row;
      step = (level[row] ?? 0) / rate;
    }
  }
  if (leaving === -1) return false;
  const reduced =
    entering.kind === 'cut' ? reducedCents(entering.column, basis) : (basis.tax[stockOf(entering)] ?? 0);
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
  level[leaving] = step;
  held[leaving] = entering;
  basis.pivotsSinceInverted += 1;
  if (basis.pivotsSinceInverted > Math.max(100, rows)) {
    invertAnew(basis);
    settleWorth(basis);
    return true;
  }
  const { active, scarce, worth, tax } = basis;
  for (const [row, size] of active.entries())
    worth[size] = (worth[size] ?? 0) + reduced * (inverse[from + row] ?? 0);
  for (const [index, stock] of scarce.entries())
    tax[stock] = (tax[stock] ?? 0) - reduced * (inverse[from + active.length + index] ?? 0);
  return true;
}

function stockOf(held: Held): number {
  return held.kind === 'unused' ? held.stock : held.kind === 'cut' ? held.column.stock : -1;
}

/** Rows that a column takes part in, and by how much. */
function entriesOf(basis: Basis, held: Held): readonly (readonly [row: number, value: number])[] {
  if (held.kind === 'phantom') return [[basis.rowOfSize[held.size] ?? -1, 1]];
  if (held.kind === 'unused') return [[basis.rowOfStock[held.stock] ?? -1, 1]];
  const { sizes, counts, stock } = held.column;
  const entries: [number, number][] = [];
  for (let index = 0; index < sizes.length; index += 1) {
    const row = basis.rowOfSize[sizes[index] ?? 0] ?? -1;
    if (row !== -1) entries.push([row, counts[index] ?? 0]);
  }
  const supplyRow = basis.rowOfStock[stock] ?? -1;
  if (supplyRow !== -1) entries.push([supplyRow, 1]);
  return entries;
}

/** How fast each column in the basis gives way to the entering one. */
function directionOf(basis: Basis, entering: Held): Float64Array {
  const { inverse } = basis;
  const rows = basis.held.length;
  const direction = new Float64Array(rows);
  for (const [place, value] of entriesOf(basis, entering))
    for (let row = 0; row < rows; row += 1)
      direction[row] = (direction[row] ?? 0) + (inverse[row * rows + place] ?? 0) * value;
  return direction;
}

/** Inverts the square of columns from scratch (Gauss and Jordan, largest pivot first) and sets the levels by it. */
function invertAnew(basis: Basis): void {
  const { held, inverse, level, wanted } = basis;
  const rows = held.length;
  const width = 2 * rows;
  const table = new Float64Array(rows * width);
  for (const [column, one] of held.entries())
    for (const [row, value] of entriesOf(basis, one)) table[row * width + column] = value;
  for (let row = 0; row < rows; row += 1) table[row * width + rows + row] = 1;
  for (let column = 0; column < rows; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < rows; row += 1)
      if (Math.abs(table[row * width + column] ?? 0) > Math.abs(table[pivot * width + column] ?? 0))
        pivot = row;
    const size = table[pivot * width + column] ?? 0;
    // A square that cannot be inverted: the updated inverse is kept, and bounds are checked in whole numbers anyway.
    if (Math.abs(size) < leastPivot) return;
    for (let place = column; place < width; place += 1) {
      const moved = (table[pivot * width + place] ?? 0) / size;
      table[pivot * width + place] = table[column * width + place] ?? 0;
      table[column * width + place] = moved;
    }
    for (let row = 0; row < rows; row += 1) {
      const factor = table[row * width + column] ?? 0;
      if (row === column || factor === 0) continue;
      for (let place = column; place < width; place += 1)
        table[row * width + place] =
          (table[row * width + place] ?? 0) - factor * (table[column * width + place] ?? 0);
    }
  }
  basis.pivotsSinceInverted = 0;
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (let place = 0; place < rows; place += 1) {
      const value = table[row * width + rows + place] ?? 0;
      inverse[row * rows + place] = value;
      sum += value * (wanted[place] ?? 0);
    }
    level[row] = Math.max(0, sum);
  }
}
