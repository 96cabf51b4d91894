import { describe, expect, test } from 'vitest';
import { resultsJson } from '../../core/job/results-json.ts';
import { sampleText, soundJob, soundResult } from './example-job.ts';

const job = soundJob(sampleText());
const result = soundResult(job);
const json = resultsJson(job, result);

/** Every number in a value, with the path of keys that leads to it. */
function numbers(value: unknown, path: readonly string[] = []): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return [[path.filter((key) => !/^\d+$/.test(key)).join('.'), value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => numbers(entry, [...path, key]));
}

/** Every text in a value, with the path of keys that leads to it. */
function texts(value: unknown, path: readonly string[] = []): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path.filter((key) => !/^\d+$/.test(key)).join('.'), value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => texts(entry, [...path, key]));
}

/** Paths of what JSON would drop. */
function missing(value: unknown, path = ''): readonly string[] {
  if (value === undefined) return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => missing(entry, `${path}.${key}`));
}

describe('the results as JSON', () => {
  test('come back from JSON text as they went in, without a hole', () => {
    const text = JSON.stringify(json);
    expect(JSON.stringify(JSON.parse(text))).toBe(text);
    expect(missing(json)).toEqual([]);
    expect(numbers(json).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
  });

  test('say the unit of every number at the end of its key', () => {
    const unit = /(In|Sixteenths|Ft|SqFt|Deg|RisePer12|InPerIn|Ratio|PerUnit)$/;
    const counts = /(^|\.)(count[A-Z]\w*|number|rafterNumber|row|version)$/;
    const bare = numbers(json).filter(([path]) => !unit.test(path) && !counts.test(path));
    expect([...new Set(bare.map(([path]) => path))]).toEqual([]);
  });

  test('write what must not lose a cent as decimal text, with its unit in the key', () => {
    const unit = /(Usd|Percent|Hours|Days|Lb)$|(^|\.)quantity$/;
    // The steps of a reckoning are words for people, also where a step holds a bare number.
    const written = texts({ ...json, checks: [] }).filter(([, value]) => /^-?\d+(\.\d+)?$/.test(value));
    expect(written.length).toBeGreaterThan(50);
    expect([...new Set(written.map(([path]) => path))].filter((path) => !unit.test(path))).toEqual([]);
    // and never as a number, nor in cents
    expect(numbers(json).filter(([path]) => unit.test(path) || /cents/i.test(path))).toEqual([]);
    for (const { quantity, unit: unitBeside } of json.takeoff.lines)
      expect([quantity, unitBeside.length > 0]).toEqual([quantity, true]);
  });

  test('tell the boards at what they cost, and how the saw was set', () => {
    for (const [index, plan] of json.cutPlans.entries()) {
      const cents = plan.boards.reduce((sum, { priceUsd }) => sum + Math.round(Number(priceUsd) * 100), 0);
      expect(cents).toBe(Math.round(Number(plan.costUsd) * 100));
      expect(plan.boards.map(({ priceUsd }) => priceUsd)).toEqual(
        result.cutPlans[index]?.boards.map(({ priceCents }) => (priceCents / 100).toFixed(2)),
      );
      // 1/8 in. of kerf and 1/2 in. off each end
      expect([plan.kerfSixteenths, plan.endTrimSixteenths]).toEqual([2, 8]);
    }
  });

  test('tell every nail of a joint by row and place, as many as the takeoff counts', () => {
    for (const eave of json.eaves) {
      const inJoints = eave.extenders.reduce((sum, { joint }) => sum + joint.positions.length, 0);
      const counted = json.takeoff.nails
        .filter(({ eaveId, use }) => eaveId === eave.eaveId && use === 'extender')
        .reduce((sum, { countNails }) => sum + countNails, 0);
      expect(counted).toBe(inJoints);
      for (const { joint } of eave.extenders) {
        expect(joint.countNails).toBe(joint.positions.length);
        for (const { row, alongIn } of joint.positions) {
          expect([1, 2]).toContain(row);
          expect(alongIn).toBeGreaterThanOrEqual(2);
          expect(alongIn).toBeLessThanOrEqual(joint.overlapIn - 2 + 1e-9);
        }
      }
    }
  });

  test('tell the nails of each line as the sum of its uses, before loss', () => {
    for (const line of json.takeoff.lines.filter(({ kind }) => kind === 'nails')) {
      const of = json.takeoff.nails.filter(
        ({ nail }) => line.need.kind === 'nails' && nail === line.need.nail,
      );
      expect(of.reduce((sum, { countNails }) => sum + countNails, 0)).toBe(Number(line.quantity));
    }
  });

  test('tell the strip of sheathing, its courses and its area by eave', () => {
    expect(json.takeoff.sheathing.map(({ eaveId }) => eaveId)).toEqual(
      json.eaves.map(({ eaveId }) => eaveId),
    );
    for (const strip of json.takeoff.sheathing) {
      if (strip.kind !== 'panels' || !('courses' in strip)) throw new Error('the sample has panels');
      expect((strip.stripWidthIn * strip.stripLengthIn) / 144).toBeCloseTo(strip.areaSqFt, 9);
      // A gap of 1/8 in. between courses.
      const covered = strip.courses.reduce((sum, { widthIn }) => sum + widthIn + 0.125, -0.125);
      expect(covered).toBeCloseTo(strip.stripWidthIn, 9);
      expect(strip.boards).toHaveLength(strip.countPanels);
      for (const board of strip.boards) {
        expect(board.toIn - board.fromIn).toBeLessThanOrEqual(strip.sheetLengthIn + 1e-9);
        expect(['leftOn', 'rightOn'].every((end) => Reflect.get(board, end) !== '')).toBe(true);
      }
    }
  });

  test('tell labour so that quantity, rate and factors give its hours', () => {
    expect(json.takeoff.labour.length).toBeGreaterThan(8);
    for (const work of json.takeoff.labour) {
      for (const eave of work.eaves) {
        const hours = eave.factors.reduce(
          (product, { hoursRatio }) => product * hoursRatio,
          Number(eave.quantity) * work.hoursPerUnit,
        );
        expect(Math.abs(Number(eave.labourHours) - hours)).toBeLessThanOrEqual(0.005 + 1e-9);
      }
      const line = json.takeoff.lines.find(({ id }) => id === work.takeoffLineId);
      expect(line?.quantity).toBe(work.labourHours);
    }
  });

  test('tell the factors of a high, steep house with hard access', () => {
    const hard = soundJob(sampleText());
    hard.survey.storeys = 2;
    hard.survey.access = 'hard';
    for (const eave of hard.survey.eaves) eave.pitchRisePer12 = 10;
    const fascia = resultsJson(hard, soundResult(hard)).takeoff.labour.find(({ task }) => task === 'fascia');
    expect(fascia?.eaves[0]?.factors).toEqual([
      { label: '2 storeys', hoursRatio: 1.25 },
      { label: 'steeper than 8/12', hoursRatio: 1.15 },
      { label: 'hard access', hoursRatio: 1.2 },
    ]);
  });

  test('tell for everything bought which price of which day was used', () => {
    const bought = json.estimate.lines.filter(({ kind }) => kind === 'material');
    expect(bought.length).toBeGreaterThan(5);
    for (const line of bought) {
      const item = job.priceList.find(({ id }) => id === line.price?.itemId);
      const newest = item?.prices
        .filter(({ observedOn }) => observedOn <= job.asOf)
        .toSorted((a, b) => a.observedOn.localeCompare(b.observedOn))
        .at(-1);
      expect(line.price).toMatchObject({ observedOn: newest?.observedOn, observedUsd: newest?.priceUsd });
    }
    for (const line of json.estimate.lines.filter(({ kind }) => kind === 'labour'))
      expect(line.price).toBeNull();
  });

  test('tell a bearing shim in sixteenths, as it is ripped', () => {
    const high = soundJob(sampleText());
    for (const eave of high.survey.eaves)
      for (const rafter of [eave, ...eave.rafters]) rafter.heightAbovePlateIn = 7;
    const [extender] = resultsJson(high, soundResult(high)).eaves[0]?.extenders ?? [];
    const bearing = extender?.section.bearing;
    if (bearing?.kind !== 'shimmed') throw new Error('the piece does not clear the plate');
    expect(bearing.shimSixteenths).toBe(Math.round(bearing.shimIn * 16));
  });

  test('hold every piece, board, line and total', () => {
    expect(json.pieces).toHaveLength(result.takeoff.pieces.length);
    expect(json.eaves.map(({ extenders }) => extenders.length)).toEqual(
      result.eaves.map(({ extenders }) => extenders.length),
    );
    expect(json.cutPlans.flatMap(({ boards }) => boards)).toHaveLength(
      result.cutPlans.flatMap(({ boards }) => boards).length,
    );
    expect(json.estimate.lines.map(({ costUsd }) => costUsd)).toEqual(
      result.estimate.lines.map(({ costUsd }) => costUsd),
    );
    expect(json.estimate.totals.at(-1)?.amountUsd).toBe(result.estimate.totalUsd);
  });

  test('mark every line of labour whose hours are a placeholder, and no other line', () => {
    const marks = new Map(json.estimate.lines.map(({ kind, rateMark }) => [kind, rateMark]));
    expect(marks.get('labour')).toBe('placeholder');
    expect(marks.get('material')).toBeNull();
  });

  test('carry the caution with the structural figures', () => {
    expect(json.caution).toMatch(/advisory.*engineer/);
  });
});
