import type { LedgerPayment } from '../../core/billing/ledger.ts';
import { usd } from '../../core/units/money.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

export type StoredPayment = LedgerPayment & {
  readonly sequence: number;
  readonly how: string;
  readonly note: string;
};

/** The payments of a job, and what was taken back of them, in the order they were entered. */
export function listPayments(db: ReadableDb, jobId: string): StoredPayment[] {
  return db
    .rows(query.selectFrom('payments').selectAll().where('job_id', '=', jobId).orderBy('sequence'))
    .map((row) => ({
      id: row.id,
      sequence: row.sequence,
      paidOn: row.paid_on,
      amountUsd: usd(row.amount_usd),
      how: row.how,
      note: row.note,
      takesBack: row.takes_back,
    }));
}

/** The job of a payment; undefined where there is none of that id. */
export function jobOfPayment(db: ReadableDb, id: string): string | undefined {
  return db.row(query.selectFrom('payments').select('job_id').where('id', '=', id))?.job_id;
}

/** Adds a payment, or a row that takes one back. */
export function addPayment(db: WritableDb, jobId: string, payment: Omit<StoredPayment, 'sequence'>): void {
  db.run(
    query.insertInto('payments').values({
      id: payment.id,
      job_id: jobId,
      sequence: takeNumber(db, 'payment'),
      paid_on: payment.paidOn,
      amount_usd: payment.amountUsd,
      how: payment.how,
      note: payment.note,
      takes_back: payment.takesBack,
    }),
  );
}
