import { nearestSixteenth } from '../units/sixteenths.ts';
import { kerfAlong, slantOf, usedSixteenths } from './board-use.ts';
import type { CuttingModel, Load } from './cutting-model.ts';
import type { Board, CutItem, CuttingProblem } from './cut-plan-types.ts';

/**
 * Gives every place in the loads its piece by mark, and numbers the boards: longest boards first, boards cut alike one
 * after the other, longest piece first in each. Among pieces of one length, marks go in the order of the list.
 */
export function loadsToBoards(
  problem: CuttingProblem,
  model: CuttingModel,
  loads: readonly Load[],
): readonly Board[] {
  const waiting = new Map<number, CutItem[]>();
  for (const item of problem.items) {
    const span = item.lengthSixteenths + problem.kerfSixteenths;
    const queue = waiting.get(span);
    if (queue === undefined) waiting.set(span, [item]);
    else queue.push(item);
  }
  for (const queue of waiting.values()) queue.reverse();
  const ordered = loads.toSorted((a, b) => b.stock - a.stock || compareSizes(a.sizes, b.sizes));
  return ordered.map((load, index) => {
    const stock = model.stocks[load.stock];
    if (stock === undefined) throw new Error('cut plan: a load without stock');
    const unsorted = load.sizes.map((size) => {
      const item = waiting.get(model.sizes[size]?.span ?? -1)?.pop();
      if (item === undefined) throw new Error('cut plan: more places than pieces');
      return item;
    });
    const items = unsorted.toSorted((a, b) => slantOf(problem, a) - slantOf(problem, b));
    const steepest = items.at(-1);
    const lastCut = kerfAlong(problem, steepest === undefined ? 0 : slantOf(problem, steepest));
    const usable = stock.lengthSixteenths - 2 * problem.endTrimSixteenths;
    return {
      number: index + 1,
      itemId: stock.itemId,
      lengthSixteenths: stock.lengthSixteenths,
      priceCents: stock.cents,
      onHand: false,
      items,
      offcutSixteenths: nearestSixteenth(Math.max(0, usable - usedSixteenths(problem, items) - lastCut) / 16),
    };
  });
}

function compareSizes(one: readonly number[], other: readonly number[]): number {
  for (let index = 0; index < Math.max(one.length, other.length); index += 1) {
    const difference = (one[index] ?? Number.MAX_SAFE_INTEGER) - (other[index] ?? Number.MAX_SAFE_INTEGER);
    if (difference !== 0) return difference;
  }
  return 0;
}
