import { planFault } from '../../core/cutting/check-plan.ts';
import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { SolveProgress } from '../../core/cutting/exact/solve-control.ts';
import { withBound } from '../../core/cutting/with-bound.ts';
import type { BriefAsk, ProverWorld } from './prover.ts';
import { createSolverSeat, type Run } from './solver-seat.ts';

/** Short searches, two at a time, in workers of their own. */
export type BriefSolver = {
  /** Null where it was given up, or where there is no plan. */
  readonly solve: (problem: CuttingProblem, ask: BriefAsk) => Promise<CutPlan | null>;
  readonly close: () => Promise<void>;
};

/** A worker that overruns its time is ended after this, once it has told a plan. [ms] */
const graceMs = 500;

/** One that has told none is given this long: the first plan takes its time on a busy machine. [ms] */
const firstPlanMs = 20_000;

/** Makes it; its workers start when they are first needed. */
export function createBriefSolver({
  startPort,
  reportBug,
}: Pick<ProverWorld, 'startPort' | 'reportBug'>): BriefSolver {
  const seats = [createSolverSeat(startPort), createSolverSeat(startPort)] as const;

  const freeSeat = () => seats.find((seat) => seat.isFree());

  return {
    async solve(problem, { limitMs, signal }) {
      let seat = freeSeat();
      while (seat === undefined) {
        await Promise.race(seats.map((one) => one.whenFree()));
        // Asked anew right before it is taken: another may have been served first.
        seat = freeSeat();
      }
      if (signal?.aborted === true) return null;
      let told: CutPlan | null = null;
      let boundCents = 0;
      const onProgress = (progress: SolveProgress): void => {
        told = progress.plan ?? told;
        boundCents = Math.max(boundCents, progress.boundCents);
        // Once nothing is cheaper it is enough: which of equal plans is best is left to a full search.
        if (progress.boundCents >= progress.costCents) run.stop();
      };
      const run: Run = seat.run({ problem, strategy: 'patterns', limitMs, onProgress });
      const onAbort = (): void => run.stop();
      signal?.addEventListener('abort', onAbort);
      const late = setTimeout(() => {
        if (told !== null) run.kill();
      }, limitMs + graceMs);
      const tooLate = setTimeout(run.kill, firstPlanMs + limitMs);
      const outcome = await run.outcome;
      clearTimeout(late);
      clearTimeout(tooLate);
      signal?.removeEventListener('abort', onAbort);
      if (outcome.kind === 'broke') reportBug(new Error(outcome.error));
      // Of a worker that was ended, what it told last stands; with a worth on boards its bound counts that worth too.
      const plan = outcome.kind === 'plan' ? outcome.plan : lastTold(told, boundCents);
      if (plan === null) return null;
      const fault = planFault(problem, plan.boards);
      if (fault === undefined) return plan;
      reportBug(new Error(`cut plan: ${fault}`));
      return null;
    },
    close: async () => {
      await Promise.all(seats.map((seat) => seat.close()));
    },
  };
}

function lastTold(plan: CutPlan | null, boundCents: number): CutPlan | null {
  return plan === null || plan.centsPerBoard !== 0 ? plan : withBound(plan, boundCents, 'solver-tree');
}
