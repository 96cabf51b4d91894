import type { CuttingModel } from './cutting-model.ts';

/** Up to here the sums that prices can make are looked up. [cents] */
const mostCentsToCombine = 1_000_000;

/** What boards with enough length in all can count for. */
export type PurchaseSums = {
  /** The least such amount that is not below a bound; the ceiling where there is none below it. [cents] */
  notBelow(bound: number): number;
  /** The most such amount below a cost; -1 where there is none. [cents] */
  below(cost: number): number;
};

/**
 * The amounts that a set of boards can count for whose rooms together hold all pieces. Exact, by dynamic programming over
 * cents; beyond some thousands of dollars every amount is taken for possible.
 * @param model - the problem.
 * @param ceiling - what a plan that exists counts for; nothing above it is looked at. [cents]
 * @returns e.g. boards at 700 and 900 cents, two needed: 1400, 1600 and 1800 are possible.
 */
export function purchaseSums(model: CuttingModel, ceiling: number): PurchaseSums {
  const anything: PurchaseSums = {
    notBelow: (bound) => Math.min(bound, ceiling),
    below: (cost) => cost - 1,
  };
  if (ceiling > mostCentsToCombine) return anything;
  let needed = model.sizes.reduce((sum, size) => sum + size.span * size.demand, 0);
  const mostRoom = new Float64Array(ceiling + 1).fill(-1);
  mostRoom[0] = 0;
  for (const { cents, room, available } of model.stocks) {
    if (cents > 0) addBoards(mostRoom, cents, room, available);
    else if (available === Number.POSITIVE_INFINITY) return anything;
    else needed -= room * available;
  }
  const possible = (cents: number): boolean => (mostRoom[cents] ?? -1) >= needed;
  return {
    notBelow(bound) {
      for (let cents = Math.max(0, bound); cents < ceiling; cents += 1) if (possible(cents)) return cents;
      return ceiling;
    },
    below(cost) {
      for (let cents = Math.min(cost, ceiling + 1) - 1; cents >= 0; cents -= 1)
        if (possible(cents)) return cents;
      return -1;
    },
  };
}

/** Most room that so many cents buy exactly, once boards of one more stock are allowed. */
function addBoards(mostRoom: Float64Array, price: number, room: number, available: number): void {
  const last = mostRoom.length - 1;
  if (available === Number.POSITIVE_INFINITY) {
    for (let cents = price; cents <= last; cents += 1) {
      const before = mostRoom[cents - price] ?? -1;
      if (before >= 0 && before + room > (mostRoom[cents] ?? -1)) mostRoom[cents] = before + room;
    }
    return;
  }
  for (let board = 0; board < available && board * price <= last; board += 1) {
    for (let cents = last; cents >= price; cents -= 1) {
      const before = mostRoom[cents - price] ?? -1;
      if (before >= 0 && before + room > (mostRoom[cents] ?? -1)) mostRoom[cents] = before + room;
    }
  }
}
