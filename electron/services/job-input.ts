import type { JobInput } from '../../core/job/job-file.ts';
import type { ReadableDb } from '../store/database.ts';
import { getDocuments } from '../store/documents.ts';
import { getJob } from '../store/jobs.ts';
import { listPricesOn } from '../store/prices.ts';
import { getSettings } from '../store/settings.ts';

/**
 * Gathers everything that the computation of a job needs; of the price list, the prices of its day.
 * @param today - the day whose prices hold where the job names none.
 * @param pricesOf - `today`: today's prices hold whatever day the job names.
 * @returns undefined where there is no such job.
 */
export function loadJobInput(
  db: ReadableDb,
  jobId: string,
  today: string,
  pricesOf: 'the job' | 'today' = 'the job',
): JobInput | undefined {
  const job = getJob(db, jobId);
  if (job === undefined) return undefined;
  const { survey, design } = getDocuments(db, jobId);
  const asOf = pricesOf === 'today' ? today : (job.estimateOn ?? today);
  return {
    asOf,
    job: job.info,
    survey,
    design,
    settings: getSettings(db).settings,
    priceList: [...listPricesOn(db, asOf)],
  };
}
