import { nearestSixteenth } from '../units/sixteenths.ts';
import { kerfAlong, slantOf, usedSixteenths } from './board-use.ts';
import type { CuttingModel, Load } from './cutting-model.ts';
import type { Board, CutItem, CuttingProblem, StockLength } from './cut-plan-types.ts';
import { giveMarks } from './give-marks.ts';
import { pieceKey } from './problem-key.ts';
import type { MetPin } from './settle-pins.ts';

/** A board and its pieces, before it is numbered. */
type Unnumbered = { readonly length: StockLength; readonly items: readonly CutItem[] };

/**
 * Turns loads and pinned boards into boards with the pieces by mark. Boards stand longest first, those cut alike one after
 * the other; pieces in the order of the saw: by slant, so that they nest, and of one slant the longest first. Among pieces
 * that can change places, marks go in the order of the list; a pinned board gets the pieces pinned to it.
 */
export function loadsToBoards(
  problem: CuttingProblem,
  model: CuttingModel,
  loads: readonly Load[],
  pins: readonly MetPin[],
): readonly Board[] {
  const unnumbered: Unnumbered[] = [
    ...loads.map((load) => unnumberedLoad(problem, model, load)),
    ...pins.map(({ length, items }) => ({ length, items: inSawOrder(problem, items) })),
  ].sort(
    (a, b) =>
      b.length.lengthSixteenths - a.length.lengthSixteenths ||
      compareItems(problem, a.items, b.items) ||
      (a.length.itemId < b.length.itemId ? -1 : a.length.itemId > b.length.itemId ? 1 : 0),
  );
  const marked = giveMarks(
    problem,
    unnumbered.map(({ length, items }) => ({
      itemId: length.itemId,
      places: items.map((item) => pieceKey(problem, item)),
    })),
  );
  if (marked === undefined) throw new Error('cut plan: places and pieces do not match');
  return unnumbered.map(({ length }, index) => boardOf(problem, index + 1, length, marked[index] ?? []));
}

function boardOf(
  problem: CuttingProblem,
  number: number,
  length: StockLength,
  items: readonly CutItem[],
): Board {
  const last = items.at(-1);
  const lastCut = kerfAlong(problem, last === undefined ? 0 : slantOf(problem, last));
  const usable = length.lengthSixteenths - 2 * problem.endTrimSixteenths;
  const left = usable - usedSixteenths(problem, items) - lastCut;
  return {
    number,
    itemId: length.itemId,
    lengthSixteenths: length.lengthSixteenths,
    priceCents: length.priceCents,
    onHand: length.source === 'on-hand',
    items,
    offcutSixteenths: nearestSixteenth(Math.max(0, left) / 16),
  };
}

/** A board of a load, with any pieces of its sizes: marks are given later. */
function unnumberedLoad(problem: CuttingProblem, model: CuttingModel, load: Load): Unnumbered {
  const stock = model.stocks[load.stock];
  if (stock === undefined) throw new Error('cut plan: a load without stock');
  return {
    length: {
      itemId: stock.itemId,
      lengthSixteenths: stock.lengthSixteenths,
      priceCents: stock.priceCents,
      source: stock.onHand ? 'on-hand' : 'bought',
    },
    items: inSawOrder(
      problem,
      load.sizes.map((size) => {
        const sample = model.sizes[size]?.sample;
        if (sample === undefined) throw new Error('cut plan: a load with a size that is not asked for');
        return sample;
      }),
    ),
  };
}

function inSawOrder(problem: CuttingProblem, items: readonly CutItem[]): readonly CutItem[] {
  return items.toSorted(
    (a, b) => slantOf(problem, a) - slantOf(problem, b) || b.lengthSixteenths - a.lengthSixteenths,
  );
}

/** Boards with the longer pieces first. */
function compareItems(problem: CuttingProblem, one: readonly CutItem[], other: readonly CutItem[]): number {
  for (let index = 0; index < Math.max(one.length, other.length); index += 1) {
    const [a, b] = [one[index], other[index]];
    if (a === undefined || b === undefined) return a === b ? 0 : a === undefined ? 1 : -1;
    const difference = b.lengthSixteenths - a.lengthSixteenths || slantOf(problem, a) - slantOf(problem, b);
    if (difference !== 0) return difference;
  }
  return 0;
}
