import { describe, expect, test } from 'vitest';
import { runChecks } from '../../core/checks/run-checks.ts';
import { explain } from '../../core/trace/explain.ts';
import { sampleText, soundJob, soundResult } from '../job/example-job.ts';

describe('walking back a check', () => {
  const job = soundJob(sampleText());
  job.survey.site.groundSnowPsf = 40;
  const result = soundResult(job);
  const checks = runChecks(job, result);

  test('opens its reckoning, figure by figure as reckoned', () => {
    for (const check of checks) {
      const step = explain(`check/${check.id}`, job, result);
      expect(step?.parts.map(({ label, value }) => [label, value])).toEqual(
        check.why.map((one) => [one.label, one.result]),
      );
      expect(step?.how).toContain('Advisory');
    }
  });

  test('leads on to entries and figures that are there', () => {
    const refs = checks.flatMap((check) => check.why.flatMap((step) => step.ref ?? []));
    expect(refs.length).toBeGreaterThan(0);
    expect([...new Set(refs)].filter((ref) => explain(ref, job, result) === undefined)).toEqual([]);
  });

  test('opens nothing for a check that is not made', () => {
    expect(explain('check/none/south', job, result)).toBeUndefined();
  });
});
