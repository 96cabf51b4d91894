import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText, type Usd, usd } from '../units/money.ts';

/** What is earned of a contract, beside what was billed. */
export type WorkInProgress = {
  /** cost / (cost + estimate to complete), to a tenth half up; 0 where nothing costs anything. [%] */
  readonly percentByCost: DecimalText;
  /** That share of the contract, exact share, rounded to cents. [$] */
  readonly earnedUsd: Usd;
  /** Billed less earned: above 0 billed ahead of the work, below 0 behind it. [$] */
  readonly overBilledUsd: Usd;
};

/**
 * Percentage of completion by cost, and whether a job is billed ahead of its work.
 * Source: percentage-of-completion accounting, cost-to-cost method (from memory of accounting textbooks).
 * Worked: contract 14,800; cost 5,200; to complete 5,000; billed 8,000 -> 51.0 %, earned 7,545.10, billed ahead by 454.90.
 */
export function workInProgress(job: {
  readonly contractUsd: Usd;
  readonly actualUsd: Usd;
  readonly toCompleteUsd: Usd;
  readonly billedUsd: Usd;
}): WorkInProgress {
  const atEnd = new Decimal(job.actualUsd).plus(job.toCompleteUsd);
  const share = atEnd.lte(0) ? new Decimal(0) : Decimal.max(0, new Decimal(job.actualUsd).div(atEnd));
  const earnedUsd = usd(share.times(job.contractUsd));
  return {
    percentByCost: decimalText(share.times(100).toDecimalPlaces(1, Decimal.ROUND_HALF_UP)),
    earnedUsd,
    overBilledUsd: usd(new Decimal(job.billedUsd).minus(earnedUsd)),
  };
}
