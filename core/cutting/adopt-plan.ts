import { planFault } from './check-plan.ts';
import type { CutPlan, CuttingProblem } from './cut-plan-types.ts';
import { giveMarks } from './give-marks.ts';
import { pieceKey } from './problem-key.ts';
import { settlePins } from './settle-pins.ts';
import { stockGroup } from './stock-group.ts';
import { centsOfUsd } from './with-bound.ts';

/**
 * Takes a plan made for a problem with the same `problemKey`: its boards stay, its pieces get this problem's marks, and
 * all of it is held against this problem once more.
 * @returns the plan; undefined where it does not fit.
 */
export function adoptPlan(problem: CuttingProblem, plan: CutPlan): CutPlan | undefined {
  const marked = giveMarks(
    problem,
    plan.boards.map(({ itemId, items }) => ({
      itemId,
      places: items.map((item) => pieceKey(problem, item)),
    })),
  );
  if (marked === undefined) return undefined;
  const boards = plan.boards.map((board, index) => ({ ...board, items: marked[index] ?? [] }));
  const cents = boards.reduce((sum, board) => sum + board.priceCents, 0);
  if (planFault(problem, boards) !== undefined || cents !== centsOfUsd(plan.costUsd)) return undefined;
  return {
    ...plan,
    group: stockGroup(problem.stock),
    stock: problem.stock,
    boards,
    unmetPins: settlePins(problem).unmet,
  };
}
