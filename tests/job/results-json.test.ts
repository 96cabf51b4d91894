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
    const unit =
      /(In|Sixteenths|Ft|SqFt|Deg|Cents|Percent|RisePer12|PerInch|Lb|Hours)$|(slopeFactor|backspanRatio|ratio)$/;
    const counts = /(number|rafterNumber|version|count|sheets|pieces|need\.lengthFt)$/;
    const bare = numbers(json).filter(([path]) => !unit.test(path) && !counts.test(path));
    expect([...new Set(bare.map(([path]) => path))]).toEqual([]);
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
