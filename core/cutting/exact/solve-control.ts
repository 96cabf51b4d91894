import type { CutPlan } from '../cut-plan-types.ts';

/** How far an exact solve has come. */
export type SolveProgress = {
  readonly phase: 'quick' | 'bound' | 'dive' | 'patterns' | 'search' | 'arc-flow' | 'ties';
  /** Cost of the best plan so far, and what no plan can be below. [cents] */
  readonly costCents: number;
  readonly boundCents: number;
  /** The best plan so far, where it is better than the last one told. */
  readonly plan?: CutPlan;
};

/** What steers an exact solve from outside; asked and told synchronously. */
export type SolveControl = {
  readonly stopped: () => boolean;
  readonly onProgress: (progress: SolveProgress) => void;
  /** Time left. [ms] */
  readonly timeLeftMs?: () => number;
  /** What another solve of the same problem has reached meanwhile. [cents] */
  readonly elsewhere?: () => { readonly costCents: number; readonly boundCents: number };
};

/** Which formulation is searched once bounds and heuristics leave a gap. */
export type SolveStrategy = 'patterns' | 'arc-flow';
