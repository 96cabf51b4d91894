import { bestFill } from './best-fill.ts';
import type { CuttingModel } from './cutting-model.ts';

/** Parts that a cent is divided into for proofs in whole numbers. */
const partsOfCent = 2 ** 20;

/** Up to here a bound is lifted to the next sum that prices can make. [cents] */
const mostCentsToCombine = 200_000;

/**
 * The least that any purchase can cost, proven in whole numbers.
 *
 * Three proofs, the best of which counts: the cheapest price for a length bought; every piece longer than half of the
 * longest board needs a board of its own; and the worth of the pieces: if no board can hold pieces worth more than its
 * price, all pieces together cost at least their worth (worths come from the relaxation, are cut to parts of a cent,
 * and are priced again by an exact knapsack, so a rounding error there can weaken the bound but never make it wrong).
 * The result is then lifted to the next amount that some set of boards with enough length in all can cost.
 * @param model - the problem.
 * @param worth - price of one piece of each size. [cents]
 * @param ceiling - cost of a plan that exists; lifting stops there. [cents]
 * @returns whole cents.
 */
export function lowerBoundCents(model: CuttingModel, worth: ArrayLike<number>, ceiling: number): number {
  const proven = Math.max(lengthBound(model), longPieceBound(model), worthBound(model, worth));
  return liftToPurchase(model, proven, ceiling);
}

/** Every inch costs at least what it costs on the cheapest board. [cents] */
export function lengthBound(model: CuttingModel): number {
  const span = totalSpan(model);
  return model.stocks.reduce((least, stock) => {
    const exact = divideUp(BigInt(span) * BigInt(stock.cents), BigInt(stock.room));
    return Math.min(least, Number(exact));
  }, Number.POSITIVE_INFINITY);
}

/** Two pieces that are each longer than half of the longest board never share one. [cents] */
export function longPieceBound(model: CuttingModel): number {
  const longest = model.stocks.at(-1)?.room ?? 0;
  return model.sizes
    .filter((size) => 2 * size.span > longest)
    .reduce((sum, size) => sum + size.demand * (model.centsForSpan[size.span] ?? 0), 0);
}

function worthBound(model: CuttingModel, worth: ArrayLike<number>): number {
  const values = model.sizes.map((_, size) => Math.max(0, Math.floor((worth[size] ?? 0) * partsOfCent)));
  const longest = model.stocks.at(-1)?.room ?? 0;
  const fill = bestFill(
    model.sizes.map((size) => size.span),
    model.sizes.map((size) => size.demand),
    values,
    longest,
  );
  const total = model.sizes.reduce(
    (sum, size, index) => sum + BigInt(values[index] ?? 0) * BigInt(size.demand),
    0n,
  );
  let bound = divideUp(total, BigInt(partsOfCent));
  for (const stock of model.stocks) {
    const held = BigInt(fill.valueForRoom[stock.room] ?? 0);
    const price = BigInt(stock.cents) * BigInt(partsOfCent);
    if (held > price) {
      const scaled = divideUp(total * BigInt(stock.cents), held);
      if (scaled < bound) bound = scaled;
    }
  }
  return Number(bound);
}

/**
 * The least amount, not below the bound, that a set of boards can cost whose rooms together hold all pieces.
 * Exact, by dynamic programming over cents; beyond a few thousand dollars the bound is returned as it is.
 */
export function liftToPurchase(model: CuttingModel, bound: number, ceiling: number): number {
  if (ceiling > mostCentsToCombine || bound >= ceiling) return Math.min(bound, ceiling);
  if (model.stocks.some((stock) => stock.cents === 0)) return bound;
  const needed = totalSpan(model);
  const mostRoom = new Float64Array(ceiling + 1).fill(-1);
  mostRoom[0] = 0;
  for (const stock of model.stocks) {
    for (let cents = stock.cents; cents <= ceiling; cents += 1) {
      const before = mostRoom[cents - stock.cents] ?? -1;
      if (before >= 0 && before + stock.room > (mostRoom[cents] ?? -1)) mostRoom[cents] = before + stock.room;
    }
  }
  for (let cents = bound; cents < ceiling; cents += 1) {
    if ((mostRoom[cents] ?? -1) >= needed) return cents;
  }
  return ceiling;
}

function totalSpan(model: CuttingModel): number {
  return model.sizes.reduce((sum, size) => sum + size.span * size.demand, 0);
}

function divideUp(top: bigint, bottom: bigint): bigint {
  return (top + bottom - 1n) / bottom;
}
