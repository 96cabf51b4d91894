import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { problemKey } from '../../core/cutting/problem-key.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import type { CuttingEar, CuttingPort } from './cutting-port.ts';
import { createBriefSolver } from './brief-solver.ts';
import { cheaperOf } from './cheaper-of.ts';
import { createPlanMemory } from './plan-memory.ts';
import { quickPlan } from './quick-plan.ts';
import { createSolverSeat } from './solver-seat.ts';
import { type Raced, type RaceProgress, raceSolvers, type RaceTimes } from './solver-race.ts';

/** Why an asker no longer waits: he takes what there is for good, or wants something else now. */
export type LeaveReason = 'enough' | 'superseded';

/** Until when a plan is searched, and who hears of it. */
export type ProveAsk = {
  /** [ms] */
  readonly limitMs: number;
  /** Searches once more where an earlier search ended without proof. */
  readonly again?: boolean;
  /** Aborted with a LeaveReason. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: RaceProgress) => void;
};

/** How long a short search may be. [ms] */
export type BriefAsk = { readonly limitMs: number; readonly signal?: AbortSignal };

/** The plan, and why the search ended; null where it was given up before there was one. */
export type Proven = Raced | { readonly plan: null; readonly ended: 'stopped' };

/** Finds the boards that cost least and proves it, away from the host's own thread. */
export type Prover = {
  /**
   * Plans one stock's boards. Problems wait their turn; those of one key are solved once, and what was found is kept.
   * @returns the plan; or what stands in a plan's way.
   */
  readonly prove: (problem: CuttingProblem, ask: ProveAsk) => Promise<Result<Proven, Problem>>;
  /**
   * The plan that a short search finds, or the one that is known; it waits for no longer search, since it has workers of
   * its own. Null where it was given up or there is no plan.
   */
  readonly briefly: (problem: CuttingProblem, ask: BriefAsk) => Promise<CutPlan | null>;
  /** Keeps a plan that was found in another way; a search that finds none cheaper answers it. */
  readonly remember: (problem: CuttingProblem, plan: CutPlan) => void;
  readonly close: () => Promise<void>;
};

export type ProverWorld = {
  readonly startPort: (ear: CuttingEar) => CuttingPort;
  readonly reportBug: (error: unknown) => void;
  readonly times?: RaceTimes;
};

type Waiter = {
  readonly ask: ProveAsk;
  readonly answer: (result: Result<Proven, Problem>) => void;
};

type Task = {
  readonly key: string;
  readonly problem: CuttingProblem;
  readonly waiters: Set<Waiter>;
  /** Ends the race. */
  readonly controller: AbortController;
  isRunning: boolean;
  /** Whoever waited last had enough: what was found stands for good. */
  isEnough: boolean;
  best: CutPlan | null;
};

const usualTimes: RaceTimes = { raceAfterMs: 1500, graceMs: 1000, stopMs: 60 };

/** Plans that are kept in memory: some dozens of jobs, with what each of their choices would cost. */
const mostPlans = 600;

/** Makes a prover; its two workers start when they are first needed. */
export function createProver(world: ProverWorld): Prover {
  const seats = [createSolverSeat(world.startPort), createSolverSeat(world.startPort)] as const;
  const brief = createBriefSolver(world);
  const memory = createPlanMemory(mostPlans);
  const tasks: Task[] = [];
  let isWorking = false;
  let isClosed = false;

  async function work(): Promise<void> {
    if (isWorking) return;
    isWorking = true;
    for (let task = tasks[0]; task !== undefined; task = tasks[0]) {
      await seats[0].whenFree();
      if (task.waiters.size > 0) await solve(task);
      tasks.splice(tasks.indexOf(task), 1);
    }
    isWorking = false;
  }

  async function solve(task: Task): Promise<void> {
    task.isRunning = true;
    const limitMs = Math.max(...[...task.waiters].map(({ ask }) => ask.limitMs));
    const ask = {
      problem: task.problem,
      limitMs,
      signal: task.controller.signal,
      onProgress(progress: RaceProgress) {
        task.best = progress.plan;
        for (const waiter of task.waiters) waiter.ask.onProgress?.(progress);
      },
    };
    const found = await raceSolvers(seats, ask, world.times ?? usualTimes, world.reportBug);
    const raced = found.ok ? ok(cheaperOf(found.value, memory.get(task.key))) : found;
    if (raced.ok) {
      const isFinal = raced.value.ended === 'proven' || task.isEnough;
      if (isFinal || raced.value.ended === 'limit')
        memory.put(task.key, { ...raced.value, searchedMs: isFinal ? Number.POSITIVE_INFINITY : limitMs });
    }
    for (const waiter of task.waiters) waiter.answer(raced);
    task.waiters.clear();
  }

  function leave(task: Task, waiter: Waiter): void {
    if (!task.waiters.has(waiter)) return;
    const isEnough = waiter.ask.signal?.reason === 'enough';
    if (task.isRunning && task.waiters.size === 1) {
      task.isEnough = isEnough;
      // Answers this waiter with the best so far.
      task.controller.abort();
      return;
    }
    task.waiters.delete(waiter);
    if (!isEnough) {
      waiter.answer(ok({ plan: null, ended: 'stopped' }));
      return;
    }
    const quick = task.best === null ? quickPlan(task.problem, world.reportBug) : ok(task.best);
    if (quick.ok && task.waiters.size === 0)
      memory.put(task.key, { plan: quick.value, ended: 'stopped', searchedMs: Number.POSITIVE_INFINITY });
    waiter.answer(quick.ok ? ok({ plan: quick.value, ended: 'stopped' }) : quick);
  }

  /** Keeps a plan beside what is known; of its ties a full search has still to be asked where they are not settled. */
  function keep(key: string, plan: CutPlan, searchedMs: number): CutPlan {
    const known = memory.get(key);
    const kept = cheaperOf({ plan, ended: 'limit' }, known).plan;
    const isSettled = (kept.proof !== 'none' && kept.tiesProven) || known?.ended === 'proven';
    memory.put(key, {
      plan: kept,
      ended: isSettled ? 'proven' : 'limit',
      searchedMs: Math.max(searchedMs, known?.searchedMs ?? 0),
    });
    return kept;
  }

  return {
    prove(problem, ask) {
      const key = problemKey(problem);
      const known = memory.get(key);
      const isKnown =
        known !== undefined &&
        (known.ended === 'proven' || (ask.again !== true && known.searchedMs >= ask.limitMs));
      if (isKnown) return Promise.resolve(ok({ plan: known.plan, ended: known.ended }));
      if (isClosed || ask.signal?.aborted === true)
        return Promise.resolve(ok({ plan: null, ended: 'stopped' }));
      return new Promise((resolve) => {
        let task = tasks.find((one) => one.key === key && !one.controller.signal.aborted);
        if (task === undefined) {
          task = {
            key,
            problem,
            waiters: new Set(),
            controller: new AbortController(),
            isRunning: false,
            isEnough: false,
            best: null,
          };
          tasks.push(task);
        }
        const joined = task;
        const onLeave = (): void => leave(joined, waiter);
        const waiter: Waiter = {
          ask,
          answer(result) {
            ask.signal?.removeEventListener('abort', onLeave);
            resolve(result);
          },
        };
        joined.waiters.add(waiter);
        ask.signal?.addEventListener('abort', onLeave);
        void work();
      });
    },
    async briefly(problem, ask) {
      const key = problemKey(problem);
      const known = memory.get(key);
      if (known !== undefined && (known.plan.proof !== 'none' || known.searchedMs >= ask.limitMs))
        return known.plan;
      const plan = isClosed ? null : await brief.solve(problem, ask);
      return plan === null ? (memory.get(key)?.plan ?? null) : keep(key, plan, ask.limitMs);
    },
    remember(problem, plan) {
      keep(problemKey(problem), plan, 0);
    },
    async close() {
      isClosed = true;
      void brief.close();
      for (const task of tasks) {
        task.controller.abort();
        if (task.isRunning) continue;
        for (const waiter of task.waiters) waiter.answer(ok({ plan: null, ended: 'stopped' }));
        task.waiters.clear();
      }
      await Promise.all(seats.map((seat) => seat.close()));
    },
  };
}
