import { Decimal } from 'decimal.js';
import { plannedBills } from '../../core/billing/planned-bills.ts';
import type { BilledBefore, InvoiceFigures } from '../../core/billing/invoice.ts';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { countables } from '../../core/jobcost/countable.ts';
import { costPhases } from '../../core/jobcost/cost-phases.ts';
import { depositLimitUsd } from '../../core/offer/state-rules.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import { decimalText, sumUsd, type Usd, usd } from '../../core/units/money.ts';
import type { ReadableDb } from '../store/database.ts';
import type { StoredChange } from '../store/change-orders.ts';
import type { StoredInvoice } from '../store/invoices.ts';
import { getSettings } from '../store/settings.ts';
import { costsOfJob } from './costs-of-job.ts';
import { type JobMoney, moneyOfJob } from './job-money.ts';

/** What a bill is reckoned against: the ledger, and how far the last bill said the work was. */
export function billedBefore(money: JobMoney): BilledBefore {
  const { ledger } = money;
  return {
    depositUsd: ledger.depositUsd,
    otherUsd: usd(new Decimal(ledger.billedUsd).minus(ledger.depositUsd)),
    taxUsd: ledger.taxUsd,
    done: Object.fromEntries(
      (lastWork(money.invoices)?.parts ?? []).map(({ key, doneUsd, percent }) => [
        key,
        { usd: doneUsd, percent },
      ]),
    ),
  };
}

/** The rate of the tax that the client pays; 0 where he pays none. Rules are those of the accepted quote. [%] */
export function clientTaxPercent({ accepted }: JobMoney): string {
  const rules = accepted?.input.settings.money;
  return rules?.taxRule === 'client-pays' ? rules.taxPercent : '0';
}

/** The figures of the last bill that told how far the work was, unless all of it was credited. */
function lastWork(invoices: readonly StoredInvoice[]): InvoiceFigures | undefined {
  const credited = (number: number): Usd =>
    sumUsd(invoices.filter(({ credits }) => credits === number).map(({ amountUsd }) => amountUsd));
  const work = invoices.filter(
    ({ kind, number, amountUsd }) =>
      (kind === 'progress' || kind === 'final') && credited(number) !== amountUsd,
  );
  return (work.at(-1)?.record as { readonly figures: InvoiceFigures } | undefined)?.figures;
}

/** A change order as it is shown: without its paper, which is asked for by itself. */
function shownChange({ jobId: _jobId, sheet: _sheet, ...change }: StoredChange) {
  return change;
}

/** Gathers all that the billing part of a job shows. */
export function billingOfJob(
  db: ReadableDb,
  jobId: string,
  today: string,
): Result<CommandOutput<'billing.get'>, Problem> {
  const money = moneyOfJob(db, jobId, today);
  if (!money.ok) return money;
  const costs = costsOfJob(db, jobId, today);
  if (!costs.ok) return costs;
  const { accepted, contract, changes, invoices, payments, ledger } = money.value;
  const { settings } = getSettings(db);
  const last = lastWork(invoices);
  const percentOfPhase = new Map(
    costs.value.standing.phases.map(({ phase, percent }) => [`phase/${phase}`, percent]),
  );
  const countable: ReturnType<typeof countables> =
    accepted === null ? new Map() : countables(accepted.result.takeoff, settings.jobCost);
  const rule = settings.stateRules.find(({ id }) => id === accepted?.input.design.offer?.ruleId);
  return ok({
    today,
    phases: [...costPhases(settings.jobCost)],
    summary:
      contract === null
        ? null
        : {
            quotedUsd: contract.quotedUsd,
            changesUsd: sumUsd(contract.changes.map(({ priceUsd }) => priceUsd)),
            revisedUsd: contract.revisedUsd,
            billedUsd: ledger.billedUsd,
            retainedUsd: last?.retainedUsd ?? usd(0),
            toBillUsd: usd(new Decimal(contract.revisedUsd).minus(ledger.billedUsd)),
            taxUsd: ledger.taxUsd,
            paidUsd: ledger.paidUsd,
            balanceUsd: ledger.balanceUsd,
            aged: ledger.aged,
          },
    parts: (contract?.parts ?? []).map((part) => ({
      ...part,
      percentBilled: last?.parts.find(({ key }) => key === part.key)?.percent ?? decimalText(0),
      percentDone: percentOfPhase.get(part.key) ?? null,
      counted: countable.get(part.key.replace(/^phase\//, '')) ?? null,
    })),
    clientTaxPercent: clientTaxPercent(money.value),
    depositLimitUsd: accepted === null ? null : depositLimitUsd(rule, accepted.result.estimate.totalUsd),
    unitPrices: accepted?.input.design.offer?.unitPrices ?? [],
    planned:
      accepted === null
        ? []
        : [...plannedBills(accepted.input.design.offer?.payments ?? [], accepted.result.estimate)],
    changeOrders: changes.map(shownChange),
    invoices: invoices.map((invoice) => {
      const { record: _record, jobId: _jobId, ...kept } = invoice;
      const open = ledger.invoices.find(({ number }) => number === invoice.number);
      return {
        ...kept,
        creditedUsd: open?.creditedUsd ?? usd(0),
        paidUsd: open?.paidUsd ?? usd(0),
        openUsd: open?.openUsd ?? usd(0),
        daysPast: open?.daysPast ?? 0,
        age: open?.age ?? ('not-due' as const),
      };
    }),
    payments: [...payments],
    settings: {
      retainagePercent: settings.jobCost.retainagePercent,
      dueDays: settings.jobCost.dueDays,
    },
  });
}
