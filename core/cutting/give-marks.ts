import type { CutItem, CuttingProblem } from './cut-plan-types.ts';
import { pieceKey } from './problem-key.ts';
import { settlePins } from './settle-pins.ts';

/** A board with places for pieces, each named by its `pieceKey`. */
export type PlacesOfBoard = {
  readonly itemId: string;
  readonly places: readonly string[];
};

/**
 * Gives every place of a plan its piece by mark: pinned boards get just the pieces pinned to them; pieces that can change
 * places go in the order of the list.
 * @param problem - pieces and pins.
 * @param boards - places, in the order of the boards and of the saw.
 * @returns pieces beside each place; undefined where places and pieces, or pins and boards, do not match.
 */
export function giveMarks(
  problem: CuttingProblem,
  boards: readonly PlacesOfBoard[],
): readonly (readonly CutItem[])[] | undefined {
  const { met, items } = settlePins(problem);
  const key = (item: CutItem): string => pieceKey(problem, item);
  const pinned = new Map<string, CutItem[][]>();
  for (const pin of met) {
    const name = boardKey(pin.length.itemId, pin.items.map(key));
    const alike = pinned.get(name);
    if (alike === undefined) pinned.set(name, [[...pin.items]]);
    else alike.push([...pin.items]);
  }
  const free = queuesOf(items, key);
  const given: (readonly CutItem[])[] = [];
  for (const { itemId, places } of boards) {
    const pin = pinned.get(boardKey(itemId, places))?.shift();
    const queues = pin === undefined ? free : queuesOf(pin, key);
    const pieces = places.flatMap((place) => queues.get(place)?.shift() ?? []);
    if (pieces.length < places.length) return undefined;
    given.push(pieces);
  }
  const pinsLeft = [...pinned.values()].some((alike) => alike.length > 0);
  const piecesLeft = [...free.values()].some((queue) => queue.length > 0);
  return pinsLeft || piecesLeft ? undefined : given;
}

function boardKey(itemId: string, places: readonly string[]): string {
  return JSON.stringify([itemId, ...places.toSorted()]);
}

function queuesOf(items: readonly CutItem[], key: (item: CutItem) => string): Map<string, CutItem[]> {
  const queues = new Map<string, CutItem[]>();
  for (const item of items) {
    const queue = queues.get(key(item));
    if (queue === undefined) queues.set(key(item), [item]);
    else queue.push(item);
  }
  return queues;
}
