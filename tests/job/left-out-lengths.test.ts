import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { changedJob, entryOf, type RawJob } from './changed-job.ts';
import { resultsJson } from '../../core/job/results-json.ts';
import { soundResult } from './example-job.ts';

/** The estimate with the 8 ft 2x6 changed; the 12 ft one stays. */
const withEightFoot = (change: Record<string, unknown>, more: (raw: RawJob) => void = () => undefined) => {
  const { estimate, cutPlans } = soundResult(
    changedJob((raw) => {
      Object.assign(entryOf(raw.priceList, '2x6-8'), change);
      more(raw);
    }),
  );
  return {
    lacks: estimate.lacks.map(problemSentence),
    notes: estimate.notes.map(problemSentence),
    bought: new Set(cutPlans.flatMap(({ boards }) => boards.map(({ itemId }) => itemId))),
  };
};

describe('a length that cannot be priced', () => {
  test.each([
    [{ prices: [] }, 'Left out of the cut plan: No price for 2x6 No.2, 8 ft. Add it to the price list.'],
    [
      { prices: [{ priceUsd: '6', observedOn: '2027-01-01' }] },
      'Left out of the cut plan: 2x6 No.2, 8 ft has no price on or before 2026-04-30; its first is of 2027-01-01. Add an earlier price or a later estimate date.',
    ],
    [
      { unit: 'lb' },
      'Left out of the cut plan: 2x6 No.2, 8 ft is priced by lb, which needs changing to each, LF, BF or MBF. Fill that in on the price list.',
    ],
    [
      { lengthFt: null },
      'Left out of the cut plan: 2x6 No.2, 8 ft is priced by each, which needs its length in feet. Fill that in on the price list.',
    ],
  ])('is told, and the sum is whole without it: %j', (change, sentence) => {
    const { lacks, notes, bought } = withEightFoot(change);
    expect(lacks).toEqual([]);
    expect(notes).toEqual([sentence]);
    expect(bought).not.toContain('2x6-8');
    expect(bought).toContain('2x6-12');
  });

  test('is told in the results too', () => {
    const job = changedJob((raw) => Object.assign(entryOf(raw.priceList, '2x6-8'), { prices: [] }));
    expect(resultsJson(job, soundResult(job)).estimate.notes).toEqual([
      {
        code: 'length-left-out',
        sentence: 'Left out of the cut plan: No price for 2x6 No.2, 8 ft. Add it to the price list.',
        field: null,
      },
    ]);
  });

  test('is lacking where no other length is there', () => {
    const { lacks, notes } = withEightFoot({ prices: [] }, (raw) => {
      raw.priceList = raw.priceList.filter(({ id }) => id !== '2x6-12');
    });
    expect(lacks).toEqual(['No price for 2x6 No.2, 8 ft. Add it to the price list.']);
    expect(notes).toEqual([]);
  });

  test('is lacking, and no note of a whole sum, where no length of the stock has a price', () => {
    const { lacks, notes } = withEightFoot({ prices: [] }, (raw) =>
      Object.assign(entryOf(raw.priceList, '2x6-12'), { prices: [] }),
    );
    expect(lacks).toEqual(['No price for 2x6 No.2, 8 ft. Add it to the price list.']);
    expect(notes).toEqual([]);
  });

  test('is lacking where it comes to $0.00 a piece, since the plan would be another with its price', () => {
    const { lacks, bought } = withEightFoot({ prices: [{ priceUsd: '0.001', observedOn: '2026-04-13' }] });
    expect(lacks).toEqual([
      '2x6 No.2, 8 ft has a price of $0.00, which counts as no price. Enter what it costs on the price list.',
    ]);
    expect(bought).not.toContain('2x6-8');
  });

  test('is not told of a plank that is bought by the foot', () => {
    const { notes } = withEightFoot({}, (raw) =>
      raw.priceList.push({
        id: 'p',
        category: 'plank',
        description: '1x8',
        unit: 'LF',
        section: '1x8',
        grade: 'primed',
      }),
    );
    expect(notes).toEqual([]);
  });
});

test('a section is the same however it is spaced', () => {
  for (const section of ['2 x 6', ' 2X6', '2 × 6']) {
    const { notes, lacks, bought } = withEightFoot({ section });
    expect([notes, lacks]).toEqual([[], []]);
    expect(bought).toContain('2x6-8');
  }
});

test('lumber whose section cannot be read is told by its name', () => {
  for (const section of ['2-6', '', 'two by six']) {
    const { notes, lacks } = withEightFoot({ section });
    expect(lacks).toEqual([]);
    expect(notes).toEqual([
      `2x6 No.2, 8 ft: ${section === '' ? 'it has no section' : `"${section}" is no section`}, so no piece is cut from it. Write one like 2x6 on the price list.`,
    ]);
  }
});

test('a price list of lengths that the shop does not buy says where to allow one', () => {
  const { lacks } = withEightFoot({}, (raw) =>
    Object.assign(raw.settings, { cutting: { excludedLengthsFt: [8, 12] } }),
  );
  expect(lacks).toContain(
    '2x6 No.2: every length of it on the price list is among the lengths that the shop does not buy. Allow one in Settings, or add another to the price list.',
  );
});

const sentences = (change: (raw: RawJob) => void) =>
  soundResult(changedJob(change)).unplanned.map(({ problem }) => problemSentence(problem));

describe('a piece longer than any board', () => {
  test('of the fascia asks for a tail in the gap, by station', () => {
    const told = sentences((raw) => {
      Object.assign(entryOf(raw.survey.eaves, 'porch'), {
        lengthIn: "20'",
        rafters: [
          { id: 'p1', readingIn: 1 },
          { id: 'p2', readingIn: "10'" },
          { id: 'p3', readingIn: '19\' 11"' },
        ],
      });
      Object.assign(entryOf(raw.design.eaves, 'porch'), {
        blocks: { wanted: false, stock: { section: '2x6' } },
        layout: { allowBlockHung: false },
      });
    });
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(
      /^A-F02 .* on the price list gives 7' 11"\. Set a tail in the gap at \d+' [\d/-]+", or add a longer length to the price list\.$/,
    );
  });

  test('of the extenders asks for less overhang, and of the blocks for an open bay, each by its own name', () => {
    const told = sentences((raw) => {
      raw.priceList = raw.priceList.filter(({ id }) => id !== '2x6-12');
      Object.assign(entryOf(raw.survey.eaves, 'porch'), {
        lengthIn: "20'",
        rafters: [
          { id: 'p1', readingIn: 1 },
          { id: 'p2', readingIn: '19\' 11"' },
        ],
      });
      Object.assign(entryOf(raw.design.eaves, 'porch'), {
        overhangIn: 40,
        layout: { allowBlockHung: false },
      });
    });
    expect(told).toHaveLength(3);
    expect(told.join('\n')).toMatch(/A-E01 \(the longest of 2\) .* or shorten the overhang or backspan\./);
    expect(told.join('\n')).toMatch(/A-B01 .*\. Leave its bay open in Design, or add a longer length/);
  });
});
