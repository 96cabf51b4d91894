import { describe, expect, test } from 'vitest';
import { checkGroups, type CheckResult } from '../../core/checks/check-types.ts';
import { registry } from '../../core/checks/registry.ts';
import { siteSchema } from '../../core/survey/site.ts';
import { exampleText, sampleText, soundJob } from '../job/example-job.ts';
import { smallJob } from '../takeoff/small-job.ts';
import { checkOf, checksOf, fullJob } from './checked-job.ts';

const sample = soundJob(sampleText());

function valueAt(document: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (at, name) =>
        typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[name] : undefined,
      document,
    );
}
const words = (check: CheckResult) =>
  JSON.stringify([check.what, check.remedy, check.assumptions, check.why, check.source]);

describe('the registry', () => {
  test('has one name for each check, and goes through the groups in order', () => {
    const names = registry.map(({ check }) => check);
    expect(new Set(names).size).toBe(names.length);
    const groups = registry.map(({ group }) => checkGroups.indexOf(group));
    expect(groups).toEqual(groups.toSorted((a, b) => a - b));
    expect(new Set(groups).size).toBe(checkGroups.length);
  });
});

describe('the checks of a job', () => {
  test('answer once for every check on every eave, each by an id of its own', () => {
    const checks = checksOf(sample);
    const ofEaves = checks.filter(({ rakeId }) => rakeId === undefined);
    expect(ofEaves).toHaveLength(registry.length * sample.survey.eaves.length);
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    expect(checks[0]?.id).toBe('backspan/south');
  });

  test.each([
    ['the sample, with little entered', sample],
    ['the example of the job-file page', soundJob(exampleText())],
    ['a small job with everything entered', fullJob()],
  ])('of %s never call anything approved', (_, job) => {
    for (const check of checksOf(job))
      expect(words(check)).not.toMatch(
        /\b(ok|okay|pass|passes|passed|passing|safe|safely|approve[ds]?|approval|compliant|fails?)\b/i,
      );
  });

  test('say a remedy for whatever is not within, and none for what is', () => {
    for (const check of [...checksOf(sample), ...checksOf(fullJob())])
      expect([check.id, check.remedy === null]).toEqual([check.id, check.verdict === 'within']);
  });

  test('put the ratio above 1 exactly where a figure is beyond its limit', () => {
    const checks = checksOf(fullJob({ stations: [12, 42, 72, 102], structure: { panelRating: '24/0' } }));
    const held = checks.filter(({ ratio, verdict }) => ratio !== null && verdict !== 'not-covered');
    expect(held.length).toBeGreaterThan(20);
    for (const { id, ratio, verdict } of held)
      expect([id, (ratio ?? 0) > 1 + 1e-9]).toEqual([id, verdict !== 'within']);
  });

  test('name a source with its mark, and walk the reckoning, wherever a figure is held against a limit', () => {
    for (const check of checksOf(fullJob()).filter(({ limit }) => limit !== null)) {
      expect([check.id, check.source.length > 0, check.why.length > 0]).toEqual([check.id, true, true]);
    }
  });

  test('point at entries that are there and empty, for what is missing', () => {
    const nothingSaid = { ...sample, survey: { ...sample.survey, site: siteSchema.parse({}) } };
    const missing = checksOf(nothingSaid).filter(({ missingField }) => missingField !== null);
    expect(missing.length).toBeGreaterThan(10);
    for (const { id, missingField, verdict } of missing) {
      expect([id, verdict]).toEqual([id, 'not-covered']);
      expect([id, missingField, valueAt(nothingSaid, missingField ?? '')]).toEqual([id, missingField, null]);
    }
  });

  test('lack nothing once everything is entered', () => {
    expect(checksOf(fullJob()).filter(({ missingField }) => missingField !== null)).toEqual([]);
  });

  test('do not tell figures as within while the snow is not known, but keep those that are beyond without it', () => {
    const without = { site: { groundSnowPsf: null } };
    expect(checkOf('bending', without)).toMatchObject({
      verdict: 'not-covered',
      missingField: 'survey.site.groundSnowPsf',
    });
    expect(checkOf('bending', without).ratio).toBeGreaterThan(0);
    const far = { ...without, eaveDesign: { overhangIn: 60 } };
    expect(checkOf('bending', far).verdict).toBe('beyond');
  });

  test('of an eave without an extender say that there is nothing to check', () => {
    const job = smallJob({ eave: { obstructions: [{ id: 'o', fromIn: 0, toIn: 120 }] } });
    const checks = checksOf(job);
    expect(checks).toHaveLength(registry.length);
    for (const check of checks) expect(check.remedy).toMatch(/No extender stands on this eave/);
  });
});

describe('what is not covered', () => {
  test('is named, with the figures that an engineer needs for the old rafter', () => {
    const check = checkOf('old-rafter');
    expect(check.verdict).toBe('not-covered');
    expect(check.assumptions.join(' ')).toMatch(/old rafter.*wall.*earthquake/s);
    expect(check.remedy).toMatch(/the plate takes \d+ lb, and the nails lift the old rafter by \d+ lb/);
  });

  test('includes lumber that no design values are on file for', () => {
    const thin = { eaveDesign: { extender: { section: '5/4x6' } } };
    for (const check of ['bending', 'shear', 'plate-bearing', 'deflection'])
      expect(checkOf(check, thin)).toMatchObject({ verdict: 'not-covered', value: null });
    expect(checkOf('bending', { structure: { species: 'southern-pine', grade: 'stud' } }).verdict).toBe(
      'not-covered',
    );
  });

  test('includes nails that are not known', () => {
    const settings = { fastening: { sister: { nail: 'long screw' }, plateNail: 'bolt' } };
    for (const check of [
      'sister-nails',
      'nail-penetration',
      'nail-distances',
      'uplift-sister',
      'uplift-plate',
    ])
      expect(checkOf(check, { settings }).remedy).toMatch(/is not known here/);
  });
});
