import type { InvoiceKind } from '../../core/billing/invoice.ts';
import type { LedgerPaper } from '../../core/billing/ledger.ts';
import { usd, type Usd } from '../../core/units/money.ts';
import { canonicalJson, sha256 } from './canonical-json.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** An issued invoice or credit. */
export type StoredInvoice = LedgerPaper & {
  readonly id: string;
  readonly jobId: string;
  readonly totalUsd: Usd;
  /** What was frozen: figures, and the sheet as data. */
  readonly record: unknown;
  /** False where it is not what was issued any more. */
  readonly intact: boolean;
};

/** What is frozen of a paper. */
export type FrozenInvoice = Omit<StoredInvoice, 'intact'> & { readonly record: object };

/** The papers of a job by number, each held against its hash and its own columns. */
export function listInvoices(db: ReadableDb, jobId: string): StoredInvoice[] {
  return db
    .rows(query.selectFrom('invoices').selectAll().where('job_id', '=', jobId).orderBy('number'))
    .map((row) => {
      const kept = JSON.parse(row.json) as Omit<FrozenInvoice, 'kind'> & { readonly kind: InvoiceKind };
      const same =
        kept.id === row.id &&
        kept.number === row.number &&
        kept.credits === row.credits &&
        kept.issuedOn === row.issued_on &&
        kept.kind === row.kind &&
        kept.jobId === row.job_id &&
        kept.totalUsd === row.total_usd &&
        kept.dueOn === row.due_on;
      return {
        id: row.id,
        jobId: row.job_id,
        number: row.number,
        kind: row.kind,
        credits: row.credits,
        issuedOn: row.issued_on,
        dueOn: row.due_on,
        amountUsd: usd(kept.amountUsd),
        taxUsd: usd(kept.taxUsd),
        totalUsd: usd(row.total_usd),
        record: kept.record,
        intact: same && sha256(row.json) === row.sha256,
      };
    });
}

/** One by id. */
export function getInvoice(db: ReadableDb, id: string): StoredInvoice | undefined {
  const row = db.row(query.selectFrom('invoices').select('job_id').where('id', '=', id));
  return row === undefined ? undefined : listInvoices(db, row.job_id).find((one) => one.id === id);
}

/** Freezes a paper under its number. */
export function addInvoice(db: WritableDb, invoice: FrozenInvoice): void {
  const json = canonicalJson(invoice);
  db.run(
    query.insertInto('invoices').values({
      number: invoice.number,
      id: invoice.id,
      job_id: invoice.jobId,
      kind: invoice.kind,
      credits: invoice.credits,
      issued_on: invoice.issuedOn,
      due_on: invoice.dueOn,
      total_usd: invoice.totalUsd,
      json,
      sha256: sha256(json),
    }),
  );
}

/** The highest number that was given; 0 before the first. */
export function lastInvoiceNumber(db: ReadableDb): number {
  const row = db.row(query.selectFrom('invoices').select(({ fn }) => fn.max('number').as('last')));
  return row?.last ?? 0;
}
