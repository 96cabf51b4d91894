import { slantOf } from './board-use.ts';
import type { CutItem, CuttingProblem, StockLength } from './cut-plan-types.ts';
import { settlePins } from './settle-pins.ts';

/**
 * Text that is the same for problems with the same plan: everything that decides it, whatever the pieces are called and in
 * whatever order they and the lengths stand. Pins that cannot be change nothing.
 */
export function problemKey(problem: CuttingProblem): string {
  const { met, items, lengths } = settlePins(problem);
  const piece = (item: CutItem): string => pieceKey(problem, item);
  const slants = problem.items.some((item) => slantOf(problem, item) > 0);
  return JSON.stringify({
    saw: [problem.kerfSixteenths, problem.endTrimSixteenths, slants ? problem.depthSixteenths : 0],
    lengths: lengths.map(lengthText).toSorted(),
    pieces: counted(items.map(piece)),
    pinned: met
      .map((pin) => JSON.stringify([lengthText(pin.length), ...pin.items.map(piece).toSorted()]))
      .toSorted(),
    centsPerBoard: problem.preferences?.centsPerBoard ?? 0,
  });
}

/** Text of a piece that is the same for pieces that can change places: length and slant. */
export function pieceKey(problem: CuttingProblem, item: Omit<CutItem, 'mark'>): string {
  return `${item.lengthSixteenths}/${slantOf(problem, item)}`;
}

function lengthText({ itemId, lengthSixteenths, priceCents, available, source }: StockLength): string {
  return JSON.stringify([lengthSixteenths, priceCents, itemId, available ?? null, source ?? 'bought']);
}

function counted(texts: readonly string[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts].toSorted(([a], [b]) => (a < b ? -1 : 1));
}
