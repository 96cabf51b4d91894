import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, type Result } from '../../core/result.ts';

/**
 * The quick plan where no worker gave a better one. It is made where nothing may be thrown: a bug in it is reported and
 * answered as such.
 */
export function quickPlan(
  problem: CuttingProblem,
  reportBug: (error: unknown) => void,
): Result<CutPlan, Problem> {
  try {
    return planCuts(problem);
  } catch (error) {
    reportBug(error);
    return fail({ code: 'internal' });
  }
}
