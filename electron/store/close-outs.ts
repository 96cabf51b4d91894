import type { ReadableDb } from './database.ts';
import { query } from './query.ts';

/** The day that a job was finished; null while it is not. */
export function closedOn(db: ReadableDb, jobId: string): string | null {
  const row = db.row(query.selectFrom('close_outs').select('finished_on').where('job_id', '=', jobId));
  return row?.finished_on ?? null;
}
