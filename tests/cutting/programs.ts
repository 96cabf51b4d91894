import { loadLinearPrograms } from '../../electron/workers/highs-programs.ts';
import { solveExactly } from '../../core/cutting/exact/solve-exactly.ts';
import type { SolveStrategy } from '../../core/cutting/exact/solve-control.ts';
import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/** The solver of linear programs, loaded once a test file. */
export const programs = await loadLinearPrograms();

/** Solves a problem without a limit. */
export function solved(problem: CuttingProblem, strategy?: SolveStrategy): CutPlan {
  const plan = solveExactly(problem, programs, { stopped: () => false, onProgress: () => {} }, strategy);
  if (!plan.ok) throw new Error(`not solved: ${JSON.stringify(plan.problem)}`);
  return plan.value;
}
