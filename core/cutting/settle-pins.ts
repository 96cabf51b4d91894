import { usedSixteenths } from './board-use.ts';
import type { CutItem, CuttingProblem, StockLength, UnmetPin } from './cut-plan-types.ts';

/** A pinned board with its length and pieces. */
export type MetPin = { readonly length: StockLength; readonly items: readonly CutItem[] };

/** A problem with its pinned boards taken out of it. */
export type SettledPins = {
  readonly met: readonly MetPin[];
  readonly unmet: readonly UnmetPin[];
  /** Pieces that no pinned board holds. */
  readonly items: readonly CutItem[];
  /** Lengths that can still be had, fewer by those pinned. */
  readonly lengths: readonly StockLength[];
};

/**
 * Takes the pinned boards out of a problem, in their order. A pin that cannot be is set aside with the reason, and its
 * pieces are planned freely.
 */
export function settlePins(problem: CuttingProblem): SettledPins {
  const { pinned = [], useOnHand = true } = problem.preferences ?? {};
  const free = new Map(problem.items.map((item) => [item.mark, item]));
  const met: MetPin[] = [];
  const unmet: UnmetPin[] = [];
  let lengths = problem.lengths.filter(
    ({ source, available }) => (useOnHand || source !== 'on-hand') && available !== 0,
  );
  const usable = (length: StockLength): number => length.lengthSixteenths - 2 * problem.endTrimSixteenths;
  for (const pin of pinned) {
    const items = pin.marks.flatMap((mark) => free.get(mark) ?? []);
    const length = lengths.find(({ itemId }) => itemId === pin.itemId);
    const why =
      length === undefined
        ? 'length-gone'
        : items.length === 0 || items.length < pin.marks.length || new Set(pin.marks).size < pin.marks.length
          ? 'piece-gone'
          : usedSixteenths(problem, items) > usable(length)
            ? 'does-not-fit'
            : undefined;
    if (why !== undefined || length === undefined) {
      unmet.push({ pin, why: why ?? 'length-gone' });
      continue;
    }
    met.push({ length, items });
    for (const { mark } of items) free.delete(mark);
    lengths = lengths.flatMap((other) => {
      if (other !== length || other.available === undefined) return [other];
      return other.available > 1 ? [{ ...other, available: other.available - 1 }] : [];
    });
  }
  return { met, unmet, items: [...free.values()], lengths };
}
