import type { ContractSum } from '../../core/billing/contract-sum.ts';
import { type Budget, budgetOf } from '../../core/jobcost/budget.ts';
import type { KeptBill, KeptTime } from '../../core/jobcost/cost-entries.ts';
import { costPhases } from '../../core/jobcost/cost-phases.ts';
import { countables } from '../../core/jobcost/countable.ts';
import { type Standing, standingOf } from '../../core/jobcost/standing.ts';
import type { JobCostSettings } from '../../core/pricing/shop-settings.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import { listBills } from '../store/bills.ts';
import type { ReadableDb } from '../store/database.ts';
import { getSettings } from '../store/settings.ts';
import { listTimes } from '../store/time-entries.ts';
import type { AcceptedQuote } from './accepted-quote.ts';
import { type JobMoney, moneyOfJob } from './job-money.ts';
import { progressOfJob } from './progress-of-job.ts';

/** A job under contract, with all that it costs. */
export type StandingJob = {
  readonly money: JobMoney;
  readonly accepted: AcceptedQuote;
  readonly contract: ContractSum;
  readonly budget: Budget;
  readonly standing: Standing;
  readonly times: readonly KeptTime[];
  readonly bills: readonly KeptBill[];
  readonly jobCost: JobCostSettings;
};

/**
 * Gathers where a job under contract stands; null while no quote is accepted.
 * @param day - that ages are reckoned on.
 */
export function standingOfJob(
  db: ReadableDb,
  jobId: string,
  day: string,
): Result<StandingJob | null, Problem> {
  const money = moneyOfJob(db, jobId, day);
  if (!money.ok) return money;
  const { accepted, contract, approved } = money.value;
  if (accepted === null || contract === null) return ok(null);
  const { jobCost } = getSettings(db).settings;
  const budget = budgetOf(accepted.result.estimate, approved, jobCost);
  const times = listTimes(db, jobId);
  const bills = listBills(db, jobId);
  const countable = countables(accepted.result.takeoff, jobCost);
  const standing = standingOf(
    budget,
    times,
    bills,
    progressOfJob(db, jobId, countable),
    costPhases(jobCost),
    countable,
  );
  return ok({ money: money.value, accepted, contract, budget, standing, times, bills, jobCost });
}
