import type { CuttingModel } from './cutting-model.ts';

/** A way to cut one board: the stock, the sizes cut from it, and how many of each. */
export type Column = {
  readonly stock: number;
  readonly cents: number;
  readonly sizes: readonly number[];
  /** Beside each of `sizes`. */
  readonly counts: readonly number[];
};

/** Slack for comparing worth with price, as a share of the price. [-] */
export const priceTolerance = 1e-7;

/** Makes a column of counts by size. */
export function columnOf(stock: number, cents: number, countBySize: readonly number[]): Column {
  const sizes: number[] = [];
  const counts: number[] = [];
  for (let size = 0; size < countBySize.length; size += 1) {
    const count = countBySize[size] ?? 0;
    if (count === 0) continue;
    sizes.push(size);
    counts.push(count);
  }
  return { stock, cents, sizes, counts };
}

/** Text that is the same for equal columns. */
export function columnKey({ stock, sizes, counts }: Column): string {
  return `${stock}:${sizes.join()}:${counts.join()}`;
}

/** Price of a column less the worth of what it yields; below zero it is worth using. [cents] */
export function reducedCents({ cents, sizes, counts }: Column, worth: Float64Array): number {
  let reduced = cents;
  for (let index = 0; index < sizes.length; index += 1) {
    reduced -= (counts[index] ?? 0) * (worth[sizes[index] ?? 0] ?? 0);
  }
  return reduced;
}

/** A column of one size alone, on the stock that makes a piece of it cheapest. */
export function ownColumn(model: CuttingModel, demand: readonly number[], size: number): Column {
  const span = model.sizes[size]?.span ?? 1;
  let best = { stock: 0, cents: 0, count: 1, each: Number.POSITIVE_INFINITY };
  for (const [stock, { room, cents }] of model.stocks.entries()) {
    const count = Math.min(Math.floor(room / span), demand[size] ?? 0);
    if (count > 0 && cents / count < best.each) best = { stock, cents, count, each: cents / count };
  }
  return { stock: best.stock, cents: best.cents, sizes: [size], counts: [best.count] };
}

/** Columns that fill a board with the pieces of most worth an inch first, where that beats its price. */
export function quickColumns(
  model: CuttingModel,
  demand: readonly number[],
  worth: Float64Array,
): readonly Column[] {
  const densest = [...demand.keys()]
    .filter((size) => (demand[size] ?? 0) > 0 && (worth[size] ?? 0) > 0)
    .map((size) => ({ size, density: (worth[size] ?? 0) / (model.sizes[size]?.span ?? 1) }))
    .sort((a, b) => b.density - a.density || a.size - b.size);
  const columns: Column[] = [];
  for (const [stock, { room, cents }] of model.stocks.entries()) {
    const filled: { readonly size: number; readonly count: number }[] = [];
    let left = room;
    let value = 0;
    for (const { size } of densest) {
      const span = model.sizes[size]?.span ?? 1;
      const count = Math.min(demand[size] ?? 0, Math.floor(left / span));
      if (count === 0) continue;
      filled.push({ size, count });
      left -= count * span;
      value += count * (worth[size] ?? 0);
    }
    if (value <= cents * (1 + priceTolerance)) continue;
    filled.sort((a, b) => a.size - b.size);
    columns.push({
      stock,
      cents,
      sizes: filled.map(({ size }) => size),
      counts: filled.map(({ count }) => count),
    });
  }
  return columns;
}
