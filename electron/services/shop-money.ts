import { Decimal } from 'decimal.js';
import { agedOf, type Ledger, ledgerOf } from '../../core/billing/ledger.ts';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { jobMoneyLine, type JobMoneyLine, shopTotals } from '../../core/jobcost/learning/shop-totals.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { daysBetween } from '../../core/units/civil-date.ts';
import { sumUsd, usd } from '../../core/units/money.ts';
import type { ReadableDb } from '../store/database.ts';
import { getFinished } from '../store/finished-jobs.ts';
import { listInvoices, type StoredInvoice } from '../store/invoices.ts';
import { listJobs } from '../store/jobs.ts';
import { listPayments } from '../store/payments.ts';
import { listWaitingQuotes } from '../store/waiting-quotes.ts';
import { standingOfJob } from './standing-of-job.ts';

type ShopMoney = CommandOutput<'money.shop'>;

/** The money of one job, with its papers. */
type JobLine = {
  readonly line: JobMoneyLine;
  readonly ledger: Ledger;
  readonly invoices: readonly StoredInvoice[];
  readonly finishedOn: string | null;
};

/**
 * Gathers the money of every job with a contract, and what waits to be answered or paid. A job that is put away is left out,
 * unless its client still owes something.
 */
export function shopMoney(db: ReadableDb, today: string): Result<ShopMoney, Problem> {
  const jobs: (ShopMoney['jobs'][number] & { readonly line: JobMoneyLine })[] = [];
  const open: ShopMoney['invoices'] = [];
  const owing = listJobs(db, true).filter(({ id }) => owes(db, id, today));
  for (const { id: jobId, name, customerName } of [...listJobs(db, false), ...owing]) {
    const found = jobLine(db, jobId, today);
    if (!found.ok) return found;
    if (found.value === null) continue;
    const { line, ledger, invoices, finishedOn } = found.value;
    jobs.push({ jobId, name, customerName, finishedOn, line, ...line });
    const dueOn = new Map(invoices.map((invoice) => [invoice.number, invoice.dueOn]));
    for (const { number, openUsd, daysPast, age } of ledger.invoices)
      if (Number(openUsd) > 0)
        open.push({
          jobId,
          jobName: name,
          number,
          dueOn: dueOn.get(number) ?? today,
          openUsd,
          daysPast,
          age,
        });
  }
  const working = jobs.filter(({ finishedOn }) => finishedOn === null).map(({ line }) => line);
  const { quotedUsd: _quoted, ...totals } = shopTotals(working);
  return ok({
    today,
    jobs: jobs.map(({ line: _line, ...job }) => job),
    totals,
    quotes: listWaitingQuotes(db).map((quote) => ({
      ...quote,
      daysLeft: daysBetween(today, quote.validUntil),
    })),
    invoices: open.toSorted((a, b) => b.daysPast - a.daysPast || a.number - b.number),
    aged: agedOf(open.map(({ age, openUsd }) => ({ age, openUsd: usd(openUsd) }))),
  });
}

function owes(db: ReadableDb, jobId: string, today: string): boolean {
  return Number(ledgerOf(listInvoices(db, jobId), listPayments(db, jobId), today).balanceUsd) > 0;
}

/** Of a finished job what was kept then, so that its quote is not read again; null of one without a contract. */
function jobLine(db: ReadableDb, jobId: string, today: string): Result<JobLine | null, Problem> {
  const finished = getFinished(db, jobId);
  if (finished === undefined) {
    const found = standingOfJob(db, jobId, today);
    if (!found.ok) return found;
    if (found.value === null) return ok(null);
    const { contract, money, budget, standing } = found.value;
    const sums = {
      quotedUsd: contract.quotedUsd,
      changesUsd: sumUsd(contract.changes.map(({ priceUsd }) => priceUsd)),
      contractUsd: contract.revisedUsd,
    };
    const line = jobMoneyLine(sums, money.ledger, budget.directUsd, standing.whole);
    return ok({ line, ledger: money.ledger, invoices: money.invoices, finishedOn: null });
  }
  const invoices = listInvoices(db, jobId);
  if (invoices.some(({ intact }) => !intact)) return fail({ code: 'shop-file-damaged' });
  const ledger = ledgerOf(invoices, listPayments(db, jobId), today);
  const { contractUsd, changesUsd, budgetUsd, actualUsd } = finished.closeOut.figures;
  const sums = {
    quotedUsd: usd(new Decimal(contractUsd).minus(changesUsd)),
    changesUsd: usd(changesUsd),
    contractUsd: usd(contractUsd),
  };
  const whole = { actualUsd: usd(actualUsd), forecastUsd: usd(actualUsd) };
  const line = jobMoneyLine(sums, ledger, usd(budgetUsd), whole);
  return ok({ line, ledger, invoices, finishedOn: finished.finishedOn });
}
