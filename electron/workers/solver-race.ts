import { checkPlan } from '../../core/cutting/check-plan.ts';
import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { SolveProgress, SolveStrategy } from '../../core/cutting/exact/solve-control.ts';
import { centsOfUsd, withBound } from '../../core/cutting/with-bound.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { quickPlan } from './quick-plan.ts';
import type { Outcome, Run, SolverSeat } from './solver-seat.ts';

/** How long things may take. [ms] */
export type RaceTimes = {
  /** After this a second worker tries the other way of solving. */
  readonly raceAfterMs: number;
  /** A worker that has not answered this long after the limit is ended. */
  readonly graceMs: number;
  /** A worker that has not stopped this long after it was told to is ended. */
  readonly stopMs: number;
};

/** What is to be solved, until when, and who hears of it. */
export type RaceAsk = {
  readonly problem: CuttingProblem;
  /** [ms] */
  readonly limitMs: number;
  readonly signal: AbortSignal;
  readonly onProgress: (progress: RaceProgress) => void;
};

/** The best plan so far with its cost, and what no plan can cost less than. [cent] */
export type RaceProgress = {
  readonly plan: CutPlan;
  readonly costCents: number;
  readonly boundCents: number;
};

/** A plan that was held against the problem, and why the search ended. */
export type Raced = { readonly plan: CutPlan; readonly ended: 'proven' | 'limit' | 'stopped' };

/**
 * Solves one problem: the first worker searches by patterns, and where that takes long a second one by another
 * formulation; the first proof wins. A solver may overrun its time, so whoever is late is ended, and the best plan told so
 * far is answered with its bound. Whatever a worker answers counts only once it was checked here in whole numbers.
 * @param seats - for the first and the second worker; the first must be free.
 * @param reportBug - hears of a worker that broke and of a plan that does not hold.
 */
export function raceSolvers(
  seats: readonly [SolverSeat, SolverSeat],
  ask: RaceAsk,
  times: RaceTimes,
  reportBug: (error: unknown) => void,
): Promise<Result<Raced, Problem>> {
  const { problem, limitMs, signal } = ask;
  const { promise, resolve } = Promise.withResolvers<Result<Raced, Problem>>();
  const startMs = performance.now();
  const runs = new Set<Run>();
  const timers: NodeJS.Timeout[] = [];
  let best: CutPlan | null = null;
  let boundCents = 0;
  let isOver = false;

  const later = (act: () => void, afterMs: number): void => {
    timers.push(setTimeout(act, afterMs));
  };
  const stopAll = (killAfterMs: number): void => {
    const stopped = [...runs];
    for (const run of stopped) run.stop();
    // The runs are left to themselves once the answer is out, so this timer outlives the race.
    if (stopped.length > 0) setTimeout(() => stopped.forEach((run) => run.kill()), killAfterMs).unref();
  };

  const finish = (result: Result<Raced, Problem>): void => {
    if (isOver) return;
    isOver = true;
    for (const timer of timers) clearTimeout(timer);
    signal.removeEventListener('abort', abort);
    stopAll(times.stopMs);
    resolve(result);
  };
  const finishWithBest = (ended: 'limit' | 'stopped'): void => {
    if (isOver) return;
    if (best === null) {
      const quick = quickPlan(problem, reportBug);
      if (!quick.ok) return finish(quick);
      best = quick.value;
    }
    const plan = withBound(best, boundCents, 'solver-tree');
    finish(ok({ plan, ended: plan.proof === 'none' ? ended : 'proven' }));
  };
  const abort = (): void => finishWithBest('stopped');

  /** Keeps a plan that holds and costs less than the best so far, or as little with a proof. */
  const consider = (plan: CutPlan): void => {
    try {
      checkPlan(problem, plan.boards);
    } catch (error) {
      reportBug(error);
      return;
    }
    const saved = best === null ? 1 : worthCents(problem, best) - worthCents(problem, plan);
    if (best === null || saved > 0 || (saved === 0 && best.proof === 'none')) best = plan;
  };

  const heard = (progress: SolveProgress): void => {
    if (isOver) return;
    if (progress.plan !== undefined) consider(progress.plan);
    // With a worth on boards, a bound is over cost and worth together and says nothing of the cost alone.
    if (centsPerBoard(problem) === 0) boundCents = Math.max(boundCents, progress.boundCents);
    if (best === null) return;
    const costCents = centsOfUsd(best.costUsd);
    for (const run of runs) run.tell(costCents, boundCents);
    ask.onProgress({ plan: best, costCents, boundCents: Math.min(boundCents, costCents) });
  };

  const ended = (run: Run, outcome: Outcome): void => {
    runs.delete(run);
    if (isOver) return;
    switch (outcome.kind) {
      case 'plan':
        consider(outcome.plan);
        if (best !== null && outcome.plan.proof !== 'none' && best.proof !== 'none')
          return finish(ok({ plan: best, ended: 'proven' }));
        break;
      case 'problem':
        return finish(fail(outcome.problem));
      case 'broke':
        reportBug(new Error(outcome.error));
        break;
      case 'killed':
        break;
      default:
        return outcome satisfies never;
    }
    if (runs.size === 0) finishWithBest('limit');
  };

  const start = (seat: SolverSeat, strategy: SolveStrategy): void => {
    const left = limitMs - (performance.now() - startMs);
    const run = seat.run({ problem, strategy, limitMs: Math.max(1, left), onProgress: heard });
    runs.add(run);
    void run.outcome.then((outcome) => ended(run, outcome));
  };

  if (signal.aborted) {
    abort();
    return promise;
  }
  signal.addEventListener('abort', abort);
  start(seats[0], 'patterns');
  later(() => {
    if (seats[1].isFree()) start(seats[1], 'arc-flow');
  }, times.raceAfterMs);
  later(() => runs.forEach((run) => run.stop()), limitMs);
  later(() => finishWithBest('limit'), limitMs + times.graceMs);
  return promise;
}

/** What a plan is judged by: its cost, and what its boards are worth to the person who would rather have fewer. [cent] */
function worthCents(problem: CuttingProblem, plan: CutPlan): number {
  return centsOfUsd(plan.costUsd) + centsPerBoard(problem) * plan.boards.length;
}

function centsPerBoard(problem: CuttingProblem): number {
  return problem.preferences?.centsPerBoard ?? 0;
}
