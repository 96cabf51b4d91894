import type { ApprovedChange } from '../../core/jobcost/budget.ts';
import { contractSum, type ContractSum } from '../../core/billing/contract-sum.ts';
import { type Ledger, ledgerOf } from '../../core/billing/ledger.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { listChanges, type StoredChange } from '../store/change-orders.ts';
import type { ReadableDb } from '../store/database.ts';
import { listInvoices, type StoredInvoice } from '../store/invoices.ts';
import { listPayments, type StoredPayment } from '../store/payments.ts';
import { getSettings } from '../store/settings.ts';
import { type AcceptedQuote, acceptedQuote } from './accepted-quote.ts';

/** A job's contract and what was billed and paid of it; the contract is null while no quote is accepted. */
export type JobMoney = {
  readonly accepted: AcceptedQuote | null;
  readonly contract: ContractSum | null;
  readonly changes: readonly StoredChange[];
  readonly approved: readonly ApprovedChange[];
  readonly invoices: readonly StoredInvoice[];
  readonly payments: readonly StoredPayment[];
  readonly ledger: Ledger;
};

/**
 * Gathers a job's money with the client.
 * @param day - that ages are reckoned on.
 * @returns or `shop-file-damaged`, where what was accepted, approved or issued is not what it was.
 */
export function moneyOfJob(db: ReadableDb, jobId: string, day: string): Result<JobMoney, Problem> {
  const accepted = acceptedQuote(db, jobId) ?? null;
  const changes = listChanges(db, jobId);
  const invoices = listInvoices(db, jobId);
  const settled = changes.filter(({ state }) => state === 'approved');
  if ([...settled, ...invoices, ...(accepted === null ? [] : [accepted])].some(({ intact }) => !intact))
    return fail({ code: 'shop-file-damaged' });
  const payments = listPayments(db, jobId);
  const approved = settled.map(({ number, order }) => ({ number, order }));
  return ok({
    accepted,
    contract:
      accepted === null
        ? null
        : contractSum(accepted.result.estimate, approved, getSettings(db).settings.jobCost),
    changes,
    approved,
    invoices,
    payments,
    ledger: ledgerOf(invoices, payments, day),
  });
}
