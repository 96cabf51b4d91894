import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { settingsForFile } from '../../core/job/file-problems.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { changedJob, changedText, entryOf, type RawJob } from './changed-job.ts';
import { soundResult } from './example-job.ts';

/** Field and sentence of each problem of the example with something changed. */
const told = (change: (raw: RawJob) => void) => {
  const read = readJobFile(changedText(change));
  return read.ok ? [] : read.problem.map((problem) => [problem.field, problemSentence(problem)]);
};
const withRates =
  (...tasks: string[]) =>
  (raw: RawJob) =>
    Object.assign(raw.settings, { labour: { rates: tasks.map((task) => ({ task, hoursPerUnit: 1 })) } });

describe('labour rates of a job file', () => {
  test('of a task that nobody knows are refused, and the nearest tasks are named', () => {
    expect(told(withRates('fascia', 'instal-extenders'))).toEqual([
      [
        'settings.labour.rates.1.task',
        'Settings, labour, labour rate 2, task: "instal-extenders" is no task known here. The nearest are install-extenders and cut-extenders. Write one that is known, or take the rate out.',
      ],
    ]);
    expect(told(withRates('Facia'))[0]?.[1]).toContain('The nearest are fascia and');
  });

  test('of one task twice are refused at the second', () => {
    expect(told(withRates('fascia', 'blocks', 'fascia'))).toEqual([
      [
        'settings.labour.rates.2.task',
        'Settings, labour, labour rate 3, task: Labour rate 1 is for fascia already. Keep one of the two.',
      ],
    ]);
  });

  test('that a shop stored before still open', () => {
    const rates = [{ task: 'gone', hoursPerUnit: 1 }];
    expect(shopSettingsSchema.safeParse({ labour: { rates } }).success).toBe(true);
  });
});

const excluding = (excludedLengthsFt: number[]) =>
  told((raw) => Object.assign(raw.settings, { cutting: { excludedLengthsFt } })).map(([field]) => field);

test('what a shop stored and binds nothing stays out of the files that it writes, so that each comes in again', () => {
  const stored = shopSettingsSchema.parse({
    labour: {
      rates: [
        { task: 'fascia', hoursPerUnit: 2 },
        { task: 'gone', hoursPerUnit: 1 },
        { task: 'fascia', hoursPerUnit: 3 },
      ],
    },
    cutting: { excludedLengthsFt: [0, 20] },
  });
  const settings = settingsForFile(stored);
  expect(settings.labour.rates.map(({ task, hoursPerUnit }) => [task, hoursPerUnit])).toEqual([
    ['fascia', 2],
  ]);
  expect(settings.cutting.excludedLengthsFt).toEqual([20]);
  expect(readJobFile(JSON.stringify({ ...changedJob(() => undefined), settings })).ok).toBe(true);
});

describe('lengths that the shop does not buy', () => {
  test('are lengths that a board can have', () => {
    expect(excluding([20, 0, -8, 1e9])).toEqual([
      'settings.cutting.excludedLengthsFt.1',
      'settings.cutting.excludedLengthsFt.2',
      'settings.cutting.excludedLengthsFt.3',
    ]);
    expect(excluding([1, 7.5, 60])).toEqual([]);
  });
});

describe('names and ids of a job file', () => {
  test('are the same with spaces around them', () => {
    const job = changedJob((raw) => {
      raw.job['name'] = '  Porch eave, example ';
      Object.assign(entryOf(raw.survey.eaves, 'porch'), { id: ' porch', name: 'Porch eave  ' });
      Object.assign(entryOf(raw.priceList, 'panel'), { id: 'panel ' });
    });
    expect(job).toEqual(changedJob(() => undefined));
  });

  test.each([
    ['job.name', (raw: RawJob) => (raw.job['name'] = '   ')],
    [
      'survey.eaves.0.name',
      (raw: RawJob) => Object.assign(entryOf(raw.survey.eaves, 'porch'), { name: ' \n' }),
    ],
    ['priceList.6.id', (raw: RawJob) => Object.assign(entryOf(raw.priceList, 'panel'), { id: ' ' })],
    [
      'design.extraCosts.0.description',
      (raw: RawJob) => Object.assign(entryOf(raw.design.extraCosts, 'permit'), { description: ' ' }),
    ],
  ])('are more than spaces: %s', (field, change) => {
    const problems = told(change);
    expect(problems.map(([at]) => at)).toEqual([field]);
    expect(problems[0]?.[1]).toMatch(/: Enter at least one character that is no space\.$/);
  });
});

describe('what a design says of rafters and eaves that are not surveyed', () => {
  test('binds nothing and is told with its entry', () => {
    const plain = soundResult(changedJob(() => undefined));
    const { estimate } = soundResult(
      changedJob((raw) => {
        const porch = entryOf(raw.design.eaves, 'porch');
        const stock = { section: '2x6', grade: 'No.2' };
        raw.design.eaves.push({ ...porch, eaveId: 'ghost' });
        Object.assign(porch, {
          pins: [{ rafterId: 'p9', side: 'left' }],
          blocks: { stock, openBays: ['p8'] },
          layout: { ...Object(porch['layout']), baysWithoutTail: ['p7'] },
        });
        Object.assign(entryOf(raw.survey.eaves, 'porch'), { otherOldBlocks: ['p6'] });
        Object.assign(raw.design, {
          asBuilt: [
            { eaveId: 'porch', extenderId: 'gap-1' },
            { eaveId: 'porch', extenderId: 'p5' },
            { eaveId: 'gone', extenderId: 'p1' },
          ],
        });
      }),
    );
    expect(estimate.totalUsd).toBe(plain.estimate.totalUsd);
    expect(estimate.lacks).toEqual([]);
    expect(estimate.notes.map((note) => [note.field, problemSentence(note)])).toEqual([
      [
        'design.eaves.0.pins.0.rafterId',
        'Porch eave, pin of "p9": no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
      ],
      [
        'design.eaves.0.blocks.openBays.0',
        'Porch eave, open bay right of "p8": no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
      ],
      [
        'design.eaves.0.layout.baysWithoutTail.0',
        'Porch eave, bay without a tail right of "p7": no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
      ],
      [
        'design.eaves.1.eaveId',
        'Design of "ghost": no eave of this id is surveyed, so nothing of it is built. Check the id, or take the design out.',
      ],
      [
        'survey.eaves.0.otherOldBlocks.0',
        'Porch eave, bay with another old block, right of "p6": no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
      ],
      [
        'design.asBuilt.1.extenderId',
        'Built tail "p5" of Porch eave: no tail of this id is laid out, so it binds nothing. Check the id, or take it out.',
      ],
      [
        'design.asBuilt.2.eaveId',
        'Built tail "p1" of "gone": no eave of this id is surveyed, so it binds nothing. Check the id, or take it out.',
      ],
    ]);
  });
});

const sentences = (entry: Record<string, unknown>) =>
  told((raw) => Object.assign(raw.settings, entry)).map(([, sentence]) => sentence);

describe('the sentence for an entry of a job file', () => {
  test('asks for a date where the day is missing or no text', () => {
    expect(told((raw) => delete raw['asOf'])).toEqual([
      ['asOf', 'As of: It is missing. Enter a date like 2026-04-30.'],
    ]);
    expect(told((raw) => (raw['asOf'] = 20260430))).toEqual([
      ['asOf', 'As of: Enter a date like 2026-04-30.'],
    ]);
  });

  test('names the whole file where an entry at its top is not known, with no path before it', () => {
    expect(told((raw) => (raw['foo'] = 3))).toEqual([
      [undefined, 'The job file: Not known here: foo. Check the spelling, or take it out.'],
    ]);
  });

  test('tells one bound, the tightest, of a number that is far too large', () => {
    expect(sentences({ labour: { crewSize: 1e300 } })).toEqual([
      'Settings, labour, crew size: Enter 20 or less.',
    ]);
    expect(sentences({ nextQuoteNumber: 1e300 })).toEqual([
      'Settings, next quote number: Enter a smaller number.',
    ]);
  });

  test('says of a section of two letters that it is no lumber size', () => {
    const job = changedJob((raw) =>
      Object.assign(entryOf(raw.design.eaves, 'porch'), { blocks: { stock: { section: 'xx' } } }),
    );
    const result = computeJob(job);
    expect(result.ok ? '' : problemSentence(result.problem)).toBe(
      '"xx" for blocks is not a lumber size known here. Choose one like 2x6 or 1x8.',
    );
  });
});
