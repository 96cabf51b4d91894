import type { CommandInput, CommandOutput } from '../../../core/contract/contract.ts';
import type { HostEvent, Reply } from '../../../core/contract/reply.ts';
import { type KeyedProblem, searchLimitMs } from '../../../core/job/unsettled-plans.ts';
import type { Usd } from '../../../core/units/money.ts';
import type { PlanStore, SearchedPlan } from './plan-store.ts';

/** What the search needs of the world, so that it can be tested without one. */
export type SearchWorld = {
  /** Rejects where the host does not answer. */
  readonly solve: (input: CommandInput<'cutting.solve'>) => Promise<Reply<CommandOutput<'cutting.solve'>>>;
  readonly cancel: (input: CommandInput<'cutting.cancel'>) => Promise<unknown>;
  readonly hear: (listener: (event: HostEvent) => void) => () => void;
  /** Returns the function that calls it off. */
  readonly later: (act: () => void, afterMs: number) => () => void;
  readonly nowMs: () => number;
  readonly newId: () => string;
};

/** A search under way. */
export type Searching = {
  readonly keys: readonly string[];
  readonly sinceMs: number;
  /** How far each problem is that was heard of: its best plan's cost, and what no plan can cost less than. */
  readonly reached: ReadonlyMap<string, { readonly costUsd: Usd; readonly boundUsd: Usd }>;
};

/** Asks the host for the best boards, for what is wanted now. */
export type PlanSearch = {
  /** The search under way; null where there is none. */
  readonly read: () => Searching | null;
  readonly subscribe: (listener: () => void) => () => void;
  /** These are wanted now; what is not among them any more is given up. */
  readonly want: (problems: readonly KeyedProblem[]) => void;
  /** The person takes what was found so far. */
  readonly enough: () => void;
  /** Searches these once more, for longer. */
  readonly again: (problems: readonly KeyedProblem[]) => void;
};

/** While one types, each keystroke wants other boards: a search begins at a pause. [ms] */
const pauseMs = 300;
/** A host that did not answer is asked again after this. [ms] */
const retryMs = 3000;
/** How long a person waits who asks once more. [ms] */
export const againLimitMs = 60_000;

type Run = { readonly solveId: string; readonly keys: ReadonlySet<string> };

/**
 * Makes a search that puts what it finds into a store. One search runs at a time: where others are wanted, the one under
 * way is given up; what it had proven by then is kept all the same.
 */
export function createPlanSearch(world: SearchWorld, store: PlanStore): PlanSearch {
  let wanted: readonly KeyedProblem[] = [];
  let run: Run | null = null;
  let searching: Searching | null = null;
  let callOff: (() => void) | null = null;
  const listeners = new Set<() => void>();

  const show = (next: Searching | null): void => {
    searching = next;
    for (const listener of listeners) listener();
  };
  const open = (): readonly KeyedProblem[] => {
    const { searched } = store.read();
    return wanted.filter(({ key }) => !searched.has(key));
  };
  const wait = (afterMs: number): void => {
    callOff?.();
    callOff = world.later(() => {
      callOff = null;
      const problems = open();
      if (run === null && problems.length > 0) void start(problems, searchLimitMs, false);
    }, afterMs);
  };
  const giveUp = (): void => {
    if (run === null) return;
    const { solveId } = run;
    run = null;
    show(null);
    world.cancel({ solveId, why: 'superseded' }).catch(() => undefined);
  };

  world.hear((event) => {
    if (event.kind !== 'solving' || event.solveId !== run?.solveId || searching === null) return;
    const { key, costUsd, boundUsd } = event;
    show({ ...searching, reached: new Map(searching.reached).set(key, { costUsd, boundUsd }) });
  });

  async function start(problems: readonly KeyedProblem[], limitMs: number, again: boolean): Promise<void> {
    const started: Run = { solveId: world.newId(), keys: new Set(problems.map(({ key }) => key)) };
    run = started;
    show({ keys: [...started.keys], sinceMs: world.nowMs(), reached: new Map() });
    let found: readonly (readonly [string, SearchedPlan])[] = [];
    let afterMs = 0;
    try {
      const reply = await world.solve({
        solveId: started.solveId,
        problems: problems.map(({ problem }) => problem),
        limitMs,
        again,
      });
      // The answers come in the order of the questions. What the host cannot search, it is not asked again.
      found = problems.map(({ key }, index) => {
        const one = reply.ok ? reply.value.plans[index] : undefined;
        return [key, one === undefined ? nothingFound : { plan: one.plan, ended: one.ended }] as const;
      });
    } catch {
      afterMs = retryMs;
    }
    const isCurrent = run === started;
    if (isCurrent) run = null;
    // Of a search that was given up only what is proven stands: the rest is searched when it is wanted again.
    store.put(isCurrent ? found.filter(isAnswer) : found.filter(([, one]) => one.ended === 'proven'));
    if (!isCurrent) return;
    show(null);
    if (open().length > 0) wait(Math.max(afterMs, pauseMs));
  }

  return {
    read: () => searching,
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    want(problems) {
      wanted = problems;
      const keys = new Set(problems.map(({ key }) => key));
      // As long as all that runs is wanted, it goes on; what else is wanted follows it.
      if (run !== null && [...run.keys].every((key) => keys.has(key))) return;
      giveUp();
      callOff?.();
      callOff = null;
      if (open().length > 0) wait(pauseMs);
    },
    enough() {
      if (run === null) return;
      world.cancel({ solveId: run.solveId, why: 'enough' }).catch(() => undefined);
    },
    again(problems) {
      giveUp();
      void start(problems, againLimitMs, true);
    },
  };
}

const nothingFound: SearchedPlan = { plan: null, ended: 'no-plan' };

function isAnswer([, { plan, ended }]: readonly [string, SearchedPlan]): boolean {
  return plan !== null || ended === 'no-plan';
}
