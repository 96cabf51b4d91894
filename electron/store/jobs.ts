import type { JobInfo } from '../../core/job/job-file.ts';
import { takeNumber } from './counters.ts';
import { dropCustomerWithoutJobs, getCustomer, settleCustomer } from './customers.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** A job's own row, with its customer. */
export type StoredJob = {
  readonly id: string;
  readonly info: JobInfo;
  readonly archived: boolean;
  readonly revision: number;
  readonly estimateOn: string | null;
};

export type JobSummary = {
  readonly id: string;
  readonly name: string;
  readonly customerName: string;
  readonly siteAddress: string;
  readonly archived: boolean;
  readonly changedOn: string;
  readonly lastEstimateUsd: string | null;
  readonly lastEstimateLacks: number;
};

/** What a write needs from outside: the day, and ids. */
export type Stamp = { readonly today: string; readonly newId: () => string };

/** Jobs, the last changed first. */
export function listJobs(db: ReadableDb, archived: boolean): JobSummary[] {
  const rows = db.rows(
    query
      .selectFrom('jobs')
      .leftJoin('customers', 'customers.id', 'jobs.customer_id')
      .select((eb) => [
        'jobs.id',
        'jobs.name',
        'jobs.site_address',
        'jobs.changed_on',
        'customers.name as customer_name',
        eb
          .selectFrom('estimates')
          .select('total_usd')
          .whereRef('estimates.job_id', '=', 'jobs.id')
          .orderBy('number', 'desc')
          .limit(1)
          .as('last_estimate_usd'),
        eb
          .selectFrom('estimates')
          .select('lacks')
          .whereRef('estimates.job_id', '=', 'jobs.id')
          .orderBy('number', 'desc')
          .limit(1)
          .as('last_estimate_lacks'),
      ])
      .where('archived', '=', archived ? 1 : 0)
      .orderBy('change_sequence', 'desc'),
  );
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    customerName: row.customer_name ?? '',
    siteAddress: row.site_address,
    archived,
    changedOn: row.changed_on,
    lastEstimateUsd: row.last_estimate_usd,
    lastEstimateLacks: row.last_estimate_lacks ?? 0,
  }));
}

/** A job by id. */
export function getJob(db: ReadableDb, id: string): StoredJob | undefined {
  const row = db.row(query.selectFrom('jobs').selectAll().where('id', '=', id));
  if (row === undefined) return undefined;
  return {
    id: row.id,
    info: {
      name: row.name,
      siteAddress: row.site_address,
      notes: row.notes,
      customer: getCustomer(db, row.customer_id),
    },
    archived: row.archived === 1,
    revision: row.revision,
    estimateOn: row.estimate_on,
  };
}

/** Adds a job at revision 0 and answers its id. */
export function addJob(db: WritableDb, info: JobInfo, estimateOn: string | null, stamp: Stamp): string {
  const id = stamp.newId();
  db.run(
    query.insertInto('jobs').values({
      id,
      customer_id: settleCustomer(db, null, info.customer, stamp.newId),
      name: info.name,
      site_address: info.siteAddress,
      notes: info.notes,
      archived: 0,
      revision: 0,
      change_sequence: takeNumber(db, 'change'),
      changed_on: stamp.today,
      estimate_on: estimateOn,
    }),
  );
  return id;
}

/** Writes what is given of a job's row and raises its revision by one; answers the new revision. */
export function changeJob(
  db: WritableDb,
  job: StoredJob,
  changes: { readonly info?: JobInfo | undefined; readonly estimateOn?: string | null | undefined },
  stamp: Stamp,
): number {
  const revision = job.revision + 1;
  db.run(
    query
      .updateTable('jobs')
      .set({ revision, change_sequence: takeNumber(db, 'change'), changed_on: stamp.today })
      .where('id', '=', job.id),
  );
  if (changes.estimateOn !== undefined) {
    db.run(query.updateTable('jobs').set({ estimate_on: changes.estimateOn }).where('id', '=', job.id));
  }
  if (changes.info !== undefined) changeInfo(db, job.id, changes.info, stamp.newId);
  return revision;
}

/** Puts a job away, or takes it out again; answers whether there is such a job. */
export function archiveJob(db: WritableDb, id: string, archived: boolean): boolean {
  return (
    db.run(
      query
        .updateTable('jobs')
        .set({ archived: archived ? 1 : 0 })
        .where('id', '=', id),
    ) === 1
  );
}

function changeInfo(db: WritableDb, id: string, info: JobInfo, newId: () => string): void {
  const before =
    db.row(query.selectFrom('jobs').select('customer_id').where('id', '=', id))?.customer_id ?? null;
  const after = settleCustomer(db, before, info.customer, newId);
  db.run(
    query
      .updateTable('jobs')
      .set({ name: info.name, site_address: info.siteAddress, notes: info.notes, customer_id: after })
      .where('id', '=', id),
  );
  if (before !== after) dropCustomerWithoutJobs(db, before);
}

/** The jobs of the customer whom a job is for, the job itself among them, in the order they were changed. */
export function jobsOfCustomer(
  db: ReadableDb,
  job: Pick<StoredJob, 'id'>,
): readonly { readonly id: string; readonly name: string }[] {
  const customer = db.row(query.selectFrom('jobs').select('customer_id').where('id', '=', job.id));
  const select = query.selectFrom('jobs').select(['id', 'name']).orderBy('change_sequence');
  return db.rows(
    customer?.customer_id == null
      ? select.where('id', '=', job.id)
      : select.where('customer_id', '=', customer.customer_id),
  );
}
