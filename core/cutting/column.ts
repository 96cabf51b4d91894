import { steepening, type CuttingModel } from './cutting-model.ts';

/** A way to cut one board: the stock, the sizes cut from it, and how many of each. */
export type Column = {
  readonly stock: number;
  readonly cents: number;
  readonly sizes: readonly number[];
  /** Beside each of `sizes`. */
  readonly counts: readonly number[];
};

/** What is still to be cut, by size, and the boards that there still are, by stock. */
export type Left = { readonly demand: readonly number[]; readonly supply: readonly number[] };

/** What a piece of each size, and one board more of each stock that there are only so many of, is worth. [cents] */
export type Worths = { readonly worth: Float64Array; readonly tax: Float64Array };

/** Parts that a cent is divided into for proofs in whole numbers. */
export const partsOfCent = 2 ** 20;

/** Slack for comparing worth with price, as a share of the price. [-] */
export const priceTolerance = 1e-7;

/** Everything still to be cut, and every board still there. */
export function allOf(model: CuttingModel): Left {
  return {
    demand: model.sizes.map((size) => size.demand),
    supply: model.stocks.map((stock) => stock.available),
  };
}

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

/** The sizes of a column, each as often as it is cut. */
export function sizesOfColumn({ sizes, counts }: Pick<Column, 'sizes' | 'counts'>): number[] {
  return sizes.flatMap((size, index) => Array.from({ length: counts[index] ?? 0 }, () => size));
}

/** Price of a column less the worth of what it yields; below zero it is worth using. [cents] */
export function reducedCents({ stock, cents, sizes, counts }: Column, { worth, tax }: Worths): number {
  let reduced = cents + (tax[stock] ?? 0);
  for (let index = 0; index < sizes.length; index += 1) {
    reduced -= (counts[index] ?? 0) * (worth[sizes[index] ?? 0] ?? 0);
  }
  return reduced;
}

/** The same in whole parts of a cent, from worths that prove a bound. [parts of a cent] */
export function reducedParts(
  { stock, cents, sizes, counts }: Column,
  { worth, tax }: { readonly worth: readonly number[]; readonly tax: readonly number[] },
): number {
  return sizes.reduce(
    (reduced, size, index) => reduced - (counts[index] ?? 0) * (worth[size] ?? 0),
    cents * partsOfCent + (tax[stock] ?? 0),
  );
}

/** A column of one size alone, on the stock to buy that makes a piece of it cheapest; undefined where none holds it. */
export function ownColumn(model: CuttingModel, demand: readonly number[], size: number): Column | undefined {
  const { span = 1, slant = 0 } = model.sizes[size] ?? {};
  const more = steepening(model, slant, slant);
  let best: Column | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [stock, { room, cents, available }] of model.stocks.entries()) {
    if (available !== Number.POSITIVE_INFINITY) continue;
    const count = Math.min(Math.floor((room - more) / span), demand[size] ?? 0);
    if (count <= 0 || cents / count >= least) continue;
    least = cents / count;
    best = { stock, cents, sizes: [size], counts: [count] };
  }
  return best;
}

/** Columns that fill a board with the pieces of most worth an inch first, where that beats its price. */
export function quickColumns(model: CuttingModel, left: Left, worths: Worths): readonly Column[] {
  const { worth, tax } = worths;
  const densest = [...left.demand.keys()]
    .filter((size) => (left.demand[size] ?? 0) > 0 && (worth[size] ?? 0) > 0)
    .map((size) => ({ size, density: (worth[size] ?? 0) / (model.sizes[size]?.span ?? 1) }))
    .sort((a, b) => b.density - a.density || a.size - b.size);
  const columns: Column[] = [];
  for (const [stock, { room, cents }] of model.stocks.entries()) {
    if ((left.supply[stock] ?? 0) <= 0) continue;
    const filled: { readonly size: number; readonly count: number }[] = [];
    let spans = 0;
    let value = 0;
    let least = Number.POSITIVE_INFINITY;
    let most = 0;
    for (const { size } of densest) {
      const { span = 1, slant = 0 } = model.sizes[size] ?? {};
      const rest = room - spans - steepening(model, Math.min(least, slant), Math.max(most, slant));
      const count = Math.min(left.demand[size] ?? 0, Math.floor(rest / span));
      if (count <= 0) continue;
      filled.push({ size, count });
      spans += count * span;
      value += count * (worth[size] ?? 0);
      least = Math.min(least, slant);
      most = Math.max(most, slant);
    }
    const price = cents + (tax[stock] ?? 0);
    if (filled.length === 0 || value <= price + priceTolerance * Math.max(1, price)) continue;
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
