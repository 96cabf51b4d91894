import type { JobInput } from '../../core/job/job-file.ts';
import type { ReadableDb } from '../store/database.ts';
import { getDocuments } from '../store/documents.ts';
import { getJob } from '../store/jobs.ts';
import { listPrices } from '../store/prices.ts';
import { getSettings } from '../store/settings.ts';

/**
 * Gathers everything that the computation of a job needs.
 * @param today - the day whose prices hold where the job names none.
 * @returns undefined where there is no such job.
 */
export function loadJobInput(db: ReadableDb, jobId: string, today: string): JobInput | undefined {
  const job = getJob(db, jobId);
  if (job === undefined) return undefined;
  const { survey, design } = getDocuments(db, jobId);
  return {
    asOf: job.estimateOn ?? today,
    job: job.info,
    survey,
    design,
    settings: getSettings(db).settings,
    priceList: [...listPrices(db)],
  };
}
