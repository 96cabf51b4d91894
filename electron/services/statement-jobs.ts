import { Decimal } from 'decimal.js';
import type { StatementEntry, StatementJob } from '../../core/documents/statement-sheet.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import { usd } from '../../core/units/money.ts';
import type { ReadableDb } from '../store/database.ts';
import { jobsOfCustomer, type StoredJob } from '../store/jobs.ts';
import type { StoredInvoice } from '../store/invoices.ts';
import type { StoredPayment } from '../store/payments.ts';
import { moneyOfJob } from './job-money.ts';

/** Every job of the same client that anything was billed or paid on, with its papers and payments in the order of days. */
export function statementJobs(
  db: ReadableDb,
  job: StoredJob,
  day: string,
): Result<readonly StatementJob[], Problem> {
  const jobs: StatementJob[] = [];
  for (const { id, name } of jobsOfCustomer(db, job)) {
    const money = moneyOfJob(db, id, day);
    if (!money.ok) return money;
    const { invoices, payments, ledger } = money.value;
    if (invoices.length === 0 && payments.length === 0) continue;
    const entries = [...invoices.map(paperEntry), ...payments.map(paymentEntry)];
    jobs.push({ name, ledger, entries: entries.toSorted((a, b) => a.on.localeCompare(b.on)) });
  }
  return ok(jobs);
}

function paperEntry({ kind, number, credits, issuedOn, dueOn, totalUsd }: StoredInvoice): StatementEntry {
  return {
    on: issuedOn,
    what:
      kind === 'credit' ? `Credit ${number} for invoice ${credits ?? ''}` : `Invoice ${number}, due ${dueOn}`,
    amountUsd: totalUsd,
  };
}

function paymentEntry({ paidOn, amountUsd, how, takesBack }: StoredPayment): StatementEntry {
  const by = how.trim() === '' ? '' : `, ${how.trim()}`;
  return takesBack === null
    ? { on: paidOn, what: `Payment${by}`, amountUsd: usd(new Decimal(amountUsd).neg()) }
    : { on: paidOn, what: `Payment taken back${by}`, amountUsd };
}
