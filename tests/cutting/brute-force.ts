import type { CutItem, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/**
 * Cheapest cost by trying every way to share out a handful of pieces over the boards there are; shares no code with the
 * solver. Counts what a board fewer is worth; pins are not heeded. [cents]
 * A set of pieces fits a board when, in some order, pieces, cuts between them and both trims are no longer than it.
 * @returns infinite where the boards do not hold the pieces.
 */
export function cheapestByTryingAll(problem: CuttingProblem): number {
  const { useOnHand = true, centsPerBoard = 0 } = problem.preferences ?? {};
  const boards = problem.lengths.filter((length) => useOnHand || length.source !== 'on-hand');
  const used = shortestUse(problem);
  const known = new Map<string, number>();
  const cheapest = (left: number, supply: readonly number[]): number => {
    if (left === 0) return 0;
    const key = `${left}/${supply.join()}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    let best = Number.POSITIVE_INFINITY;
    const lowest = left & -left;
    for (let part = left; part > 0; part = (part - 1) & left) {
      if ((part & lowest) === 0) continue;
      for (const [index, board] of boards.entries()) {
        if ((supply[index] ?? 0) <= 0) continue;
        if ((used[part] ?? 0) > board.lengthSixteenths - 2 * problem.endTrimSixteenths) continue;
        const rest = supply.map((count, other) => (other === index ? count - 1 : count));
        best = Math.min(best, board.priceCents + centsPerBoard + cheapest(left ^ part, rest));
      }
    }
    known.set(key, best);
    return best;
  };
  return cheapest(
    (1 << problem.items.length) - 1,
    boards.map(({ available }) => available ?? Number.POSITIVE_INFINITY),
  );
}

/**
 * Least length that each set of pieces takes in one board, over every order of them: each piece is laid as far left as the
 * one before lets it, along both edges of the board.
 */
export function shortestUse(problem: CuttingProblem): readonly number[] {
  const pieces = problem.items;
  const sets = 1 << pieces.length;
  /** Where the lower edge of the last piece ends, by set and last piece. */
  const ends = Array.from({ length: sets }, () => pieces.map(() => Number.POSITIVE_INFINITY));
  const shortest: number[] = [0];
  for (let set = 1; set < sets; set += 1) {
    for (const [last, piece] of pieces.entries()) {
      if ((set & (1 << last)) === 0) continue;
      const before = set ^ (1 << last);
      const slant = slantOf(problem, piece);
      const middle = piece.lengthSixteenths - slant;
      let end = before === 0 ? middle : Number.POSITIVE_INFINITY;
      for (const [neighbour, other] of pieces.entries()) {
        if ((before & (1 << neighbour)) === 0) continue;
        const lower = ends[before]?.[neighbour] ?? Number.POSITIVE_INFINITY;
        const otherSlant = slantOf(problem, other);
        const gap = Math.max(alongCut(problem, slant), alongCut(problem, otherSlant));
        // Clear of the neighbour along the lower edge, and along the upper one.
        const start = Math.max(lower + gap, lower + otherSlant + gap - slant);
        end = Math.min(end, start + middle);
      }
      const row = ends[set];
      if (row !== undefined) row[last] = end;
    }
    shortest[set] = pieces.reduce(
      (least, piece, last) =>
        Math.min(least, (ends[set]?.[last] ?? Number.POSITIVE_INFINITY) + slantOf(problem, piece)),
      Number.POSITIVE_INFINITY,
    );
  }
  return shortest;
}

function slantOf(problem: CuttingProblem, { slantSixteenths = 0 as never }: CutItem): number {
  return problem.depthSixteenths === undefined ? 0 : slantSixteenths;
}

/** A cut's kerf along the board, rounded up. [1/16 in] */
function alongCut({ kerfSixteenths, depthSixteenths }: CuttingProblem, slant: number): number {
  if (depthSixteenths === undefined) return kerfSixteenths;
  return Math.ceil(kerfSixteenths * Math.hypot(1, slant / depthSixteenths) - 1e-9);
}
