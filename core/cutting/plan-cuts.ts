import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { isBetter } from './better-loads.ts';
import type { Column } from './column.ts';
import { cutOfWorths } from './composition-cut.ts';
import { cuttingModel, type ModelAndPins } from './cutting-model.ts';
import { emptyPlan, makePlan, type PlanParts } from './make-plan.ts';
import { bestOneLength } from './one-length.ts';
import { atOnce, planLoads, type Effort } from './plan-loads.ts';
import { stockGroup } from './stock-group.ts';
import type { CutPlan, CuttingProblem } from './cut-plan-types.ts';

/**
 * Plans which boards of one stock to have and how to cut them, for the least money found at once, and proves how much
 * less it could cost at most. Ties go to fewer boards, then fewer patterns, then the longest offcut. The same input gives
 * the same plan, on every machine.
 * @param problem - pieces, lengths with prices, kerf and end trim, preferences. [1/16 in, cents]
 * @returns the plan; five 28 in. pieces with 1/8 in. kerf and no trim -> one 12 ft board with 3-3/8 in. left; or the
 * problem that a piece is longer than any length, that there is nothing to have, or that boards run out.
 */
export function planCuts(problem: CuttingProblem): Result<CutPlan, Problem> {
  if (problem.items.length === 0) return ok(emptyPlan(problem));
  const quick = quickParts(problem);
  return quick.ok ? ok(makePlan(problem, quick.value.parts)) : quick;
}

/** The best that is found at once, as parts of a plan, and the patterns met on the way. */
export function quickParts(
  problem: CuttingProblem,
  effort: Effort = atOnce,
  stopped?: () => boolean,
): Result<{ readonly parts: PlanParts; readonly pool: readonly Column[] }, Problem> {
  const modelled = cuttingModel(problem);
  if (!modelled.ok) return modelled;
  const { model, pins } = modelled.value;
  const planned = planLoads(model, effort, stopped);
  if (planned === undefined) return fail({ code: 'not-enough-boards', stock: stockGroup(problem.stock) });
  const whole = wholeModel(problem, modelled.value);
  const oneLength = whole === undefined ? null : bestOneLength(whole);
  const loads =
    oneLength !== null && whole === model && isBetter(model, oneLength.reselected, planned.loads)
      ? oneLength.reselected
      : planned.loads;
  const parts: PlanParts = {
    model,
    pins,
    loads,
    boundCents: planned.bound.cents,
    proven: planned.bound,
    // The rooms of the boards together must hold the lengths of the pieces.
    cuts: [
      cutOfWorths(
        model,
        model.sizes.map(({ span }) => span),
      ),
    ],
    proof: 'exact-bound',
    tiesProven: false,
    oneLength:
      oneLength === null
        ? null
        : { cents: oneLength.cents, lengthSixteenths: oneLength.stock.lengthSixteenths },
  };
  return ok({ parts, pool: planned.pool });
}

/** The problem with nothing pinned and nothing on hand, as one length alone would have to meet it. */
function wholeModel(problem: CuttingProblem, { model, pins }: ModelAndPins) {
  if (pins.length === 0 && !model.limited) return model;
  const whole = cuttingModel({ ...problem, preferences: { useOnHand: false } });
  return whole.ok ? whole.value.model : undefined;
}
