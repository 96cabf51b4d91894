import { Decimal } from 'decimal.js';
import { type DecimalText, sumUsd, type Usd, usd } from '../../units/money.ts';
import type { Ledger } from '../../billing/ledger.ts';
import type { Standing } from '../standing.ts';
import { workInProgress } from '../work-in-progress.ts';
import { marginPercent } from './job-outcome.ts';

/** Where the money of one job stands, in one line. Before tax unless it says otherwise. */
export type JobMoneyLine = {
  readonly quotedUsd: Usd;
  readonly changesUsd: Usd;
  readonly contractUsd: Usd;
  readonly billedUsd: Usd;
  /** With tax. [$] */
  readonly paidUsd: Usd;
  readonly owedUsd: Usd;
  readonly budgetUsd: Usd;
  readonly costUsd: Usd;
  readonly forecastUsd: Usd;
  readonly plannedMarginPercent: DecimalText | null;
  readonly expectedMarginPercent: DecimalText | null;
  readonly earnedUsd: Usd;
  readonly overBilledUsd: Usd;
};

/**
 * Puts a job's contract, ledger and standing into one line; earned and billed ahead as in `workInProgress`.
 * @param contract - accepted price, approved changes, both. [$]
 * @param budgetUsd - direct cost as reckoned, changes in it. [$]
 * @param whole - where the job stands. [$]
 */
export function jobMoneyLine(
  contract: Pick<JobMoneyLine, 'quotedUsd' | 'changesUsd' | 'contractUsd'>,
  ledger: Pick<Ledger, 'billedUsd' | 'paidUsd' | 'balanceUsd'>,
  budgetUsd: Usd,
  whole: Pick<Standing['whole'], 'actualUsd' | 'forecastUsd'>,
): JobMoneyLine {
  const { earnedUsd, overBilledUsd } = workInProgress({
    contractUsd: contract.contractUsd,
    actualUsd: whole.actualUsd,
    toCompleteUsd: usd(new Decimal(whole.forecastUsd).minus(whole.actualUsd)),
    billedUsd: ledger.billedUsd,
  });
  return withMargins({
    ...contract,
    billedUsd: ledger.billedUsd,
    paidUsd: ledger.paidUsd,
    owedUsd: ledger.balanceUsd,
    budgetUsd,
    costUsd: whole.actualUsd,
    forecastUsd: whole.forecastUsd,
    earnedUsd,
    overBilledUsd,
  });
}

/** Adds up the lines of jobs; the margins are those of the sums. [$, %] */
export function shopTotals(lines: readonly JobMoneyLine[]): JobMoneyLine {
  const sum = (pick: (line: JobMoneyLine) => Usd): Usd => sumUsd(lines.map(pick));
  return withMargins({
    quotedUsd: sum((line) => line.quotedUsd),
    changesUsd: sum((line) => line.changesUsd),
    contractUsd: sum((line) => line.contractUsd),
    billedUsd: sum((line) => line.billedUsd),
    paidUsd: sum((line) => line.paidUsd),
    owedUsd: sum((line) => line.owedUsd),
    budgetUsd: sum((line) => line.budgetUsd),
    costUsd: sum((line) => line.costUsd),
    forecastUsd: sum((line) => line.forecastUsd),
    earnedUsd: sum((line) => line.earnedUsd),
    overBilledUsd: sum((line) => line.overBilledUsd),
  });
}

function withMargins(
  line: Omit<JobMoneyLine, 'plannedMarginPercent' | 'expectedMarginPercent'>,
): JobMoneyLine {
  const left = (cost: Usd): Decimal => new Decimal(line.contractUsd).minus(cost);
  return {
    ...line,
    plannedMarginPercent: marginPercent(left(line.budgetUsd), line.contractUsd),
    expectedMarginPercent: marginPercent(left(line.forecastUsd), line.contractUsd),
  };
}
