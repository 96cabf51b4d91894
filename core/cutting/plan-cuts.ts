import { ok, type Result } from '../result.ts';
import { zeroUsd } from '../units/money.ts';
import type { Problem } from '../problems/problem.ts';
import { isBetter } from './better-loads.ts';
import { checkPlan } from './check-plan.ts';
import { loadsToBoards } from './loads-to-boards.ts';
import { bestOneLength } from './one-length.ts';
import { planLoads } from './plan-loads.ts';
import { stockGroup } from './stock-group.ts';
import { gapOf, usdOfCents } from './with-bound.ts';
import { centsOf, cuttingModel } from './cutting-model.ts';
import type { CutPlan, CuttingProblem } from './cut-plan-types.ts';

/**
 * Plans which boards of one stock to buy and how to cut them, for the least money found, and proves how much less it
 * could cost at most. Ties go to fewer boards, then fewer patterns, then the longest offcut. The same input gives the
 * same plan, on every machine.
 * @param problem - pieces, lengths with prices, kerf and end trim. [1/16 in, cents]
 * @returns the plan; five 28 in. pieces with 1/8 in. kerf and no trim -> one 12 ft board with 3-3/8 in. left; or the
 * problem that a piece is longer than any length, or that there is nothing to buy.
 */
export function planCuts(problem: CuttingProblem): Result<CutPlan, Problem> {
  const group = stockGroup(problem.stock);
  if (problem.items.length === 0) {
    return ok({ ...emptyPlan, group, stock: problem.stock });
  }
  const modelled = cuttingModel(problem);
  if (!modelled.ok) return modelled;
  const model = modelled.value;
  const oneLength = bestOneLength(model);
  const planned = planLoads(model);
  const loads =
    oneLength !== null && isBetter(model, oneLength.reselected, planned.loads)
      ? oneLength.reselected
      : planned.loads;
  const boards = loadsToBoards(problem, model, loads);
  checkPlan(problem, boards);
  const cents = centsOf(model, loads);
  const bound = planned.boundCents;
  if (bound > cents) throw new Error(`cut plan: the bound of ${bound} cents is above the cost of ${cents}`);
  const net = problem.items.reduce((sum, item) => sum + item.lengthSixteenths, 0);
  const bought = boards.reduce((sum, board) => sum + board.lengthSixteenths, 0);
  return ok({
    group,
    stock: problem.stock,
    boards,
    costUsd: usdOfCents(cents),
    boundUsd: usdOfCents(bound),
    ...gapOf(cents, bound),
    proof: bound === cents ? 'exact-bound' : 'none',
    certificate: null,
    tiesProven: false,
    unmetPins: [],
    yield: net / bought,
    oneLengthUsd: oneLength === null ? null : usdOfCents(oneLength.cents),
    oneLengthFt: oneLength === null ? null : oneLength.stock.lengthSixteenths / 192,
  });
}

const emptyPlan: Omit<CutPlan, 'group' | 'stock'> = {
  boards: [],
  costUsd: zeroUsd,
  boundUsd: zeroUsd,
  gap: 0,
  status: 'optimal',
  proof: 'exact-bound',
  certificate: null,
  tiesProven: true,
  unmetPins: [],
  yield: 1,
  oneLengthUsd: null,
  oneLengthFt: null,
};
