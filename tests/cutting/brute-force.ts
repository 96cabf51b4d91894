import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/**
 * Cheapest cost by trying every way to share out a handful of pieces; shares no code with the solver. [cents]
 * A set of pieces fits a board when pieces, one kerf between each two, and both trims are no longer than it.
 */
export function cheapestByTryingAll(problem: CuttingProblem): number {
  const lengths = problem.items.map((item) => item.lengthSixteenths as number);
  const everything = (1 << lengths.length) - 1;
  const oneBoard = Array.from({ length: everything + 1 }, (_, set) => boardCents(problem, lengths, set));
  const cheapest = Array.from({ length: everything + 1 }, () => Number.POSITIVE_INFINITY);
  cheapest[0] = 0;
  for (let set = 1; set <= everything; set += 1) {
    const lowest = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if ((part & lowest) === 0) continue;
      const cents = (oneBoard[part] ?? 0) + (cheapest[set ^ part] ?? 0);
      if (cents < (cheapest[set] ?? 0)) cheapest[set] = cents;
    }
  }
  return cheapest[everything] ?? Number.NaN;
}

function boardCents(problem: CuttingProblem, lengths: readonly number[], set: number): number {
  let used = 2 * problem.endTrimSixteenths;
  let count = 0;
  for (const [index, length] of lengths.entries()) {
    if ((set & (1 << index)) === 0) continue;
    used += length;
    count += 1;
  }
  used += Math.max(0, count - 1) * problem.kerfSixteenths;
  return problem.lengths
    .filter((board) => board.lengthSixteenths >= used)
    .reduce((least, board) => Math.min(least, board.priceCents), Number.POSITIVE_INFINITY);
}
