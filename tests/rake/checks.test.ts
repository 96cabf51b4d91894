import { describe, expect, test } from 'vitest';
import type { CheckResult } from '../../core/checks/check-types.ts';
import { checkGroups } from '../../core/checks/check-types.ts';
import { rakeRegistry } from '../../core/checks/rakes/rake-registry.ts';
import { registry } from '../../core/checks/registry.ts';
import { runChecks } from '../../core/checks/run-checks.ts';
import { checksOfEave, titleOf } from '../../core/documents/grouped-checks.ts';
import { soundResult } from '../job/example-job.ts';
import { rakeJob, type RakeJob } from './rake-job.ts';

function checksOf(change: RakeJob = {}): readonly CheckResult[] {
  const job = rakeJob(change);
  return runChecks(job, soundResult(job)).filter(({ rakeId }) => rakeId === 'gable');
}
function checkOf(check: string, change: RakeJob = {}): CheckResult {
  const found = checksOf(change).find((one) => one.check === check);
  if (found === undefined)
    throw new Error(
      `no ${check} among ${checksOf(change)
        .map((one) => one.check)
        .join()}`,
    );
  return found;
}

test('the checks of a rake have names of their own, and stand in the groups of the others', () => {
  const names = [...registry, ...rakeRegistry].map(({ check }) => check);
  expect(new Set(names).size).toBe(names.length);
  const groups = rakeRegistry.map(({ group }) => checkGroups.indexOf(group));
  expect(groups).toEqual(groups.toSorted((a, b) => a - b));
  const job = rakeJob();
  const grouped = checksOfEave(runChecks(job, soundResult(job)), 'wall-1');
  const titles = grouped.flatMap(({ checks }) => checks.map(titleOf));
  expect(titles).toEqual(expect.arrayContaining(rakeRegistry.map(({ title }) => title)));
});

test('each is told with its rake and source, walks its reckoning, and approves of nothing', () => {
  for (const check of checksOf()) {
    expect(check.id).toBe(`${check.check}/gable`);
    expect(check).toMatchObject({ eaveId: 'wall-1', where: expect.stringMatching(/^Rake R1/) });
    expect(check.source.length).toBeGreaterThan(0);
    expect(check.why.length).toBeGreaterThan(0);
    expect(JSON.stringify(check)).not.toMatch(
      /\b(ok|okay|pass(es|ed)?|safe(ly)?|approve[ds]?|approval|fails?)\b/i,
    );
  }
});

describe('backspan of lookouts', () => {
  // Source: wood frame manual, outlookers stick out no more than half their length (second-hand, a coastal inspectors' page).
  test('is within at 15-1/4 in. back for 12 in. out, and governs where the tail stands further in', () => {
    // Past the wall, over A-E01 at 1-1/2 in.: 15-1/4 back to A-E02 at 16-3/4, 13-1/2 out: 1.13.
    expect(checkOf('rake-backspan')).toMatchObject({ verdict: 'within', limit: { number: 1 } });
    expect(checkOf('rake-backspan').value!.number).toBeCloseTo(15.25 / 13.5, 9);
  });

  test('is beyond at 18 in. out, and says what overhang would do: 15-1/4 less the 1-1/2 that the tail stands in', () => {
    const check = checkOf('rake-backspan', { rakeDesign: { overhangIn: 18 } });
    expect(check.verdict).toBe('beyond');
    expect(check.ratio).toBeCloseTo(19.5 / 15.25, 9);
    expect(check.remedy).toMatch(/An overhang of 1' 1-3\/4" at the rake/);
    const mended = checkOf('rake-backspan', { rakeDesign: { overhangIn: 13.75 } });
    expect(mended.verdict).toBe('within');
  });

  test('is no question of a ladder or of butted lookouts, which have none', () => {
    for (const rakeDesign of [{ kind: 'ladder' }, { atGableRafter: 'butted' }])
      expect(checksOf({ rakeDesign }).map(({ check }) => check)).not.toContain('rake-backspan');
  });
});

describe('the overhang at a rake', () => {
  // Source: wood frame manual, 2 ft for outlookers and 1 ft for lookout blocks, from memory.
  test.each([
    ['lookouts at 24 in.', { overhangIn: 24 }, 'within'],
    ['lookouts at 24-1/4 in.', { overhangIn: 24.25 }, 'needs-engineer'],
    ['a ladder at 12 in.', { kind: 'ladder', overhangIn: 12 }, 'within'],
    ['a ladder at 12-1/16 in.', { kind: 'ladder', overhangIn: 12.0625 }, 'beyond'],
    ['butted lookouts at 14 in.', { atGableRafter: 'butted', overhangIn: 14 }, 'beyond'],
  ])('of %s', (_, rakeDesign, verdict) => {
    expect(checkOf('rake-overhang', { rakeDesign }).verdict).toBe(verdict);
  });
});

describe('what lookouts leave of the wood they are let into', () => {
  // Source: IRC R802.7.1.1, a notched cantilevered portion keeps 3-1/2 in.
  test('is 4 in. of a 2x6 tail, away from its seat', () => {
    // The eave's new sheathing reaches 8 in. in over the wall, so the lookout under its upper edge lies clear of the seat.
    const check = checkOf('rake-notch-tail', {
      eaveDesign: { ends: { left: { kind: 'rake', meets: 'gable' } }, sheathing: { tieBackIn: 8 } },
    });
    expect(check.limit!.number).toBe(3.5);
    expect(check.value!.number).toBe(4);
    expect(check.verdict).toBe('within');
  });

  test('is less than the throat where a lookout lies over the seat, as under a joint of panels at the wall line', () => {
    // At 6/12 and 4-1/2 above the plate the throat is 4.5 / 1.118 = 4.025; 1-1/2 off it leaves 2.525.
    const check = checkOf('rake-notch-tail');
    expect(check.value!.number).toBeCloseTo(4.5 / Math.sqrt(1.25) - 1.5, 9);
    expect(check.verdict).toBe('beyond');
    expect(check.why[0]!.label).toMatch(/^Throat of A-E01/);
  });

  test('of the gable rafter is nobody’s limit while studs stand under it, and a sixth of its depth where none do', () => {
    // IRC R802.7.1: 5-1/2 / 6 = 0.917 in.
    expect(checkOf('rake-notch-rafter')).toMatchObject({ verdict: 'not-covered', ratio: null });
    const spanning = checkOf('rake-notch-rafter', { rake: { studsUnder: false } });
    expect(spanning.verdict).toBe('beyond');
    expect(spanning.limit!.number).toBeCloseTo(5.5 / 6, 9);
    expect(spanning.ratio).toBeCloseTo(1.5 / (5.5 / 6), 9);
  });

  test('is no question where nothing is let in', () => {
    expect(checksOf({ rakeDesign: { atGableRafter: 'butted' } }).map(({ check }) => check)).toEqual([
      'rake-overhang',
    ]);
  });
});
