import type { CutPlan, CuttingProblem, UnplannedStock } from '../cutting/cut-plan-types.ts';
import type { EaveLayout, Finding } from '../layout/layout-types.ts';
import type { Estimate } from '../pricing/estimate-types.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { Takeoff } from '../takeoff/takeoff-types.ts';

/** Every figure of a job, from survey to estimate. */
export type JobResult = {
  readonly eaves: readonly EaveLayout[];
  readonly rakes: readonly RakeLayout[];
  readonly takeoff: Takeoff;
  readonly cutPlans: readonly CutPlan[];
  readonly unplanned: readonly UnplannedStock[];
  /** What each cut plan answers, in the same order, with its `problemKey`: what a solver is to be asked. */
  readonly cuttingProblems: readonly { readonly key: string; readonly problem: CuttingProblem }[];
  readonly estimate: Estimate;
  readonly findings: readonly Finding[];
};
