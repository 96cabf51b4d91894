import type { KeptTime } from '../../core/jobcost/cost-entries.ts';
import { decimalText, usd } from '../../core/units/money.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** The hours of a job, every entry ever made, in the order they were entered. */
export function listTimes(db: ReadableDb, jobId: string): KeptTime[] {
  return db
    .rows(query.selectFrom('time_entries').selectAll().where('job_id', '=', jobId).orderBy('sequence'))
    .map((row) => ({
      id: row.id,
      sequence: row.sequence,
      enteredOn: row.entered_on,
      replaces: row.replaces,
      takesBack: row.takes_back === 1,
      person: row.person,
      workedOn: row.worked_on,
      phase: row.phase,
      hours: row.hours,
      note: row.note,
      rateUsd: decimalText(row.rate_usd),
      costUsd: usd(row.cost_usd),
    }));
}

/** An entry of hours and the job it belongs to. */
export function getTime(db: ReadableDb, id: string): { readonly jobId: string } | undefined {
  const row = db.row(query.selectFrom('time_entries').select('job_id').where('id', '=', id));
  return row === undefined ? undefined : { jobId: row.job_id };
}

/** Adds an entry of hours; earlier ones are never changed. */
export function addTime(db: WritableDb, jobId: string, time: KeptTime): void {
  db.run(
    query.insertInto('time_entries').values({
      id: time.id,
      job_id: jobId,
      sequence: time.sequence,
      entered_on: time.enteredOn,
      replaces: time.replaces,
      takes_back: time.takesBack ? 1 : 0,
      person: time.person,
      worked_on: time.workedOn,
      phase: time.phase,
      hours: time.hours,
      note: time.note,
      rate_usd: time.rateUsd,
      cost_usd: time.costUsd,
    }),
  );
}

/** Every hour that each person worked on a day, on all jobs, corrected entries left out. [h] */
export function hoursOfDay(
  db: ReadableDb,
  day: string,
): readonly { person: string; hours: string; id: string }[] {
  return db.rows(
    query
      .selectFrom('time_entries as entry')
      .select(['entry.person', 'entry.hours', 'entry.id'])
      .where('entry.worked_on', '=', day)
      .where('entry.takes_back', '=', 0)
      .where((eb) =>
        eb.not(
          eb.exists(
            eb
              .selectFrom('time_entries as later')
              .select('later.id')
              .whereRef('later.replaces', '=', 'entry.id'),
          ),
        ),
      ),
  );
}
