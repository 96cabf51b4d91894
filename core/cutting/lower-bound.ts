import { bestFill, type BestFill } from './best-fill.ts';
import { partsOfCent, type Worths } from './column.ts';
import { purchaseSums } from './purchase-sums.ts';
import { longestRoom, needAlone, type CuttingModel } from './cutting-model.ts';

/** A bound, and the worths in whole parts of a cent that prove it. */
export type ProvenBound = {
  /** No plan counts for less. [cents] */
  readonly cents: number;
  /** The same before it was rounded up and lifted. [parts of a cent] */
  readonly parts: number;
  /** Worth of a piece by size: no board holds pieces worth more than its price and tax. [parts of a cent] */
  readonly worth: readonly number[];
  /** What one board more of a stock would save at most, by stock; 0 where it can be bought. [parts of a cent] */
  readonly tax: readonly number[];
};

/**
 * The least that any plan can count for, proven in whole numbers.
 *
 * Three proofs, the best of which counts: the worth of the pieces as the relaxation found it; and, where it was not
 * finished, that every inch costs at least what it costs on the cheapest board, and that every piece longer than half of
 * the longest board needs a board of its own. Each is a worth for every size; worths are cut to parts of a cent and priced
 * again by an exact knapsack, so that a rounding error can weaken the bound but never make it wrong. The result is then
 * lifted to the next amount that some set of boards with enough length in all can count for.
 * @param model - the problem.
 * @param relaxed - what pieces and boards are worth [cents], and whether no better worths are to be had.
 * @param ceiling - what a plan that exists counts for; lifting stops there. [cents]
 */
export function lowerBound(
  model: CuttingModel,
  relaxed: { readonly worths: Worths; readonly finished: boolean },
  ceiling: number,
): ProvenBound {
  const offered = relaxed.finished
    ? [relaxed.worths]
    : [relaxed.worths, lengthWorths(model), longPieceWorths(model)];
  const best = offered
    .map((worths) => prove(model, worths))
    .reduce((one, other) => (other.parts > one.parts ? other : one));
  return { ...best, cents: purchaseSums(model, ceiling).notBelow(best.cents) };
}

/** Every inch costs at least what it costs on the cheapest board to buy; scarce boards are taxed. [cents] */
export function lengthWorths(model: CuttingModel): Worths {
  const bought = model.stocks.filter(({ available }) => available === Number.POSITIVE_INFINITY);
  const perSixteenth = (bought.length > 0 ? bought : model.stocks).reduce(
    (least, { room, cents }) => Math.min(least, cents / room),
    Number.POSITIVE_INFINITY,
  );
  return {
    worth: Float64Array.from(model.sizes, ({ span }) => span * perSixteenth),
    tax: new Float64Array(model.stocks.length),
  };
}

/** Two pieces that are each longer than half of the longest board never share one. [cents] */
export function longPieceWorths(model: CuttingModel): Worths {
  const longest = longestRoom(model);
  return {
    worth: Float64Array.from(model.sizes.entries(), ([size, { span }]) => {
      if (2 * span <= longest) return 0;
      const need = needAlone(model, size);
      return model.stocks.reduce(
        (least, { room, cents }) => (room >= need ? Math.min(least, cents) : least),
        Number.POSITIVE_INFINITY,
      );
    }),
    tax: new Float64Array(model.stocks.length),
  };
}

/**
 * Cuts worths to whole parts of a cent, and lowers them until no board that can be bought holds more than its price; what
 * a scarce board holds beyond its price is its tax.
 */
export function prove(model: CuttingModel, { worth }: Worths): ProvenBound {
  const demand = model.sizes.map((size) => size.demand);
  let values = model.sizes.map((_, size) => Math.max(0, Math.floor((worth[size] ?? 0) * partsOfCent)));
  let fill = bestFill(model, demand, values);
  const lowered = lowering(model, fill);
  if (lowered < 1) {
    values = values.map((value) => Math.floor(value * lowered));
    fill = bestFill(model, demand, values);
    // The share itself was rounded: once more, by the least step, if it has to be.
    while (lowering(model, fill) < 1) {
      values = values.map((value) => Math.max(0, value - 1));
      fill = bestFill(model, demand, values);
    }
  }
  const tax = model.stocks.map(({ cents, available }, stock) =>
    available === Number.POSITIVE_INFINITY ? 0 : Math.max(0, fill.valueOf(stock) - cents * partsOfCent),
  );
  const gross = model.sizes.reduce(
    (sum, { demand: count }, size) => sum + BigInt(values[size] ?? 0) * BigInt(count),
    0n,
  );
  const parts = model.stocks.reduce(
    (sum, { available }, stock) =>
      tax[stock] === 0 ? sum : sum - BigInt(tax[stock] ?? 0) * BigInt(available),
    gross,
  );
  return {
    cents: Math.max(0, Number(divideUp(parts, BigInt(partsOfCent)))),
    parts: Number(parts),
    worth: values,
    tax,
  };
}

/** The share of the worths at which every board that can be bought is worth no more than its price. [-] */
function lowering(model: CuttingModel, fill: BestFill): number {
  return model.stocks.reduce((share, { cents, available }, stock) => {
    const value = fill.valueOf(stock);
    return available === Number.POSITIVE_INFINITY && value > cents * partsOfCent
      ? Math.min(share, (cents * partsOfCent) / value)
      : share;
  }, 1);
}

function divideUp(top: bigint, bottom: bigint): bigint {
  // BigInt division cuts towards zero, which is up for what is negative.
  return top <= 0n ? top / bottom : (top + bottom - 1n) / bottom;
}
