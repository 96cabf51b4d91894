import { describe, expect, test } from 'vitest';
import { explain } from '../../core/trace/explain.ts';
import { changedJob, entryOf, type RawJob } from './changed-job.ts';
import { soundResult } from './example-job.ts';

const blocksOf = (stock: Record<string, string>) => (raw: RawJob) =>
  Object.assign(entryOf(raw.design.eaves, 'porch'), { blocks: { stock } });
const groupsOf = (change: (raw: RawJob) => void) =>
  soundResult(changedJob(change)).cutPlans.map(({ group }) => group);
const total = (change: (raw: RawJob) => void) => soundResult(changedJob(change)).estimate.totalUsd;

describe('pieces that are cut from the same boards', () => {
  test.each([
    ['in another case', { section: '2x6', grade: 'no.2' }],
    ['with other spaces', { section: '2 X 6', grade: ' No.2 ' }],
    ['without a grade', { section: '2x6' }],
  ])('are planned together where the grade is written %s', (_, stock) => {
    const same = blocksOf({ section: '2x6', grade: 'No.2' });
    expect(groupsOf(blocksOf(stock))).toEqual(['2x6 No.2', '1x8 primed']);
    expect(total(blocksOf(stock))).toBe(total(same));
  });

  test('are named by the grade even where the ungraded piece comes first', () => {
    const groups = groupsOf((raw) =>
      Object.assign(entryOf(raw.design.eaves, 'porch'), { extender: { section: '2x6' } }),
    );
    expect(groups).toEqual(['2x6 No.2', '1x8 primed']);
  });

  test('are planned apart where the price list sells the ungraded as its own', () => {
    const groups = groupsOf((raw) => {
      blocksOf({ section: '2x6' })(raw);
      raw.priceList.push({
        ...entryOf(raw.priceList, '2x6-8'),
        id: 'utility-8',
        description: '2x6, 8 ft',
        grade: '',
      });
    });
    expect(groups).toEqual(['2x6 No.2', '2x6', '1x8 primed']);
  });

  test('walk back from each board to its pieces, and every piece is on one board', () => {
    const job = changedJob(blocksOf({ section: '2x6' }));
    const result = soundResult(job);
    const boards = result.estimate.lines.flatMap(({ madeOf }) =>
      madeOf.flatMap(({ ref }) => (ref?.startsWith('board/') === true ? [ref] : [])),
    );
    const marks = boards.flatMap((ref) =>
      (explain(ref, job, result)?.parts ?? []).flatMap((part) =>
        part.ref?.startsWith('piece/') === true ? [part.label] : [],
      ),
    );
    expect(marks.toSorted()).toEqual(result.takeoff.pieces.map(({ mark }) => mark).toSorted());
    for (const { mark } of result.takeoff.pieces) expect(explain(`piece/${mark}`, job, result)).toBeDefined();
  });

  test('of two eaves that write one grade in two ways stand on one line of the takeoff', () => {
    const { takeoff } = soundResult(
      changedJob((raw) => {
        const eave = entryOf(raw.survey.eaves, 'porch');
        const design = entryOf(raw.design.eaves, 'porch');
        raw.survey.eaves.push({ ...eave, id: 'back', name: 'Back' });
        raw.design.eaves.push({ ...design, eaveId: 'back', extender: { section: '2x6', grade: 'NO.2' } });
      }),
    );
    const extenders = takeoff.lines.filter(({ id }) => id.startsWith('extenders-'));
    expect(extenders.map(({ id, quantity, where }) => [id, quantity, where])).toEqual([
      ['extenders-2x6-No.2', '8', 'Eave A: 4, Eave B: 4'],
    ]);
  });
});
