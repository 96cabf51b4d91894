import {
  closeOutSchema,
  type FinishedFigures,
  type FinishedJob,
} from '../../../core/jobcost/learning/finished-job.ts';

/** A finished job that took nothing but what is given. */
export function finishedJob(
  jobId: string,
  figures: Partial<FinishedFigures>,
  finishedOn = '2026-03-01',
): FinishedJob {
  const none = '0';
  return {
    jobId,
    name: `Job ${jobId}`,
    finishedOn,
    closeOut: closeOutSchema.parse({
      words: {},
      figures: {
        contractUsd: none,
        changesUsd: none,
        billedUsd: none,
        paidUsd: none,
        budgetUsd: none,
        contingencyUsd: none,
        overheadUsd: none,
        actualUsd: none,
        committedUsd: none,
        phases: [],
        tasks: [],
        materials: [],
        people: [],
        ...figures,
      },
    }),
  };
}

/** One phase of a job whose hours are for a single task. */
export function framingJob(jobId: string, reckoned: number, took: number, hoursPerUnit = 0.45): FinishedJob {
  return finishedJob(jobId, {
    phases: [
      {
        phase: 'Framing',
        budgetUsd: '0',
        actualUsd: '0',
        budgetHours: String(reckoned),
        actualHours: String(took),
      },
    ],
    tasks: [
      {
        task: 'install-extenders',
        phase: 'Framing',
        hoursPerUnit: String(hoursPerUnit),
        hours: String(reckoned),
      },
    ],
  });
}
