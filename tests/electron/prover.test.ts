import { describe, expect, test, vi } from 'vitest';
import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import { startCuttingPort } from '../../electron/workers/cutting-port.ts';
import { createProver, type LeaveReason, type Proven } from '../../electron/workers/prover.ts';
import { makeProblem } from '../cutting/make-problem.ts';
import { type CuttingSaid, doubledWorkers, fourPieces, planWith, progressOf } from './cutting-double.ts';

const times = { raceAfterMs: 5, graceMs: 5, stopMs: 5 };
/** Longer than any test runs: only what the test does ends the search. [ms] */
const longMs = 100_000;

const dear = planWith(fourPieces, [['P1', 'P2'], ['P3'], ['P4']], 1100);
const cheap = planWith(
  fourPieces,
  [
    ['P1', 'P2'],
    ['P3', 'P4'],
  ],
  1100,
);
const proven = planWith(
  fourPieces,
  [
    ['P1', 'P2'],
    ['P3', 'P4'],
  ],
  1200,
  'exact-bound',
);

function setUp(more: Partial<typeof times> = {}, atOnce: readonly CuttingSaid[] = []) {
  const bugs: unknown[] = [];
  const { workers, startPort } = doubledWorkers(atOnce);
  const prover = createProver({
    startPort,
    reportBug: (bug) => bugs.push(bug),
    times: { ...times, raceAfterMs: longMs, ...more },
  });
  return { prover, workers, bugs, first: () => at(workers, 0), second: () => at(workers, 1) };
}

function at<T>(list: readonly T[], index: number): T {
  const found = list[index];
  if (found === undefined) throw new Error(`there is no worker ${index + 1} yet`);
  return found;
}

/** Waits until the search has begun. */
async function begun(workers: readonly { readonly asked: readonly unknown[] }[], count = 1): Promise<void> {
  await vi.waitFor(() => expect(workers.filter(({ asked }) => asked.length > 0)).toHaveLength(count));
}

async function found(search: ReturnType<ReturnType<typeof setUp>['prover']['prove']>): Promise<Proven> {
  const result = await search;
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
}

function leaver(): { readonly signal: AbortSignal; readonly leave: (why: LeaveReason) => void } {
  const controller = new AbortController();
  return { signal: controller.signal, leave: (why) => controller.abort(why) };
}

const short = (plan: CutPlan | null) =>
  plan === null ? null : { costUsd: plan.costUsd, boundUsd: plan.boundUsd, proof: plan.proof };

describe('a search for the boards that cost least', () => {
  test('a proof is answered as the worker found it', async () => {
    const { prover, workers, first } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    expect(first().isHeld).toBe(true);
    first().say({ kind: 'plan', plan: proven });
    expect(await found(search)).toEqual({ plan: proven, ended: 'proven' });
    expect(first().isHeld).toBe(false);
  });

  test('a worker that overruns its time and never answers is ended, and its best plan so far stands', async () => {
    const { prover, first } = setUp({}, [progressOf(dear), progressOf(cheap)]);
    const answer = await found(prover.prove(fourPieces, { limitMs: 20 }));
    expect(answer.ended).toBe('limit');
    expect(short(answer.plan)).toEqual({ costUsd: '12.00', boundUsd: '11.00', proof: 'none' });
    expect(answer.plan?.gap).toBeCloseTo(1 / 11);
    expect(first().isTold().stop).toBe(true);
    await vi.waitFor(() => expect(first().isEnded).toBe(true));
  });

  test('a worker that says nothing at all leaves the quick plan', async () => {
    const { prover } = setUp();
    const answer = await found(prover.prove(fourPieces, { limitMs: 10 }));
    expect(answer.plan?.costUsd).toBe('12.00');
  });

  test('a plan that does not hold is refused, whatever the worker says of its proof', async () => {
    const { prover, workers, first, bugs } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    // Three pieces of 44 in. are not in 8 ft.
    first().say({
      kind: 'plan',
      plan: planWith(fourPieces, [['P1', 'P2', 'P3'], ['P4']], 1200, 'exact-bound'),
    });
    const answer = await found(search);
    expect(answer.plan?.boards.map(({ items }) => items.length)).toEqual([2, 2]);
    expect(bugs).toHaveLength(1);
    expect(String(bugs[0])).toMatch(/over-cut/);
  });

  test('a plan that forgets a piece is refused, and the better of two that hold stands', async () => {
    const { prover, workers, first, bugs } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    first().say(progressOf(dear));
    first().say({ kind: 'plan', plan: planWith(fourPieces, [['P1', 'P2'], ['P3']], 1200, 'exact-bound') });
    const answer = await found(search);
    expect(short(answer.plan)?.costUsd).toBe('18.00');
    expect(String(bugs[0])).toMatch(/P4 not cut/);
  });

  test('a worker that dies is told as a bug, and the next search has another one', async () => {
    const { prover, workers, first, second, bugs } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    first().say(progressOf(cheap));
    first().die();
    expect(short((await found(search)).plan)?.costUsd).toBe('12.00');
    expect(bugs).toHaveLength(1);
    const next = prover.prove(makeProblem([10], [[8, 600]]), { limitMs: 10 });
    await begun(workers, 2);
    expect(second().asked).toHaveLength(1);
    await next;
  });

  test('what stands in a plan’s way is answered as it is', async () => {
    const { prover, workers, first } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    first().say({ kind: 'problem', problem: { code: 'no-price', item: '2x6 No.2' } });
    expect(await search).toEqual({ ok: false, problem: { code: 'no-price', item: '2x6 No.2' } });
  });
});

describe('a race of two workers', () => {
  test('the second starts once the first takes long, the other way; its proof ends the first', async () => {
    const { prover, workers, first, second } = setUp({ raceAfterMs: 5 });
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers, 2);
    expect([first().asked[0]?.strategy, second().asked[0]?.strategy]).toEqual(['patterns', 'arc-flow']);
    second().say({ kind: 'plan', plan: proven });
    expect((await found(search)).ended).toBe('proven');
    expect(first().isTold().stop).toBe(true);
    await vi.waitFor(() => expect(first().isEnded).toBe(true));
    expect(second().isEnded).toBe(false);
  });

  test('a first that stops when it is told is not ended, and serves the next search', async () => {
    const { prover, workers, first, second } = setUp({ raceAfterMs: 5, stopMs: longMs });
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers, 2);
    second().say({ kind: 'plan', plan: proven });
    await search;
    first().say({ kind: 'plan', plan: cheap });
    const other = prover.prove(makeProblem([10], [[8, 600]]), { limitMs: 10 });
    await vi.waitFor(() => expect(first().asked).toHaveLength(2));
    await other;
    expect(workers.filter(({ asked }) => asked.length > 0)).toHaveLength(2);
  });

  test('the plan of one and the bound of the other make a proof together', async () => {
    const { prover, workers, first, second } = setUp({ raceAfterMs: 5 });
    const search = prover.prove(fourPieces, { limitMs: 400 });
    await begun(workers, 2);
    first().say(progressOf(cheap));
    second().say({ kind: 'progress', progress: { phase: 'arc-flow', costCents: 1800, boundCents: 1200 } });
    expect(first().isTold()).toMatchObject({ costCents: 1200, boundCents: 1200 });
    const answer = await found(search);
    expect(answer.ended).toBe('proven');
    expect(short(answer.plan)).toEqual({ costUsd: '12.00', boundUsd: '12.00', proof: 'solver-tree' });
  });

  test('one that dies leaves the other running', async () => {
    const { prover, workers, first, second } = setUp({ raceAfterMs: 5 });
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers, 2);
    first().die();
    second().say({ kind: 'plan', plan: proven });
    expect((await found(search)).plan).toEqual(proven);
  });
});

describe('leaving a search', () => {
  test('a cancelled search answers the best so far though the worker never does, and ends it', async () => {
    const { prover, workers, first } = setUp();
    const { signal, leave } = leaver();
    const search = prover.prove(fourPieces, { limitMs: longMs, signal });
    await begun(workers);
    first().say(progressOf(cheap));
    leave('enough');
    const answer = await found(search);
    expect([answer.ended, short(answer.plan)?.costUsd]).toEqual(['stopped', '12.00']);
    await vi.waitFor(() => expect(first().isEnded).toBe(true));
  });

  test('what a person took for good stands until he asks again', async () => {
    const { prover, workers, first } = setUp({ stopMs: longMs });
    const { signal, leave } = leaver();
    const search = prover.prove(fourPieces, { limitMs: longMs, signal });
    await begun(workers);
    first().say(progressOf(dear));
    leave('enough');
    await search;
    first().say({ kind: 'plan', plan: dear });
    expect(short((await found(prover.prove(fourPieces, { limitMs: longMs }))).plan)?.costUsd).toBe('18.00');
    expect(first().asked).toHaveLength(1);
    const again = prover.prove(fourPieces, { limitMs: longMs, again: true });
    await vi.waitFor(() => expect(first().asked).toHaveLength(2));
    first().say({ kind: 'plan', plan: proven });
    expect((await found(again)).ended).toBe('proven');
  });

  test('a search that something else was asked after is searched anew when its problem comes back', async () => {
    const { prover, workers, first } = setUp({ stopMs: longMs });
    const { signal, leave } = leaver();
    const search = prover.prove(fourPieces, { limitMs: longMs, signal });
    await begun(workers);
    first().say(progressOf(dear));
    leave('superseded');
    await search;
    first().say({ kind: 'plan', plan: dear });
    const back = prover.prove(fourPieces, { limitMs: longMs });
    await vi.waitFor(() => expect(first().asked).toHaveLength(2));
    first().say({ kind: 'plan', plan: proven });
    expect((await found(back)).plan).toEqual(proven);
  });

  test('a problem that waits its turn is given up without a worker hearing of it', async () => {
    const { prover, workers, first } = setUp();
    const { signal, leave } = leaver();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    const waiting = prover.prove(makeProblem([10], [[8, 600]]), { limitMs: longMs, signal });
    await begun(workers);
    leave('superseded');
    expect(await found(waiting)).toEqual({ plan: null, ended: 'stopped' });
    first().say({ kind: 'plan', plan: proven });
    await search;
    expect(first().asked).toHaveLength(1);
  });

  test('one of two who wait for the same plan may leave; the other gets it', async () => {
    const { prover, workers, first } = setUp();
    const { signal, leave } = leaver();
    const paper = prover.prove(fourPieces, { limitMs: longMs });
    const screen = prover.prove(fourPieces, { limitMs: longMs, signal });
    await begun(workers);
    first().say(progressOf(cheap));
    leave('enough');
    expect(short((await found(screen)).plan)?.costUsd).toBe('12.00');
    first().say({ kind: 'plan', plan: proven });
    expect((await found(paper)).plan).toEqual(proven);
    expect(first().asked).toHaveLength(1);
  });
});

describe('what was found', () => {
  test('is kept: the same problem under other marks is not searched again', async () => {
    const { prover, workers, first } = setUp();
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await begun(workers);
    first().say({ kind: 'plan', plan: proven });
    await search;
    const renamed = {
      ...fourPieces,
      items: fourPieces.items.map((item) => ({ ...item, mark: `B-${item.mark}` })),
    };
    expect((await found(prover.prove(renamed, { limitMs: longMs }))).plan).toEqual(proven);
    expect(first().asked).toHaveLength(1);
  });

  test('without proof is searched again only where more time is given', async () => {
    const { prover, workers } = setUp({}, [progressOf(cheap)]);
    await prover.prove(fourPieces, { limitMs: 10 });
    await prover.prove(fourPieces, { limitMs: 10 });
    const asked = () => workers.reduce((sum, worker) => sum + worker.asked.length, 0);
    expect(asked()).toBe(1);
    await prover.prove(fourPieces, { limitMs: 20 });
    expect(asked()).toBe(2);
  });
});

test('closing answers whoever waits and ends the workers', async () => {
  const { prover, workers, first } = setUp();
  const search = prover.prove(fourPieces, { limitMs: longMs });
  const waiting = prover.prove(makeProblem([10], [[8, 600]]), { limitMs: longMs });
  await begun(workers);
  first().say(progressOf(dear));
  await prover.close();
  expect(first().isEnded).toBe(true);
  expect((await found(search)).ended).toBe('stopped');
  expect(await found(waiting)).toEqual({ plan: null, ended: 'stopped' });
  expect(await found(prover.prove(fourPieces, { limitMs: longMs }))).toEqual({
    plan: null,
    ended: 'stopped',
  });
});

test('the real worker proves a plan, answers a second problem, and is ended', async () => {
  const bugs: unknown[] = [];
  const prover = createProver({ startPort: startCuttingPort, reportBug: (bug) => bugs.push(bug) });
  const [one, two] = [
    await found(prover.prove(fourPieces, { limitMs: 20_000 })),
    await found(prover.prove(makeProblem([50, 50, 40], [[8, 600]]), { limitMs: 20_000 })),
  ];
  await prover.close();
  expect(bugs).toEqual([]);
  // By hand: two pieces and a kerf, 88-1/8 in., go into 8 ft; and 50 with 40 and a kerf, 90-1/8 in.
  expect([one.plan?.costUsd, two.plan?.costUsd]).toEqual(['12.00', '12.00']);
  expect([one.ended, two.ended]).toEqual(['proven', 'proven']);
});

describe('a short search', () => {
  test('waits for no long one, keeps what it finds, and gives nothing where there is no plan', async () => {
    const { prover, workers, bugs } = setUp();
    const long = prover.prove(makeProblem([60, 61], [[8, 600]]), { limitMs: longMs });
    const short = prover.briefly(fourPieces, { limitMs: 1 });
    const brief = await vi.waitFor(() => {
      const asked = workers.find((worker) => worker.asked[0]?.problem.items.length === 4);
      if (asked === undefined) throw new Error('not asked yet');
      return asked;
    });
    brief.say({ kind: 'plan', plan: dear });
    expect(await short).toEqual(dear);
    // Asked again for no longer, it is answered out of memory.
    expect(await prover.briefly(fourPieces, { limitMs: 1 })).toEqual(dear);
    const none = prover.briefly(makeProblem([200], [[8, 600]]), { limitMs: 1 });
    await vi.waitFor(() => expect(brief.asked).toHaveLength(2));
    brief.say({ kind: 'problem', problem: { code: 'internal' } });
    expect(await none).toBeNull();
    await prover.close();
    await long;
    expect(bugs).toEqual([]);
  });

  test('a plan that was found in another way is not made dearer by a search', async () => {
    const { prover, first } = setUp();
    prover.remember(fourPieces, cheap);
    const search = prover.prove(fourPieces, { limitMs: longMs });
    await vi.waitFor(() => expect(first().asked).toHaveLength(1));
    first().say({ kind: 'plan', plan: { ...dear, proof: 'none' } });
    const answer = await found(search);
    expect(answer.plan?.costUsd).toBe('12.00');
    expect(answer.plan?.boards).toEqual(cheap.boards);
    await prover.close();
  });

  test('a plan whose boards do not hold its pieces is reported and not taken', async () => {
    const { prover, workers, bugs } = setUp();
    const short = prover.briefly(fourPieces, { limitMs: 1 });
    await vi.waitFor(() => expect(workers).toHaveLength(1));
    at(workers, 0).say({ kind: 'plan', plan: { ...cheap, boards: cheap.boards.slice(1) } });
    expect(await short).toBeNull();
    expect(String(bugs[0])).toMatch(/cut plan: .* not cut/);
    await prover.close();
  });
});
