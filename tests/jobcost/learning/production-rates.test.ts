import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { learnRates } from '../../../core/jobcost/learning/production-rates.ts';
import { finishedJob, framingJob } from './finished.ts';

const used = new Map([
  ['install-extenders', 0.45],
  ['blocks', 0.15],
]);

describe('hours learned from finished jobs', () => {
  test('one job that took a fifth longer moves the rate a quarter of the way, by hand', () => {
    const [rate] = learnRates([framingJob('a', 20, 24)], used, []);
    // 0.45 x 24 / 20 = 0.54; Z = 1 / (1 + 3); 0.25 x 0.54 + 0.75 x 0.45 = 0.4725.
    expect(rate).toMatchObject({ mean: '0.54', offered: '0.473', trustPercent: '25', counted: 1 });
  });

  test('a phase is shared out among its tasks as they were reckoned, and change orders take their part', () => {
    const job = finishedJob('a', {
      phases: [
        { phase: 'Framing', budgetUsd: '0', actualUsd: '0', budgetHours: '30', actualHours: '36' },
        { phase: 'Soffit', budgetUsd: '0', actualUsd: '0', budgetHours: '5', actualHours: '50' },
      ],
      tasks: [
        { task: 'install-extenders', phase: 'Framing', hoursPerUnit: '0.45', hours: '18' },
        { task: 'blocks', phase: 'Framing', hoursPerUnit: '0.15', hours: '6' },
      ],
    });
    // 6 h of the 30 are a change order's: 36 h x 18 / 30 = 21.6 and 36 x 6 / 30 = 7.2.
    expect(
      learnRates([job], used, []).map(({ task, jobs }) => [task, jobs[0]?.hours, jobs[0]?.rate]),
    ).toEqual([
      ['install-extenders', '21.6', '0.54'],
      ['blocks', '7.2', '0.18'],
    ]);
  });

  test('a job on two storeys says the same as one on the ground that went as well', () => {
    const ground = framingJob('ground', 9, 10);
    const aloft = framingJob('aloft', 9 * 1.25, 10 * 1.25);
    const [rate] = learnRates([ground, aloft], used, []);
    expect(rate?.jobs.map((job) => job.rate)).toEqual(['0.5', '0.5']);
  });

  test('a larger job weighs more in the mean', () => {
    const [rate] = learnRates([framingJob('small', 4.5, 9), framingJob('large', 45, 45)], used, []);
    // 54 h over 10 + 100 units.
    expect(rate?.mean).toBe('0.491');
    expect(rate?.median).toBe('0.675');
  });

  test('a job that stands out is told, counts until he leaves it out, and stays to be seen then', () => {
    const jobs = [
      framingJob('a', 18, 15.2),
      framingJob('b', 18, 16),
      framingJob('c', 18, 16.8),
      framingJob('d', 18, 17.6),
      framingJob('e', 18, 36),
    ];
    const [before] = learnRates(jobs, used, []);
    expect(before?.jobs.map((job) => job.standsOut)).toEqual([false, false, false, false, true]);
    expect(before?.counted).toBe(5);
    const [after] = learnRates(jobs, used, [{ jobId: 'e', phase: 'Framing' }]);
    expect(after?.counted).toBe(4);
    expect(after?.jobs.map((job) => job.leftOut)).toEqual([false, false, false, false, true]);
    // (15.2 + 16 + 16.8 + 17.6) h over 160 tails = 0.41; 4/7 x 0.41 + 3/7 x 0.45 = 0.427.
    expect(after).toMatchObject({ mean: '0.41', offered: '0.427' });
  });

  test('nothing is offered of a task all of whose jobs are left out, or that no hours were kept of', () => {
    const [rate] = learnRates([framingJob('a', 18, 36)], used, [{ jobId: 'a', phase: 'Framing' }]);
    expect(rate).toMatchObject({ offered: null, mean: null, counted: 0 });
    expect(learnRates([framingJob('a', 18, 0)], used, [])).toEqual([]);
  });

  test('taking what is proposed settles it: the same jobs propose no more', () => {
    const jobs = [framingJob('a', 20, 24), framingJob('b', 30, 33)];
    const offered = learnRates(jobs, used, [])[0]?.offered ?? '';
    const [after] = learnRates(jobs, new Map([['install-extenders', offered]]), []);
    expect(after).toMatchObject({ used: offered, offered });
    // A later job that was estimated with the taken rate counts like the others.
    const later = framingJob('c', 25, 25, Number(offered));
    expect(learnRates([...jobs, later], new Map([['install-extenders', offered]]), [])[0]?.counted).toBe(3);
  });

  test('jobs that go as they were reckoned leave the rate where it is', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 12 }), (sizes) => {
        const jobs = sizes.map((size, index) => framingJob(String(index), size, size));
        expect(learnRates(jobs, used, [])[0]?.offered).toBe('0.45');
      }),
    );
  });

  test('what is offered lies between the rate in use and what the jobs took', () => {
    const took = fc.record({
      reckoned: fc.integer({ min: 1, max: 200 }),
      took: fc.integer({ min: 1, max: 400 }),
    });
    fc.assert(
      fc.property(fc.array(took, { minLength: 1, maxLength: 10 }), (jobs) => {
        const [rate] = learnRates(
          jobs.map((job, index) => framingJob(String(index), job.reckoned, job.took)),
          used,
          [],
        );
        const [low, high] = [0.45, Number(rate?.mean)].sort((a, b) => a - b) as [number, number];
        expect(Number(rate?.offered)).toBeGreaterThanOrEqual(low - 0.0011);
        expect(Number(rate?.offered)).toBeLessThanOrEqual(high + 0.0011);
      }),
    );
  });

  test('the hours of a phase without changes are all shared out', () => {
    const hours = fc.integer({ min: 1, max: 10_000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(hours, hours, hours, (extenders, blocks, worked) => {
        const job = finishedJob('a', {
          phases: [
            {
              phase: 'Framing',
              budgetUsd: '0',
              actualUsd: '0',
              budgetHours: (extenders + blocks).toFixed(2),
              actualHours: worked.toFixed(2),
            },
          ],
          tasks: [
            {
              task: 'install-extenders',
              phase: 'Framing',
              hoursPerUnit: '0.45',
              hours: extenders.toFixed(2),
            },
            { task: 'blocks', phase: 'Framing', hoursPerUnit: '0.15', hours: blocks.toFixed(2) },
          ],
        });
        const shared = learnRates([job], used, []).flatMap(({ jobs }) =>
          jobs.map((one) => Number(one.hours)),
        );
        expect(shared.reduce((sum, one) => sum + one, 0)).toBeCloseTo(worked, 1);
      }),
    );
  });
});
