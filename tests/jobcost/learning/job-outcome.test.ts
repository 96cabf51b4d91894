import { describe, expect, test } from 'vitest';
import { estimateAccuracy } from '../../../core/jobcost/learning/estimate-accuracy.ts';
import { jobOutcome } from '../../../core/jobcost/learning/job-outcome.ts';
import { materialUse } from '../../../core/jobcost/learning/material-use.ts';
import { finishedJob } from './finished.ts';

const phase = (phaseName: string, budget: number, actual: number, hours = 0, worked = 0) => ({
  phase: phaseName,
  budgetUsd: String(budget),
  actualUsd: String(actual),
  budgetHours: String(hours),
  actualHours: String(worked),
});

const nails = (jobId: string, reckoned: number, bought: number, paid: number) =>
  finishedJob(jobId, {
    materials: [
      {
        group: 'nails',
        allowedPercent: '10',
        reckonedUsd: String(reckoned),
        boughtUsd: String(bought),
        paidUsd: String(paid),
      },
    ],
  });

describe('what a finished job earned', () => {
  const { closeOut } = finishedJob('a', {
    contractUsd: '14800',
    budgetUsd: '10000',
    actualUsd: '10400',
    overheadUsd: '1800',
    people: [
      { person: 'Bram', hours: '40', costUsd: '1836' },
      { person: 'Isolde', hours: '30', costUsd: '1200' },
    ],
  });

  test('margin is what is left of the contract, as reckoned and as it came', () => {
    expect(jobOutcome(closeOut)).toMatchObject({
      plannedMarginUsd: '4800.00',
      plannedMarginPercent: '32.4',
      madeMarginUsd: '4400.00',
      madeMarginPercent: '29.7',
    });
  });

  test('an hour of the owner earned what is left when all but his own hours is paid, by hand', () => {
    const own = { ...closeOut, words: { ...closeOut.words, owner: 'Bram' } };
    // (14,800 - 10,400 + 1,836) / 40 and less 1,800 of overhead.
    expect(jobOutcome(own)).toMatchObject({
      ownerHours: '40',
      ownerHourUsd: '155.90',
      ownerHourAfterOverheadUsd: '110.90',
    });
  });

  test('where the owner did not work on it, nothing is said of his hour', () => {
    expect(jobOutcome(closeOut)).toMatchObject({ ownerHours: '0', ownerHourUsd: null });
  });
});

describe('how good the estimates were', () => {
  test('whole jobs come first; bias and spread by hand', () => {
    const jobs = [
      finishedJob('a', { phases: [phase('Framing', 100, 110, 10, 11), phase('Soffit', 100, 100)] }),
      finishedJob('b', { phases: [phase('Framing', 200, 180, 10, 9)] }),
      finishedJob('c', { phases: [phase('Framing', 100, 130, 10, 13)] }),
    ];
    const [whole, framing, soffit] = estimateAccuracy(jobs);
    expect(whole).toMatchObject({ phase: null });
    expect(whole?.jobs.map((job) => job.overUsdPercent)).toEqual(['5', '-10', '30']);
    // +10, -10, +30: mean 10; deviations 0, -20, 20; 800 / 2 = 400.
    expect(framing).toMatchObject({
      phase: 'Framing',
      meanUsdPercent: '10',
      spreadUsdPercent: '20',
      meanHoursPercent: '10',
      spreadHoursPercent: '20',
    });
    expect(soffit).toMatchObject({ meanUsdPercent: '0', spreadUsdPercent: null, meanHoursPercent: null });
  });

  test('a phase that was not reckoned has no percentage, and does not bend the mean', () => {
    const [, hidden] = estimateAccuracy([finishedJob('a', { phases: [phase('Other', 0, 300)] })]);
    expect(hidden?.jobs[0]).toMatchObject({ actualUsd: '300.00', overUsdPercent: null });
    expect(hidden?.meanUsdPercent).toBeNull();
  });
});

describe('how much was bought beyond what was reckoned', () => {
  test('an allowance grows by what was bought beyond it, drawn toward what is used', () => {
    const [use] = materialUse([nails('a', 50, 60, 66), nails('b', 30, 36, 36), nails('c', 20, 24, 24)], {
      nails: 10,
    });
    // 120 of 100; Z = 3 / 6; 1.10 x 1.10 - 1 = 21 %.
    expect(use).toMatchObject({ overQuantityPercent: '20', usedPercent: '10', offeredPercent: '21' });
    expect(use?.jobs[0]).toMatchObject({ overQuantityPercent: '20', overPricePercent: '10' });
  });

  test('taking the proposed allowance settles it: the same jobs propose the same', () => {
    const jobs = [nails('a', 50, 60, 66), nails('b', 30, 36, 36), nails('c', 20, 24, 24)];
    expect(materialUse(jobs, { nails: 21 })[0]).toMatchObject({ usedPercent: '21', offeredPercent: '21' });
  });

  test('an allowance never falls below nothing, and lumber, which follows its cut plan, has none', () => {
    expect(materialUse([nails('a', 100, 10, 10)], { nails: 10 })[0]?.offeredPercent).toBe('0');
    const lumber = finishedJob('a', {
      materials: [
        { group: 'lumber', allowedPercent: null, reckonedUsd: '100', boughtUsd: '108', paidUsd: '110' },
      ],
    });
    expect(materialUse([lumber], {})).toMatchObject([{ overQuantityPercent: '8', offeredPercent: null }]);
  });
});
