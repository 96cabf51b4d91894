import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { sumUsd } from '../../core/units/money.ts';
import { lengthenJob } from '../bench/lengthen-job.ts';
import { exampleText, sampleText, soundJob, soundResult } from './example-job.ts';

type Raw = Record<string, unknown> & {
  survey: { eaves: Record<string, unknown>[] };
  design: { eaves: Record<string, unknown>[]; extraCosts: Record<string, unknown>[] };
  priceList: Record<string, unknown>[];
  settings: Record<string, unknown>;
};

/** The example with something changed. */
function changed(change: (raw: Raw) => void): JobFile {
  const raw = JSON.parse(exampleText()) as Raw;
  change(raw);
  return soundJob(JSON.stringify(raw));
}
function problemOf(change: (raw: Raw) => void) {
  const result = computeJob(changed(change));
  return result.ok ? undefined : result.problem;
}
const first = (list: Record<string, unknown>[]): Record<string, unknown> => list[0] ?? {};
const twoEaves = (change: Record<string, unknown>, designs: 'same' | 'turned') => (raw: Raw) => {
  raw.survey.eaves.push({ ...first(raw.survey.eaves), id: 'back', name: 'Back', ...change });
  raw.design.eaves.push({ ...first(raw.design.eaves), eaveId: 'back' });
  if (designs === 'turned') raw.design.eaves.reverse();
};
const oddBlocks = (wanted: boolean) => (raw: Raw) =>
  Object.assign(first(raw.design.eaves), { blocks: { wanted, stock: { section: '9x9' } } });
const lacks = (change: (raw: Raw) => void) => {
  const { estimate, unplanned } = soundResult(changed(change));
  return { sentences: estimate.lacks.map(problemSentence), unplanned, estimate };
};

describe('a whole job', () => {
  const job = soundJob(sampleText());
  const result = soundResult(job);

  test('goes from readings to a total with nothing lacking', () => {
    expect(result.eaves.map(({ letter, rafters }) => [letter, rafters.length])).toEqual([
      ['A', 21],
      ['B', 13],
    ]);
    expect(result.estimate.lacks).toEqual([]);
    expect(result.unplanned).toEqual([]);
    expect(Number(result.estimate.totalUsd)).toBeGreaterThan(1000);
  });

  test('loses no piece between takeoff and cut plan', () => {
    const cut = result.cutPlans.flatMap(({ boards }) =>
      boards.flatMap(({ items }) => items.map(({ mark, lengthSixteenths }) => `${mark} ${lengthSixteenths}`)),
    );
    const wanted = result.takeoff.pieces.map(({ mark, lengthSixteenths }) => `${mark} ${lengthSixteenths}`);
    expect(cut.toSorted()).toEqual(wanted.toSorted());
  });

  test('pays for the boards of the cut plan, no more and no less', () => {
    const lumber = result.estimate.lines.filter(({ id }) => id.startsWith('lumber-'));
    expect(sumUsd(lumber.map(({ costUsd }) => costUsd))).toBe(
      sumUsd(result.cutPlans.map(({ costUsd }) => costUsd)),
    );
  });

  test('lists its lines in the order of the work, each with an id of its own', () => {
    const ids = result.estimate.lines.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...new Set(result.estimate.lines.map(({ phase }) => phase))]).toEqual([
      'Survey and permit',
      'Protect and stage',
      'Strip-back',
      'Framing',
      'Fascia and trim',
      'Sheathing and edge',
      'Soffit',
      'Clean-up',
    ]);
  });

  test('is the same each time it is computed', () => {
    expect(soundResult(soundJob(sampleText()))).toEqual(result);
  });

  test('extenders and blocks of one stock share boards', () => {
    const uses = new Map(result.takeoff.pieces.map(({ mark, use }) => [mark, use]));
    const shared = result.cutPlans.flatMap(({ boards }) =>
      boards.filter(({ items }) => new Set(items.map(({ mark }) => uses.get(mark))).size > 1),
    );
    expect(shared.length).toBeGreaterThan(0);
  });

  test('fifty times as long still computes, with every piece planned and every sum right', () => {
    const long = soundResult({ ...job, ...lengthenJob(job, 50) });
    expect(long.takeoff.pieces.length).toBeGreaterThan(50 * 60);
    expect(long.cutPlans.flatMap(({ boards }) => boards.flatMap(({ items }) => items)).length).toBe(
      long.takeoff.pieces.length,
    );
    expect(sumUsd(long.estimate.lines.map(({ priceUsd }) => priceUsd))).toBe(long.estimate.priceUsd);
  });
});

describe('what stops a job is told with the path of its entry', () => {
  test('no eave, and an eave without a design', () => {
    expect(problemOf((raw) => (raw.survey.eaves = []))).toEqual({ code: 'no-eaves', field: 'survey.eaves' });
    expect(problemOf((raw) => (raw.design.eaves = []))).toEqual({
      code: 'no-design',
      eave: 'Porch eave',
      field: 'survey.eaves.0',
    });
  });

  test('two entries of one id', () => {
    expect(problemOf((raw) => raw.survey.eaves.push(first(raw.survey.eaves)))).toMatchObject({
      code: 'duplicate-id',
      what: 'eave',
      field: 'survey.eaves.1.id',
    });
    expect(problemOf((raw) => raw.design.eaves.push(first(raw.design.eaves)))).toMatchObject({
      code: 'duplicate-id',
      field: 'design.eaves.1.eaveId',
    });
    expect(problemOf((raw) => raw.priceList.push(first(raw.priceList)))).toMatchObject({
      code: 'duplicate-id',
      field: 'priceList.8.id',
    });
    expect(problemOf((raw) => raw.design.extraCosts.push(first(raw.design.extraCosts)))).toMatchObject({
      code: 'duplicate-id',
      field: 'design.extraCosts.1.id',
    });
  });

  test('lumber that nobody knows', () => {
    expect(
      problemOf((raw) => Object.assign(first(raw.design.eaves), { extender: { section: '2x7' } })),
    ).toEqual({
      code: 'unknown-section',
      section: '2x7',
      use: 'extenders',
      field: 'design.eaves.0.extender.section',
    });
  });

  test('lumber of blocks that are not wanted is not asked for', () => {
    expect(problemOf(oddBlocks(true))).toMatchObject({ code: 'unknown-section', use: 'blocks' });
    expect(problemOf(oddBlocks(false))).toBeUndefined();
  });

  test('the second eave is named by its own place in survey and design', () => {
    const rafters = [
      { id: 'x', readingIn: 40 },
      { id: 'y', readingIn: 20 },
    ];
    expect(problemOf(twoEaves({ rafters }, 'same'))).toMatchObject({
      code: 'rafter-out-of-order',
      field: 'survey.eaves.1.rafters.1.readingIn',
    });
    const noOverhang = (raw: Raw) => {
      twoEaves({}, 'turned')(raw);
      Object.assign(first(raw.design.eaves), {
        overhangIn: 1,
        overhangTo: 'fascia-face',
        fascia: { stock: { section: '5/4x8' } },
      });
    };
    expect(problemOf(noOverhang)).toMatchObject({ code: 'overhang-nothing-left', eave: 'Back' });
    expect(problemOf(noOverhang)?.field).toBe('design.eaves.0');
  });

  test('a margin of the whole price', () => {
    const problem = problemOf(
      (raw) => (raw.settings = { money: { profitMethod: 'margin', profitPercent: '100' } }),
    );
    expect(problem).toMatchObject({ code: 'margin-too-high', field: 'settings.money.profitPercent' });
  });
});

describe('what lacks a price does not stop a job, and is named', () => {
  test('with an empty price list everything that is bought is named', () => {
    const { sentences, estimate } = lacks((raw) => (raw.priceList = []));
    const all = sentences.join('\n');
    for (const name of ['2x6 No.2', '1x8 primed', '16d common', '8d common galvanized', 'Drip edge'])
      expect(all).toContain(name);
    expect(estimate.totals.find(({ key }) => key === 'materials')?.amountUsd).toBe('0.00');
  });

  test('before the first price was seen, the day it is of is named', () => {
    const { sentences } = lacks((raw) => (raw['asOf'] = '2026-04-01'));
    expect(
      sentences.filter((sentence) => sentence.includes('its first is of 2026-04-13')).length,
    ).toBeGreaterThan(4);
  });

  test('a piece longer than any board leaves the other pieces of its stock planned', () => {
    const { unplanned, sentences, estimate } = lacks((raw) => {
      raw.priceList = raw.priceList.filter(({ id }) => id !== '2x6-12');
      Object.assign(first(raw.design.eaves), { overhangIn: 30 });
    });
    expect(unplanned.map(({ group, marks }) => [group, marks.length])).toEqual([['2x6 No.2', 4]]);
    expect(sentences.filter((sentence) => sentence.includes('Add a longer length'))).toHaveLength(1);
    expect(sentences.join()).toContain('(the longest of 4)');
    expect(estimate.lines.some(({ id }) => id === 'lumber-2x6-No.2-2x6-8')).toBe(true);
  });

  test('a piece that fits a board only before its ends are trimmed does not fit', () => {
    const { unplanned, estimate } = lacks((raw) => {
      raw.priceList = raw.priceList.filter(({ id }) => id !== '2x6-12');
      Object.assign(raw.settings, { cutting: { endTrimIn: 24 } });
    });
    // Blanks of 4 ft 8 in. and more against 8 ft less 2 ft off each end; the blocks still fit.
    expect(unplanned.map(({ marks }) => marks)).toEqual([['A-E01', 'A-E02', 'A-E03', 'A-E04']]);
    expect(estimate.lines.some(({ id }) => id === 'lumber-2x6-No.2-2x6-8')).toBe(true);
  });

  test('without a wage the hours stand, at nothing, and the wage is asked for', () => {
    const { sentences, estimate } = lacks((raw) => (raw.settings = {}));
    expect(sentences).toContain(
      'No wage is set, so labour counts as nothing. Enter the wage for an hour in Settings.',
    );
    expect(estimate.lines.filter(({ kind }) => kind === 'labour').length).toBeGreaterThan(5);
  });

  test('a length that the shop does not buy is not bought', () => {
    const { estimate } = lacks((raw) =>
      Object.assign(raw.settings, { cutting: { excludedLengthsFt: [12] } }),
    );
    expect(estimate.lines.map(({ id }) => id)).not.toContain('lumber-2x6-No.2-2x6-12');
    expect(estimate.lines.map(({ id }) => id)).toContain('lumber-2x6-No.2-2x6-8');
  });

  test('pins and open bays of rafters that are gone bind nothing', () => {
    const plain = soundResult(changed(() => undefined));
    const pinned = soundResult(
      changed((raw) =>
        Object.assign(first(raw.design.eaves), { pins: [{ rafterId: 'gone', side: 'left' }] }),
      ),
    );
    expect(pinned.estimate.totalUsd).toBe(plain.estimate.totalUsd);
  });
});
