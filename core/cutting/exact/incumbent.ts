import { isBetter } from '../better-loads.ts';
import type { CompositionCut } from '../composition-cut.ts';
import { centsOf, type Load } from '../cutting-model.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { makePlan, type PlanParts } from '../make-plan.ts';
import { purchaseSums } from '../purchase-sums.ts';
import type { CutPlan, CuttingProblem, ProofKind } from '../cut-plan-types.ts';
import type { SolveControl, SolveProgress } from './solve-control.ts';

/** The best plan so far and what no plan can be below, shared by the steps of an exact solve. */
export type Incumbent = {
  /** Of the model: pinned boards are no part of it, and each board counts for what one fewer is worth. [cents] */
  readonly cents: () => number;
  readonly boundCents: () => number;
  readonly loads: () => readonly Load[];
  readonly parts: () => PlanParts;
  /** What a plan has to count for at most to be of use; below the bound where there can be none. [cents] */
  readonly target: () => number;
  /** Takes loads that are better. */
  readonly offer: (loads: readonly Load[] | undefined, phase: SolveProgress['phase']) => void;
  /** Takes a bound that is higher, and what shows it. [cents] */
  readonly raise: (cents: number, proof: Exclude<ProofKind, 'none'>, phase: SolveProgress['phase']) => void;
  /** Takes better worths, with the bound that they prove. */
  readonly strengthen: (proven: ProvenBound) => void;
  readonly tell: (phase: SolveProgress['phase']) => void;
  /** Whether bound and cost are one, here or in another solve of the same problem. */
  readonly closed: () => boolean;
  /** Whether nothing more is wanted: closed, or interrupted. */
  readonly stopped: () => boolean;
  /** Whether the solve is to end from outside. */
  readonly interrupted: () => boolean;
  /** The plan as it stands, with the cuts that rule out cheaper purchases. */
  readonly plan: (tiesProven: boolean, cuts: readonly CompositionCut[]) => CutPlan;
};

/** Starts with the best that is found at once. */
export function startIncumbent(problem: CuttingProblem, quick: PlanParts, control: SolveControl): Incumbent {
  const { model } = quick;
  const centsPerBoard = problem.preferences?.centsPerBoard ?? 0;
  const sums = purchaseSums(model, centsOf(model, quick.loads));
  let parts = quick;
  let told: readonly Load[] | undefined;
  const cents = (): number => centsOf(model, parts.loads);
  /** What another solve has reached; with a worth on boards its figures, which are dollars alone, say nothing here. */
  const elsewhere = (): { readonly costCents: number; readonly boundCents: number } => {
    const reached = centsPerBoard === 0 ? control.elsewhere?.() : undefined;
    const pinned = quick.pins.reduce((sum, { length }) => sum + length.priceCents, 0);
    return {
      costCents: (reached?.costCents ?? Number.POSITIVE_INFINITY) - pinned,
      boundCents: (reached?.boundCents ?? 0) - pinned,
    };
  };
  const closed = (): boolean => Math.max(parts.boundCents, elsewhere().boundCents) >= cents();
  const interrupted = (): boolean => control.stopped() || (control.timeLeftMs?.() ?? 1) <= 0;
  const plan = (tiesProven: boolean, cuts: readonly CompositionCut[]): CutPlan => {
    const bound = Math.min(cents(), Math.max(parts.boundCents, elsewhere().boundCents));
    return makePlan(problem, {
      ...parts,
      boundCents: bound,
      proof: bound === parts.boundCents ? parts.proof : 'solver-tree',
      tiesProven,
      cuts,
    });
  };
  const tell = (phase: SolveProgress['phase']): void => {
    const isNew = told !== parts.loads;
    const current = plan(false, parts.cuts);
    told = parts.loads;
    control.onProgress({
      phase,
      costCents: Math.round(Number(current.costUsd) * 100),
      boundCents: Math.round(Number(current.boundUsd) * 100),
      ...(isNew ? { plan: current } : {}),
    });
  };
  return {
    cents,
    boundCents: () => parts.boundCents,
    loads: () => parts.loads,
    parts: () => parts,
    target: () => sums.below(Math.min(cents(), elsewhere().costCents)),
    offer(loads, phase) {
      if (loads === undefined || !isBetter(model, loads, parts.loads)) return;
      const cheaper = centsOf(model, loads) < cents();
      parts = { ...parts, loads };
      if (cheaper) tell(phase);
    },
    raise(bound, proof, phase) {
      const lifted = Math.min(sums.notBelow(bound), cents());
      if (lifted <= parts.boundCents) return;
      parts = { ...parts, boundCents: lifted, proof };
      tell(phase);
    },
    strengthen(proven) {
      const bound = Math.min(sums.notBelow(proven.cents), cents());
      parts = { ...parts, proven, boundCents: Math.max(parts.boundCents, bound) };
      tell('bound');
    },
    tell,
    closed,
    stopped: () => interrupted() || closed(),
    interrupted,
    plan,
  };
}
