import { type CloseOut, closeOutSchema, type FinishedJob } from '../../core/jobcost/learning/finished-job.ts';
import type { LeftOut } from '../../core/jobcost/learning/production-rates.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { DocumentDamaged } from './documents.ts';
import { query } from './query.ts';

/** Finished jobs in the order they were finished, archived ones among them. */
export function listFinished(db: ReadableDb): FinishedJob[] {
  return db
    .rows(
      query
        .selectFrom('close_outs')
        .innerJoin('jobs', 'jobs.id', 'close_outs.job_id')
        .select(['jobs.id', 'jobs.name', 'close_outs.finished_on', 'close_outs.record'])
        .orderBy('close_outs.finished_on')
        .orderBy('jobs.id'),
    )
    .map((row) => ({
      jobId: row.id,
      name: row.name,
      finishedOn: row.finished_on,
      closeOut: closeOutOf(row.record),
    }));
}

/** What was kept when a job was finished; undefined while it is not. */
export function getFinished(
  db: ReadableDb,
  jobId: string,
): { readonly finishedOn: string; readonly closeOut: CloseOut } | undefined {
  const row = db.row(query.selectFrom('close_outs').selectAll().where('job_id', '=', jobId));
  return row === undefined ? undefined : { finishedOn: row.finished_on, closeOut: closeOutOf(row.record) };
}

/** Keeps what a job came to; finished once more, it takes the place of what was kept. */
export function putFinished(
  db: WritableDb,
  jobId: string,
  finished: { readonly finishedOn: string; readonly closeOut: CloseOut },
): void {
  const row = { finished_on: finished.finishedOn, record: JSON.stringify(finished.closeOut) };
  db.run(
    query
      .insertInto('close_outs')
      .values({ job_id: jobId, ...row })
      .onConflict((conflict) => conflict.column('job_id').doUpdateSet(row)),
  );
}

/** Takes a job up again; answers whether it was finished. */
export function dropFinished(db: WritableDb, jobId: string): boolean {
  return db.run(query.deleteFrom('close_outs').where('job_id', '=', jobId)) === 1;
}

/** Phases that are not learned from. */
export function listLeftOut(db: ReadableDb): LeftOut[] {
  return db
    .rows(query.selectFrom('left_out').selectAll().orderBy('job_id').orderBy('phase'))
    .map((row) => ({ jobId: row.job_id, phase: row.phase }));
}

/** Leaves a phase of a job out, or takes it in again. */
export function setLeftOut(db: WritableDb, { jobId, phase }: LeftOut, leftOut: boolean): void {
  db.run(query.deleteFrom('left_out').where('job_id', '=', jobId).where('phase', '=', phase));
  if (leftOut) db.run(query.insertInto('left_out').values({ job_id: jobId, phase }));
}

function closeOutOf(record: string): CloseOut {
  const kept = closeOutSchema.safeParse(JSON.parse(record));
  if (!kept.success) throw new DocumentDamaged('close-out');
  return kept.data;
}
