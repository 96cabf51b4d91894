import type { Progress } from '../../core/jobcost/standing.ts';
import { decimalText, usd } from '../../core/units/money.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** The newest word on each phase of a job. */
export function listProgress(db: ReadableDb, jobId: string): Progress[] {
  const rows = db.rows(
    query.selectFrom('progress').selectAll().where('job_id', '=', jobId).orderBy('sequence'),
  );
  const newest = new Map(rows.map((row) => [row.phase, row]));
  return [...newest.values()].map((row) => ({
    phase: row.phase,
    notedOn: row.noted_on,
    quantity: row.quantity === null ? null : decimalText(row.quantity),
    percent: row.percent === null ? null : decimalText(row.percent),
    toCompleteUsd: row.to_complete_usd === null ? null : usd(row.to_complete_usd),
  }));
}

/** Notes how far a phase is. */
export function addProgress(
  db: WritableDb,
  jobId: string,
  progress: { readonly [K in keyof Progress]: string | (null extends Progress[K] ? null : never) },
): void {
  db.run(
    query.insertInto('progress').values({
      sequence: takeNumber(db, 'cost-entry'),
      job_id: jobId,
      phase: progress.phase,
      noted_on: progress.notedOn,
      quantity: progress.quantity,
      percent: progress.percent,
      to_complete_usd: progress.toCompleteUsd,
    }),
  );
}
