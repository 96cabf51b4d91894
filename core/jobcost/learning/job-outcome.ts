import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText, sumUsd, type Usd, usd } from '../../units/money.ts';
import type { CloseOut } from './finished-job.ts';

/** What a finished job earned. */
export type JobOutcome = {
  readonly contractUsd: Usd;
  /** Contract less direct cost, and as a share of the contract: as reckoned, and as it came. [$, %] */
  readonly plannedMarginUsd: Usd;
  readonly plannedMarginPercent: DecimalText | null;
  readonly madeMarginUsd: Usd;
  readonly madeMarginPercent: DecimalText | null;
  /** Hours of the owner; and what each of them earned before and after the overhead of the price. [h, $/h] */
  readonly ownerHours: DecimalText;
  readonly ownerHourUsd: Usd | null;
  readonly ownerHourAfterOverheadUsd: Usd | null;
};

/**
 * Says what a finished job earned.
 *
 * Margin = (contract - direct cost) / contract, to tenths of a percent half up. An hour of the owner earned (contract - all
 * that was spent but his own hours) / his hours, rounded to cents half up; after overhead, the overhead of the accepted
 * price is taken off too. Common practice, no source.
 * Worked: contract 14,800, spent 10,400 of which 1,836 are 40 h of the owner: (14,800 - 8,564) / 40 = $155.90 an hour.
 */
export function jobOutcome({ words, figures }: CloseOut): JobOutcome {
  const contract = new Decimal(figures.contractUsd);
  const planned = contract.minus(figures.budgetUsd);
  const made = contract.minus(figures.actualUsd);
  const own = figures.people.filter(({ person }) => person === words.owner);
  const ownerHours = own.reduce((sum, { hours }) => sum.plus(hours), new Decimal(0));
  const ownCost = sumUsd(own.map(({ costUsd }) => usd(costUsd)));
  const earned = made.plus(ownCost);
  const perHour = (amount: Decimal): Usd | null => (ownerHours.lte(0) ? null : usd(amount.div(ownerHours)));
  return {
    contractUsd: usd(contract),
    plannedMarginUsd: usd(planned),
    plannedMarginPercent: marginPercent(planned, contract),
    madeMarginUsd: usd(made),
    madeMarginPercent: marginPercent(made, contract),
    ownerHours: decimalText(ownerHours),
    ownerHourUsd: perHour(earned),
    ownerHourAfterOverheadUsd: perHour(earned.minus(figures.overheadUsd)),
  };
}

/** What is left of a price, as a share of it, to tenths half up; null of nothing. [%] */
export function marginPercent(left: Decimal.Value, price: Decimal.Value): DecimalText | null {
  const whole = new Decimal(price);
  return whole.lte(0)
    ? null
    : decimalText(new Decimal(left).div(whole).times(100).toDecimalPlaces(1, Decimal.ROUND_HALF_UP));
}
