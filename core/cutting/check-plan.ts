import type { Board, CuttingProblem } from './cut-plan-types.ts';

/**
 * Holds the boards of a plan against the problem once more, in whole numbers and without the solver's own model: every
 * piece is cut once, every board is on the list at its price, and no board is over-cut.
 * Throws where this is not so, since only a mistake in the program can cause it.
 * @param problem - what was asked. [1/16 in, cents]
 * @param boards - what is to be bought and cut. [1/16 in, cents]
 */
export function checkPlan(problem: CuttingProblem, boards: readonly Board[]): void {
  const wanted = new Map<string, number>();
  for (const item of problem.items) {
    if (wanted.has(item.mark)) throw new Error(`cut plan: mark ${item.mark} is asked for twice`);
    wanted.set(item.mark, item.lengthSixteenths);
  }
  for (const board of boards) {
    const bought = problem.lengths.find(
      (length) =>
        length.itemId === board.itemId &&
        length.lengthSixteenths === board.lengthSixteenths &&
        length.priceCents === board.priceCents,
    );
    if (bought === undefined) throw new Error(`cut plan: board ${board.number} is not on the list`);
    let used: number = problem.endTrimSixteenths;
    for (const [index, item] of board.items.entries()) {
      if (wanted.get(item.mark) !== item.lengthSixteenths) {
        throw new Error(`cut plan: ${item.mark} is cut twice, or to another length`);
      }
      wanted.delete(item.mark);
      used += (index === 0 ? 0 : problem.kerfSixteenths) + item.lengthSixteenths;
    }
    const end = board.lengthSixteenths - problem.endTrimSixteenths;
    if (board.items.length === 0) throw new Error(`cut plan: board ${board.number} is empty`);
    if (used > end)
      throw new Error(`cut plan: board ${board.number} is over-cut by ${used - end} sixteenths`);
    const offcut = Math.max(0, end - used - problem.kerfSixteenths);
    if (board.offcutSixteenths !== offcut)
      throw new Error(`cut plan: board ${board.number} has a wrong offcut`);
  }
  if (wanted.size > 0) throw new Error(`cut plan: ${[...wanted.keys()].join(', ')} not cut`);
}
