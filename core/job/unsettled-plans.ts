import type { CuttingProblem } from '../cutting/cut-plan-types.ts';
import type { JobResult } from './job-result.ts';

/** A problem to be solved away from the page, with its `problemKey`. */
export type KeyedProblem = { readonly key: string; readonly problem: CuttingProblem };

/** Longest search for the plan of one stock, on the screen and before paper alike. [ms] */
export const searchLimitMs = 10_000;

/**
 * The problems whose plan is not shown to be the best yet: another may cost less, or as little with fewer boards. Page
 * and host ask by the same rule, so that screen and paper say the same.
 * @param result - the job as computed so far.
 * @param solved - keys that were searched already: what was found for them stands.
 */
export function unsettledPlans(
  result: Pick<JobResult, 'cutPlans' | 'cuttingProblems'>,
  solved: Pick<ReadonlyMap<string, unknown>, 'has'>,
): readonly KeyedProblem[] {
  return result.cuttingProblems.filter(({ key }, index) => {
    const plan = result.cutPlans[index];
    return plan !== undefined && !solved.has(key) && (plan.proof === 'none' || !plan.tiesProven);
  });
}
