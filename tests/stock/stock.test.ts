import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jobOffcuts, offcutValue, piecesCutUp } from '../../core/stock/job-offcuts.ts';
import { withBoardsOfOthers, withoutStockPieces } from '../../core/stock/leave-stock.ts';
import { pieceOfBoard, pieceState } from '../../core/stock/stock-piece.ts';
import { sampleText, soundJob, soundResult } from '../job/example-job.ts';
import { designWith, memoryShop } from './memory-shop.ts';

type Shop = ReturnType<typeof memoryShop>;

const offcut = { section: '2x6', grade: 'No.2', lengthIn: 40, valueUsd: '1', note: '' };

/** The handlers answer at once, though their type allows a promise. */
async function jobIn(shop: Shop, name: string): Promise<string> {
  const made = await shop.jobs['jobs.create']({ name });
  if (!made.ok) throw new Error('a job is made');
  return made.value.id;
}

async function save(shop: Shop, id: string, sequences: readonly number[]): Promise<boolean> {
  const job = await shop.jobs['jobs.get']({ id });
  if (!job.ok) throw new Error('the job is there');
  const saved = await shop.jobs['jobs.save']({
    id,
    baseRevision: job.value.revision,
    design: designWith(sequences),
  });
  return saved.ok;
}

async function states(shop: Shop): Promise<readonly string[]> {
  const list = await shop.stock['stock.list']({ withGone: true });
  if (!list.ok) throw new Error('the list is read');
  return list.value.map((piece) => `${piece.sequence} ${pieceState(piece)} ${piece.forJob?.name ?? '-'}`);
}

async function shopWithTwoJobs(count: number): Promise<{ shop: Shop; one: string; other: string }> {
  const shop = memoryShop();
  const one = await jobIn(shop, 'one');
  const other = await jobIn(shop, 'other');
  await shop.stock['stock.add']({ ...offcut, count });
  return { shop, one, other };
}

describe('a piece of the stock', () => {
  test('that one job has set aside is not to be had by another, whose save says so at the entry', async () => {
    const { shop, one, other } = await shopWithTwoJobs(2);
    expect(await save(shop, one, [1])).toBe(true);
    const refused = await shop.jobs['jobs.save']({ id: other, baseRevision: 0, design: designWith([2, 1]) });
    expect(refused).toMatchObject({
      ok: false,
      problem: { fault: { what: 'piece-not-here', piece: '1' }, field: 'design.cutting.onHand.1.lengthIn' },
    });
    // Nothing of the refused save took place: piece 2 is on the rack still.
    expect(await states(shop)).toEqual(['1 set-aside one', '2 available -']);
  });

  test('comes back to the rack when the job drops it, and when the job is put away', async () => {
    const { shop, one, other } = await shopWithTwoJobs(2);
    await save(shop, one, [1, 2]);
    await save(shop, one, [2]);
    expect(await states(shop)).toEqual(['1 available -', '2 set-aside one']);
    await shop.jobs['jobs.archive']({ id: one, archived: true });
    expect(await states(shop)).toEqual(['1 available -', '2 available -']);
    await save(shop, other, [1]);
    await shop.jobs['jobs.archive']({ id: one, archived: false });
    expect(await states(shop)).toEqual(['1 set-aside other', '2 set-aside one']);
  });

  test('stays with its job when the job is copied', async () => {
    const { shop, one } = await shopWithTwoJobs(1);
    await save(shop, one, [1]);
    const copy = await shop.jobs['jobs.copy']({ id: one, name: 'copy' });
    const copied = copy.ok ? await shop.jobs['jobs.get']({ id: copy.value.id }) : undefined;
    expect(copied?.ok === true ? copied.value.design.cutting.onHand : undefined).toEqual([]);
    expect(await states(shop)).toEqual(['1 set-aside one']);
  });

  test('goes out once when the job is cut, and its offcuts come in once', async () => {
    const { shop, one } = await shopWithTwoJobs(2);
    await save(shop, one, [1, 2]);
    const finish = { jobId: one, used: [1], offcuts: [offcut] };
    expect(await shop.stock['stock.finishJob'](finish)).toMatchObject({ ok: true });
    expect(await shop.stock['stock.finishJob'](finish)).toMatchObject({
      ok: false,
      problem: { fault: { what: 'offcuts-in-already' } },
    });
    expect(await states(shop)).toEqual(['1 used one', '2 set-aside one', '3 available -']);
    await shop.stock['stock.takeBackJob']({ jobId: one });
    expect(await states(shop)).toEqual(['1 set-aside one', '2 set-aside one']);
  });

  test('left over from a job comes in once, even where the job used none of the shop’s', async () => {
    const { shop, one } = await shopWithTwoJobs(1);
    const finish = { jobId: one, used: [], offcuts: [offcut] };
    expect(await shop.stock['stock.finishJob'](finish)).toMatchObject({ ok: true });
    expect(await shop.stock['stock.finishJob'](finish)).toMatchObject({ ok: false });
    expect(await states(shop)).toEqual(['1 available -', '2 available -']);
  });

  test('that is set aside or gone keeps its job’s offcuts from being taken back', async () => {
    const { shop, one, other } = await shopWithTwoJobs(1);
    await shop.stock['stock.finishJob']({ jobId: one, used: [], offcuts: [offcut] });
    await save(shop, other, [2]);
    expect(await shop.stock['stock.takeBackJob']({ jobId: one })).toMatchObject({
      ok: false,
      problem: { fault: { what: 'offcuts-moved' } },
    });
  });
});

const operation = fc.oneof(
  fc.record({ do: fc.constant('add' as const), count: fc.integer({ min: 1, max: 3 }) }),
  fc.record({
    do: fc.constant('save' as const),
    job: fc.nat(2),
    pieces: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { maxLength: 4 }),
  }),
  fc.record({ do: fc.constant('archive' as const), job: fc.nat(2), away: fc.boolean() }),
  fc.record({ do: fc.constant('finish' as const), job: fc.nat(2), cut: fc.boolean() }),
  fc.record({ do: fc.constant('take-back' as const), job: fc.nat(2) }),
  fc.record({ do: fc.constant('throw' as const), at: fc.nat(9) }),
  fc.record({ do: fc.constant('bring' as const), at: fc.nat(9) }),
);
type Operation = typeof operation extends fc.Arbitrary<infer T> ? T : never;

async function listed(shop: Shop) {
  const list = await shop.stock['stock.list']({ withGone: true });
  if (!list.ok) throw new Error('the list is read');
  return list.value;
}

async function act(shop: Shop, jobs: readonly string[], step: Operation): Promise<number> {
  const pieces = await listed(shop);
  switch (step.do) {
    case 'add': {
      const added = await shop.stock['stock.add']({ ...offcut, count: step.count });
      return added.ok ? step.count : 0;
    }
    case 'save':
      await save(shop, jobs[step.job] ?? '', step.pieces);
      return 0;
    case 'archive':
      await shop.jobs['jobs.archive']({ id: jobs[step.job] ?? '', archived: step.away });
      return 0;
    case 'finish': {
      const jobId = jobs[step.job] ?? '';
      const aside = pieces.filter(({ forJob, goneOn }) => forJob?.id === jobId && goneOn === null);
      const used = step.cut ? aside.map(({ sequence }) => sequence) : [];
      const done = await shop.stock['stock.finishJob']({ jobId, used, offcuts: [offcut, offcut] });
      return done.ok ? 2 : 0;
    }
    case 'take-back': {
      const jobId = jobs[step.job] ?? '';
      const left = pieces.filter(({ fromJob }) => fromJob?.id === jobId).length;
      const done = await shop.stock['stock.takeBackJob']({ jobId });
      return done.ok ? -left : 0;
    }
    case 'throw':
      await shop.stock['stock.throwOut']({ id: pieces[step.at]?.id ?? 'none' });
      return 0;
    case 'bring':
      await shop.stock['stock.bringBack']({ id: pieces[step.at]?.id ?? 'none' });
      return 0;
    default:
      return 0;
  }
}

test('over any days of work, pieces that came in are on the rack, set aside for one job, used up or thrown out', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(operation, { maxLength: 30 }), async (steps) => {
      const shop = memoryShop();
      const jobs = [await jobIn(shop, 'a'), await jobIn(shop, 'b'), await jobIn(shop, 'c')];
      let cameIn = 0;
      for (const step of steps) {
        cameIn += await act(shop, jobs, step);
        const pieces = await listed(shop);
        const count = (state: string) => pieces.filter((piece) => pieceState(piece) === state).length;
        expect(count('available') + count('set-aside') + count('used') + count('thrown-out')).toBe(cameIn);
        const named: number[] = [];
        for (const id of jobs) {
          const job = await shop.jobs['jobs.get']({ id });
          if (!job.ok || job.value.archived) continue;
          const mine = job.value.design.cutting.onHand.flatMap((board) => pieceOfBoard(board.id) ?? []);
          const held = mine.filter((sequence) =>
            pieces.some((piece) => piece.sequence === sequence && piece.forJob?.id === id),
          );
          named.push(...held);
          // What is set aside for a job that is not put away is named by it: nothing is held for nobody.
          const aside = pieces.filter(({ forJob, goneOn }) => forJob?.id === id && goneOn === null);
          expect(
            aside.map(({ sequence }) => sequence).filter((sequence) => !mine.includes(sequence)),
          ).toEqual([]);
        }
        expect(new Set(named).size).toBe(named.length);
      }
    }),
    { numRuns: 60 },
  );
});

describe('what a job leaves over', () => {
  test('is worth so much a foot, to the cent half up', () => {
    // 27 in. at $0.50 a foot is 1.125.
    expect(offcutValue(27 * 16, '0.50')).toBe('1.13');
  });

  test('is every offcut of its plans from the shop’s least length on, and a board on hand that is cut is one piece used', () => {
    const job = soundJob(sampleText());
    job.design.cutting.onHand.push({
      id: 'stock-7',
      section: '2x6',
      grade: '',
      lengthIn: 90,
      count: 1,
      valueUsd: '0',
    });
    const { cutPlans } = soundResult(job);
    const all = cutPlans.flatMap(({ boards }) => boards.map(({ offcutSixteenths }) => offcutSixteenths));
    const kept = jobOffcuts(cutPlans, 24);
    expect(kept.length).toBe(all.filter((length) => length >= 24 * 16).length);
    expect(kept.length).toBeGreaterThan(0);
    expect(piecesCutUp(cutPlans)).toEqual([7]);
  });

  test('is left behind by a copy, and becomes a board of its own in a file that comes in', () => {
    const { cutting } = designWith([3]);
    const pinned = {
      ...cutting,
      pins: [
        { itemId: 'on-hand-stock-3', marks: ['A1'] },
        { itemId: '2x6-8', marks: ['A2'] },
      ],
    };
    expect(withoutStockPieces(pinned)).toMatchObject({ onHand: [], pins: [{ itemId: '2x6-8' }] });
    const others = withBoardsOfOthers(pinned);
    expect(others.onHand.map(({ id }) => pieceOfBoard(id))).toEqual([undefined]);
    expect(others.pins[0]?.itemId).toBe(`on-hand-${others.onHand[0]?.id}`);
  });
});
