import { billSchema, billTotalUsd, type KeptBill } from '../../core/jobcost/cost-entries.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { DocumentDamaged } from './documents.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

/** The receipts, orders, bills and returns of a job, every one ever entered, in order. */
export function listBills(db: ReadableDb, jobId: string): KeptBill[] {
  return db
    .rows(query.selectFrom('bills').selectAll().where('job_id', '=', jobId).orderBy('sequence'))
    .map(billOf);
}

/** One of them and the job that it belongs to. */
export function getBill(
  db: ReadableDb,
  id: string,
): { readonly jobId: string; readonly kept: KeptBill } | undefined {
  const row = db.row(query.selectFrom('bills').selectAll().where('id', '=', id));
  return row === undefined ? undefined : { jobId: row.job_id, kept: billOf(row) };
}

/** Adds one; earlier ones are never changed. */
export function addBill(db: WritableDb, jobId: string, kept: KeptBill): void {
  db.run(
    query.insertInto('bills').values({
      id: kept.id,
      job_id: jobId,
      sequence: kept.sequence,
      entered_on: kept.enteredOn,
      replaces: kept.replaces,
      takes_back: kept.takesBack ? 1 : 0,
      total_usd: billTotalUsd(kept.bill),
      record: JSON.stringify(kept.bill),
    }),
  );
}

function billOf(row: Schema['bills']): KeptBill {
  const bill = billSchema.safeParse(JSON.parse(row.record));
  if (!bill.success) throw new DocumentDamaged(`bill ${row.id}`);
  return {
    id: row.id,
    sequence: row.sequence,
    enteredOn: row.entered_on,
    replaces: row.replaces,
    takesBack: row.takes_back === 1,
    bill: bill.data,
  };
}
