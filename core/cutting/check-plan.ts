import type { Board, CutItem, CuttingProblem } from './cut-plan-types.ts';

/**
 * Holds the boards of a plan against the problem once more, in whole numbers and without the solver's own model: every
 * piece is cut once, every board can be had at its price, no more of a length are used than there are, and no board is
 * over-cut.
 * @param problem - what was asked. [1/16 in, cents]
 * @param boards - what is to be bought and cut. [1/16 in, cents]
 * @returns what is wrong, for a log; undefined where nothing is.
 */
export function planFault(problem: CuttingProblem, boards: readonly Board[]): string | undefined {
  const wanted = new Map<string, CutItem>();
  for (const item of problem.items) {
    if (wanted.has(item.mark)) return `mark ${item.mark} is asked for twice`;
    wanted.set(item.mark, item);
  }
  const taken = new Map<CuttingProblem['lengths'][number], number>();
  const { useOnHand = true } = problem.preferences ?? {};
  for (const board of boards) {
    const had = problem.lengths.find(
      (length) =>
        length.itemId === board.itemId &&
        length.lengthSixteenths === board.lengthSixteenths &&
        length.priceCents === board.priceCents &&
        (length.source === 'on-hand') === board.onHand &&
        (useOnHand || !board.onHand) &&
        (taken.get(length) ?? 0) < (length.available ?? Number.POSITIVE_INFINITY),
    );
    if (had === undefined) return `board ${board.number} is not on the list, or there are no more of it`;
    taken.set(had, (taken.get(had) ?? 0) + 1);
    if (board.items.length === 0) return `board ${board.number} is empty`;
    for (const item of board.items) {
      const asked = wanted.get(item.mark);
      if (
        asked?.lengthSixteenths !== item.lengthSixteenths ||
        (asked.slantSixteenths ?? 0) !== (item.slantSixteenths ?? 0)
      )
        return `${item.mark} is cut twice, or to another length`;
      wanted.delete(item.mark);
    }
    const fault = boardFault(problem, board);
    if (fault !== undefined) return fault;
  }
  return wanted.size > 0 ? `${[...wanted.keys()].join(', ')} not cut` : undefined;
}

/** Throws where a plan has a fault, since only a mistake in the program can cause it. */
export function checkPlan(problem: CuttingProblem, boards: readonly Board[]): void {
  const fault = planFault(problem, boards);
  if (fault !== undefined) throw new Error(`cut plan: ${fault}`);
}

/**
 * Lays the pieces of a board one behind the other, each as far left as the one before lets it, measured along both edges
 * of the board.
 */
function boardFault(problem: CuttingProblem, board: Board): string | undefined {
  let lower = problem.endTrimSixteenths as number;
  let upper = lower;
  let before = 0;
  for (const [index, item] of board.items.entries()) {
    // A slant that spans the whole piece, or no depth: laid as if square.
    const given = problem.depthSixteenths === undefined ? 0 : (item.slantSixteenths ?? 0);
    const slant = given < item.lengthSixteenths ? given : 0;
    const gap = index === 0 ? 0 : Math.max(cutAlong(problem, before), cutAlong(problem, slant));
    const start = Math.max(lower + gap, upper + gap - slant);
    lower = start + item.lengthSixteenths - slant;
    upper = lower + slant;
    before = slant;
  }
  const end = board.lengthSixteenths - problem.endTrimSixteenths;
  if (upper > end) return `board ${board.number} is over-cut by ${upper - end} sixteenths`;
  const offcut = Math.max(0, end - upper - cutAlong(problem, before));
  return board.offcutSixteenths === offcut ? undefined : `board ${board.number} has a wrong offcut`;
}

/** Whole sixteenths along the board that cover a cut of the saw's kerf across a slant. */
function cutAlong({ kerfSixteenths, depthSixteenths }: CuttingProblem, slant: number): number {
  const kerf = BigInt(kerfSixteenths);
  const depth = BigInt(depthSixteenths ?? 0);
  if (slant === 0 || depth === 0n) return kerfSixteenths;
  const needed = kerf * kerf * (depth * depth + BigInt(slant) ** 2n);
  let along = kerf;
  while (along * along * depth * depth < needed) along += 1n;
  return Number(along);
}
