import { expect, test } from 'vitest';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { checkPlan } from '../../core/cutting/check-plan.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { jobFileSchema } from '../../core/job/job-file.ts';
import { makeProblem } from '../cutting/make-problem.ts';
import type { Asker } from './contract-asker.ts';
import { fourPieces } from './cutting-double.ts';

const longMs = 20_000;

/** Searching boards: the plan with its proof, what is told meanwhile, cancelling, and what is refused. */
export function checkCutting(asker: Asker): void {
  const { value, problem, transport } = asker;

  test('the boards of a problem come back proven, each piece in one of them', async () => {
    const { plans } = await value('cutting.solve', {
      solveId: 's1',
      problems: [fourPieces],
      limitMs: longMs,
    });
    const [solved] = plans;
    expect(solved).toMatchObject({ ended: 'proven', plan: { costUsd: '12.00', status: 'optimal' } });
    checkPlan(fourPieces, solved?.plan?.boards ?? []);
  });

  test('several problems are answered in their order, and one that has no plan says so', async () => {
    const tooLong = makeProblem([200], [[8, 600]]);
    const other = makeProblem([50, 40, 30], [[8, 600]]);
    const { plans } = await value('cutting.solve', {
      solveId: 's2',
      problems: [other, tooLong, fourPieces],
      limitMs: longMs,
    });
    expect(plans.map(({ plan, ended }) => [plan?.costUsd ?? null, ended])).toEqual([
      ['12.00', 'proven'],
      [null, 'no-plan'],
      ['12.00', 'proven'],
    ]);
  });

  test('while boards are searched, the page hears how far it is', async () => {
    const heard: unknown[] = [];
    const stop = transport().subscribe((event) => heard.push(event));
    let turn = 0;
    await expect
      .poll(async () => {
        turn += 1;
        // A problem that was not asked before, since what is known is answered at once.
        const problems = [makeProblem([30, 31, 32 + turn / 16], [[8, 600 + turn]])];
        await value('cutting.solve', { solveId: `heard-${turn}`, problems, limitMs: longMs });
        return heard.at(-1);
      })
      .toMatchObject({ kind: 'solving', solveId: /^heard-/ });
    stop();
  });

  test('a search that is superseded ends at once, and cancelling what is over does nothing', async () => {
    const problems = Array.from({ length: 90 }, (_, index) => longProblem(index));
    const search = value('cutting.solve', { solveId: 's3', problems, limitMs: longMs });
    await expect
      .poll(() => value('cutting.cancel', { solveId: 's3', why: 'superseded' }), { timeout: 15_000 })
      .toEqual({ wasRunning: true });
    const { plans } = await search;
    expect(plans).toHaveLength(90);
    expect(plans.at(-1)).toMatchObject({ plan: null, ended: 'stopped' });
    expect(await value('cutting.cancel', { solveId: 's3', why: 'enough' })).toEqual({ wasRunning: false });
  });

  test.each<[string, object]>([
    ['no problem', { problems: [] }],
    ['more problems than a job has', { problems: Array.from({ length: 101 }, () => fourPieces) }],
    ['a longer search than a person waits for', { limitMs: 10_000_000 }],
    ['two pieces of one mark', { problems: [{ ...fourPieces, items: twice(fourPieces.items) }] }],
    ['a piece of no length', { problems: [{ ...fourPieces, items: [{ mark: 'A', lengthSixteenths: 0 }] }] }],
    ['half a sixteenth', { problems: [{ ...fourPieces, kerfSixteenths: 0.5 }] }],
    ['a board of a mile', { problems: [withLength({ lengthSixteenths: 1_013_760 })] }],
    ['a price below zero', { problems: [withLength({ priceCents: -1 })] }],
    ['a price that is no number', { problems: [withLength({ priceCents: Number.NaN })] }],
    ['an entry that nobody knows', { problems: [{ ...fourPieces, __proto__x: 1 }] }],
  ])('a search for %s is refused', async (_what, otherwise) => {
    const input = { solveId: 'bad', problems: [fourPieces], limitMs: longMs, ...otherwise };
    expect(await problem('cutting.solve', input)).toMatchObject({
      code: expect.stringMatching(/^(entry-invalid|out-of-range|number-)/) as unknown,
    });
  });

  test('the cost staircase of an eave rises, tells how far it is, and gives today’s boards; too wide a range is refused', async () => {
    const { id } = await value('jobs.openSample', {});
    const { text } = await value('jobs.export', { id });
    const { format: _format, version: _version, ...job } = jobFileSchema.parse(JSON.parse(text));
    const [eave] = job.design.eaves;
    if (eave === undefined) throw new Error('the sample has no eave');
    const { eaveId, overhangIn } = eave;
    const heard: unknown[] = [];
    const stop = transport().subscribe((event) => heard.push(event));
    const ask = { solveId: 'stairs', job, eaveId, fromIn: overhangIn - 0.25, toIn: overhangIn, limitMs: 1 };
    const { staircase, plans } = await value('cutting.staircase', ask);
    stop();
    const steps = staircase?.steps ?? [];
    expect(steps[0]?.fromOverhangIn).toBe(overhangIn - 0.25);
    expect(steps.at(-1)?.toOverhangIn).toBe(overhangIn);
    const dollars = steps.map(({ boardsUsd }) => Number(boardsUsd));
    expect(dollars).toEqual(dollars.toSorted((a, b) => a - b));
    expect(steps.every(({ boardsUsd, boundUsd }) => Number(boundUsd) <= Number(boardsUsd))).toBe(true);
    expect(heard).toContainEqual(
      expect.objectContaining({ kind: 'staircase', solveId: 'stairs', stage: 'reckoning', of: 5 }),
    );
    const solved = new Map(plans.map(({ key, plan }) => [key, plan]));
    const today = computeJob(job, solved);
    if (!today.ok) throw new Error(today.problem.code);
    expect(today.value.cutPlans.reduce((sum, plan) => sum + Number(plan.costUsd), 0)).toBeCloseTo(
      dollars.at(-1) ?? 0,
      6,
    );
    expect(await problem('cutting.staircase', { ...ask, eaveId: 'nobody' })).toMatchObject({
      code: 'not-found',
    });
    for (const toIn of [overhangIn + 30, overhangIn - 1])
      expect(await problem('cutting.staircase', { ...ask, toIn })).toMatchObject({ field: 'toIn' });
  });

  test('a staircase that is superseded comes to nothing', async () => {
    const { id } = await value('jobs.openSample', {});
    const { text } = await value('jobs.export', { id });
    const { format: _format, version: _version, ...job } = jobFileSchema.parse(JSON.parse(text));
    const eaveId = job.design.eaves[0]?.eaveId ?? '';
    const climbing = value('cutting.staircase', {
      solveId: 'long',
      job,
      eaveId,
      fromIn: 10,
      toIn: 30,
      limitMs: longMs,
    });
    await expect
      .poll(() => value('cutting.cancel', { solveId: 'long', why: 'superseded' }), { timeout: 15_000 })
      .toEqual({ wasRunning: true });
    expect(await climbing).toEqual({ staircase: null, plans: [] });
  });

  test('an estimate is frozen with the boards that a search of its problems finds', async () => {
    const { id } = await value('jobs.openSample', {});
    const { text } = await value('jobs.export', { id });
    const job = jobFileSchema.parse(JSON.parse(text));
    const quick = computeJob(job);
    if (!quick.ok) throw new Error(quick.problem.code);
    const { plans } = await value('cutting.solve', {
      solveId: 's4',
      problems: quick.value.cuttingProblems.map((one) => one.problem),
      limitMs: longMs,
    });
    const solved = new Map(plans.flatMap(({ key, plan }) => (plan === null ? [] : [[key, plan] as const])));
    const best = computeJob(job, solved);
    if (!best.ok) throw new Error(best.problem.code);
    await value('estimates.save', { jobId: id });
    const [saved] = await value('estimates.list', { jobId: id });
    expect(saved?.totalUsd).toBe(best.value.estimate.totalUsd);
  });
}

function withLength(otherwise: object): object {
  return { ...fourPieces, lengths: [{ ...fourPieces.lengths[0], ...otherwise }] };
}

function twice<T>(items: readonly T[]): readonly T[] {
  return [...items, ...items];
}

/** A job of many lengths that share no measure. */
function longProblem(turn: number): CuttingProblem {
  const pieces = Array.from(
    { length: 120 },
    (_, index) => 14 + ((index * 37 + turn) % 61) + ((index * 7) % 16) / 16,
  );
  return makeProblem(pieces, [
    [8, 611 + turn],
    [10, 797],
    [12, 983],
    [14, 1201],
    [16, 1397],
    [20, 1809],
  ]);
}
