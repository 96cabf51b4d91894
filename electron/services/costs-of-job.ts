import { Decimal } from 'decimal.js';
import { costKinds } from '../../core/billing/change-order.ts';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { budgetOf } from '../../core/jobcost/budget.ts';
import { openOrders } from '../../core/jobcost/committed.ts';
import { billTotalUsd, type KeptBill, standingEntries } from '../../core/jobcost/cost-entries.ts';
import { costPhaseOf, costPhases } from '../../core/jobcost/cost-phases.ts';
import { countables } from '../../core/jobcost/countable.ts';
import { costOfLines } from '../../core/jobcost/spread-tax.ts';
import { standingOf } from '../../core/jobcost/standing.ts';
import { workInProgress } from '../../core/jobcost/work-in-progress.ts';
import type { JobCostSettings } from '../../core/pricing/shop-settings.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import { decimalText, sumUsd, usd } from '../../core/units/money.ts';
import { listAttachments } from '../store/attachments.ts';
import { listBills } from '../store/bills.ts';
import { closedOn } from '../store/close-outs.ts';
import type { ReadableDb } from '../store/database.ts';
import { listProgress } from '../store/progress.ts';
import { getSettings } from '../store/settings.ts';
import { listTimes } from '../store/time-entries.ts';
import type { AcceptedQuote } from './accepted-quote.ts';
import { moneyOfJob } from './job-money.ts';
import { framedInPlace, progressOfJob } from './progress-of-job.ts';

/** Gathers what a job costs against its budget, with every entry ever made. */
export function costsOfJob(
  db: ReadableDb,
  jobId: string,
  today: string,
): Result<CommandOutput<'costs.get'>, Problem> {
  const money = moneyOfJob(db, jobId, today);
  if (!money.ok) return money;
  const { accepted, contract, approved, ledger } = money.value;
  const { jobCost } = getSettings(db).settings;
  const estimate = accepted?.result.estimate ?? { lines: [], totals: [] };
  const budget = budgetOf(estimate, approved, jobCost);
  const times = listTimes(db, jobId);
  const bills = listBills(db, jobId);
  const progress = listProgress(db, jobId);
  const countable = accepted === null ? new Map() : countables(accepted.result.takeoff, jobCost);
  const standing = standingOf(
    budget,
    times,
    bills,
    progressOfJob(db, jobId, countable),
    costPhases(jobCost),
    countable,
  );
  const { whole } = standing;
  const spent = standingEntries(bills).filter(({ bill }) => bill.kind !== 'order');
  const spentByKind = spent.flatMap(({ bill }) => {
    const costs = costOfLines(bill);
    return bill.lines.map(({ kind }, index) => ({ kind, costUsd: costs[index] ?? usd(0) }));
  });
  const inPlace = framedInPlace(db, jobId);
  return ok({
    today,
    phases: [...costPhases(jobCost)],
    people: jobCost.people.map(({ name }) => name),
    contract:
      accepted === null || contract === null
        ? null
        : {
            quoteNumber: accepted.number,
            revision: accepted.revision,
            acceptedOn: accepted.decidedOn ?? accepted.madeOn,
            priceUsd: contract.quotedUsd,
            changesUsd: sumUsd(contract.changes.map(({ priceUsd }) => priceUsd)),
          },
    contingencyUsd: budget.contingencyUsd,
    standing: { phases: [...standing.phases], whole },
    byKind: costKinds.map((kind) => ({
      kind,
      budgetUsd: sumUsd(budget.lines.filter((line) => line.kind === kind).map(({ costUsd }) => costUsd)),
      actualUsd: sumUsd([
        ...(kind === 'labour' ? standingEntries(times).map(({ costUsd }) => costUsd) : []),
        ...spentByKind.filter((line) => line.kind === kind).map(({ costUsd }) => costUsd),
      ]),
    })),
    countable: [...countable].map(([phase, one]) => ({
      phase,
      ...one,
      inPlace: one.unit === 'tails' && inPlace > 0 ? decimalText(inPlace) : null,
    })),
    progress,
    times,
    bills: bills.map((kept) => ({ ...kept, totalUsd: billTotalUsd(kept.bill) })),
    openOrders: openOrders(bills).map(({ order, receivedUsd, openUsd }) => ({
      id: order.id,
      receivedUsd,
      openUsd,
    })),
    purchaseLines: accepted === null ? [] : purchaseLines(accepted, spent, jobCost),
    attachments: listAttachments(db, jobId).map(({ id, name, addedOn, bytes }) => ({
      id,
      name,
      addedOn,
      bytes,
    })),
    earned: {
      contractUsd: contract?.revisedUsd ?? usd(0),
      billedUsd: ledger.billedUsd,
      ...workInProgress({
        contractUsd: contract?.revisedUsd ?? usd(0),
        actualUsd: whole.actualUsd,
        toCompleteUsd: usd(new Decimal(whole.forecastUsd).minus(whole.actualUsd)),
        billedUsd: ledger.billedUsd,
      }),
    },
    finishedOn: closedOn(db, jobId),
  });
}

/** What the accepted estimate buys, with what came of it on receipts and returns. */
function purchaseLines(
  { result, input }: AcceptedQuote,
  spent: readonly KeptBill[],
  settings: JobCostSettings,
): CommandOutput<'costs.get'>['purchaseLines'] {
  const known = new Set(input.priceList.map(({ id }) => id));
  return result.estimate.lines
    .filter(({ kind }) => kind === 'material')
    .map((line) => {
      const itemRef = line.madeOf.find(({ ref }) => ref?.startsWith('price/'))?.ref?.slice('price/'.length);
      return {
        costLineId: line.id,
        itemId: itemRef !== undefined && known.has(itemRef) ? itemRef : null,
        phase: costPhaseOf(settings, line.phase),
        description: line.description,
        supplier: line.supplier,
        quantity: line.quantity,
        unit: line.unit,
        unitCostUsd: line.unitCostUsd,
        costUsd: line.costUsd,
        boughtUsd: sumUsd(
          spent.flatMap(({ bill }) =>
            bill.lines
              .filter(({ costLineId }) => costLineId === line.id)
              .map(({ amountUsd }) => usd(amountUsd)),
          ),
        ),
      };
    });
}
