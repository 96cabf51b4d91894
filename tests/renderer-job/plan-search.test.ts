import { describe, expect, test } from 'vitest';
import type { CommandInput, CommandOutput } from '../../core/contract/contract.ts';
import type { HostEvent, Reply } from '../../core/contract/reply.ts';
import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import type { KeyedProblem } from '../../core/job/unsettled-plans.ts';
import { usd } from '../../core/units/money.ts';
import { createPlanSearch } from '../../renderer/job/compute/plan-search.ts';
import { createPlanStore } from '../../renderer/job/compute/plan-store.ts';
import { makeProblem, planOf } from '../cutting/make-problem.ts';

type Solve = {
  readonly input: CommandInput<'cutting.solve'>;
  readonly answer: (reply: Reply<CommandOutput<'cutting.solve'>>) => Promise<void>;
  readonly lose: () => Promise<void>;
};

/** A search whose host and clock do as the test says. */
function setUp() {
  const solves: Solve[] = [];
  const cancels: CommandInput<'cutting.cancel'>[] = [];
  const timers: { readonly act: () => void; off: boolean }[] = [];
  let hear: ((event: HostEvent) => void) | null = null;
  const store = createPlanStore();
  const search = createPlanSearch(
    {
      solve: (input) => {
        const { promise, resolve, reject } = Promise.withResolvers<Reply<CommandOutput<'cutting.solve'>>>();
        const settled = async (): Promise<void> => {
          await promise.catch(() => undefined);
          await new Promise((resume) => setImmediate(resume));
        };
        solves.push({
          input,
          answer: (reply) => (resolve(reply), settled()),
          lose: () => (reject(new Error('lost')), settled()),
        });
        return promise;
      },
      cancel: (input) => {
        cancels.push(input);
        return Promise.resolve();
      },
      hear: (listener) => {
        hear = listener;
        return () => undefined;
      },
      later: (act) => {
        const timer = { act, off: false };
        timers.push(timer);
        return () => {
          timer.off = true;
        };
      },
      nowMs: () => 0,
      newId: () => `solve-${solves.length + 1}`,
    },
    store,
  );
  return {
    search,
    store,
    solves,
    cancels,
    tell: (event: HostEvent) => hear?.(event),
    /** Lets the pause in the typing pass. */
    pause: () => {
      for (const timer of timers.splice(0)) if (!timer.off) timer.act();
    },
    last: (): Solve => {
      const solve = solves.at(-1);
      if (solve === undefined) throw new Error('nothing was asked');
      return solve;
    },
  };
}

function keyed(key: string, pieceIn: number): KeyedProblem {
  return { key, problem: makeProblem([pieceIn, pieceIn], [[8, 600]]) };
}

const a = keyed('a', 40);
const b = keyed('b', 50);
const c = keyed('c', 60);
const planA: CutPlan = planOf(a.problem);
const planB: CutPlan = planOf(b.problem);

function answered(...plans: CommandOutput<'cutting.solve'>['plans']): Reply<CommandOutput<'cutting.solve'>> {
  return { ok: true, value: { plans } };
}
const proven = (plan: CutPlan) => ({ key: '', plan, ended: 'proven' as const });

describe('a search for the boards of a job', () => {
  test('begins at a pause, and what comes back is kept under the key of its question', async () => {
    const { search, store, solves, pause, last } = setUp();
    search.want([a, b]);
    expect([solves.length, search.read()]).toEqual([0, null]);
    pause();
    expect(last().input).toMatchObject({ problems: [a.problem, b.problem], again: false });
    expect(search.read()?.keys).toEqual(['a', 'b']);
    await last().answer(answered(proven(planA), proven(planB)));
    expect(store.read().solved).toEqual(
      new Map([
        ['a', planA],
        ['b', planB],
      ]),
    );
    expect(search.read()).toBeNull();
  });

  test('typing on before the pause asks once, for the last', () => {
    const { search, solves, pause } = setUp();
    search.want([a]);
    search.want([b]);
    search.want([c]);
    pause();
    expect(solves.map(({ input }) => input.problems)).toEqual([[c.problem]]);
  });

  test('a change gives up the search under way, and keeps of it what is proven alone', async () => {
    const { search, store, solves, cancels, pause, last } = setUp();
    search.want([a, b]);
    pause();
    search.want([a, c]);
    expect(cancels).toEqual([{ solveId: 'solve-1', why: 'superseded' }]);
    pause();
    await solves[0]?.answer(answered(proven(planA), { key: '', plan: planB, ended: 'stopped' }));
    expect([...store.read().searched.keys()]).toEqual(['a']);
    expect(last().input.solveId).toBe('solve-2');
  });

  test('a change that leaves the boards alone leaves the search alone', () => {
    const { search, cancels, solves, pause } = setUp();
    search.want([a, b]);
    pause();
    search.want([b, a]);
    search.want([a, b, c]);
    pause();
    expect([cancels, solves.length]).toEqual([[], 1]);
  });

  test('what is wanted besides follows the search under way', async () => {
    const { search, solves, pause, last } = setUp();
    search.want([a]);
    pause();
    search.want([a, b]);
    await last().answer(answered(proven(planA)));
    pause();
    expect(solves.map(({ input }) => input.problems)).toEqual([[a.problem], [b.problem]]);
  });

  test('what was searched is not asked again', async () => {
    const { search, solves, pause, last } = setUp();
    search.want([a]);
    pause();
    await last().answer(answered({ key: '', plan: planA, ended: 'limit' }));
    search.want([]);
    search.want([a]);
    pause();
    expect(solves).toHaveLength(1);
  });

  test('a person may take what is there, and its plan stands', async () => {
    const { search, store, cancels, pause, last } = setUp();
    search.want([a]);
    pause();
    search.enough();
    expect(cancels).toEqual([{ solveId: 'solve-1', why: 'enough' }]);
    await last().answer(answered({ key: '', plan: planA, ended: 'stopped' }));
    expect(store.read().searched.get('a')).toEqual({ plan: planA, ended: 'stopped' });
  });

  test('a person may ask once more for longer, and unrelated changes do not end that', async () => {
    const { search, cancels, pause, last } = setUp();
    search.want([a]);
    pause();
    await last().answer(answered({ key: '', plan: planA, ended: 'limit' }));
    const first = last().input.limitMs;
    search.again([a]);
    expect(last().input.again).toBe(true);
    expect(last().input.limitMs).toBeGreaterThan(first);
    search.want([a]);
    expect(cancels).toEqual([]);
  });

  test('a host that does not answer is asked again later; one that cannot search is not', async () => {
    const { search, store, solves, pause, last } = setUp();
    search.want([a]);
    pause();
    await last().lose();
    expect(search.read()).toBeNull();
    pause();
    expect(solves).toHaveLength(2);
    await last().answer({ ok: false, problem: { code: 'internal' } });
    pause();
    expect(solves).toHaveLength(2);
    expect(store.read().solved.size).toBe(0);
  });

  test('shows how far it is, of its own search alone', () => {
    const { search, tell, pause } = setUp();
    const event = { kind: 'solving', key: 'a', costUsd: usd(12), boundUsd: usd(11), done: 0, of: 1 } as const;
    search.want([a]);
    pause();
    tell({ ...event, solveId: 'of another window' });
    expect(search.read()?.reached.size).toBe(0);
    tell({ ...event, solveId: 'solve-1' });
    expect(search.read()?.reached.get('a')).toEqual({ costUsd: '12.00', boundUsd: '11.00' });
  });
});

test('the oldest plans are let go, and one that is found again is young', () => {
  const store = createPlanStore(2);
  const found = { plan: planA, ended: 'proven' } as const;
  store.put([['one', found]]);
  store.put([['two', found]]);
  store.put([['one', found]]);
  store.put([['three', found]]);
  expect([...store.read().solved.keys()]).toEqual(['one', 'three']);
});
