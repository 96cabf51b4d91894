import { Decimal } from 'decimal.js';
import { usd, type Usd } from '../../units/money.ts';
import { type CostStep, type PriceRisk, priceRisk } from './price-risk.ts';

/** What a job can carry of a rise of its materials. */
export type RiskCarried = {
  /** What the materials cost now. [$] */
  readonly materialsUsd: Usd;
  /** What the estimate sets aside for the unexpected. [$] */
  readonly contingencyUsd: Usd;
  /** How long the quote is to stay open. [d] */
  readonly validDays: number;
};

/** What the history says of keeping a price open so long, and what could be done. */
export type ValidityAdvice =
  | { readonly kind: 'too-little'; readonly risk: Extract<PriceRisk, { kind: 'too-little' }> }
  | {
      readonly kind: 'known';
      readonly risk: Extract<PriceRisk, { kind: 'known' }>;
      /** What the 90th percentile of the rise would cost; nothing where prices fell. [$] */
      readonly highUsd: Usd;
      /** The contingency carries it. */
      readonly isCarried: boolean;
      /** The longest shorter time for which the contingency carries it; null where it does already, or never. [d] */
      readonly shorterDays: number | null;
      /** A rise that the contingency just carries, whole percent, rounded down and at least 1: the trigger for a clause. [%] */
      readonly triggerPercent: string;
    };

/**
 * Holds what prices did against what the job sets aside: where a rise that one window in ten passed costs more than the
 * contingency, the longest shorter time that is carried, and the trigger for a clause that passes the rest on (common practice,
 * no source: contingency is meant for the unexpected as a whole, so this uses all of it).
 * Worked: materials of $2,000.00, 90th percentile 6.0 % -> $120.00; a contingency of $90.00 does not carry it, and carries
 * 4.5 %, so the trigger is 4 %.
 * @param steps - what the materials cost, earliest first. [$]
 * @param asOf - last day of the history looked at.
 */
export function validityAdvice(
  steps: readonly CostStep[],
  asOf: string,
  carried: RiskCarried,
): ValidityAdvice {
  const risk = priceRisk(steps, asOf, carried.validDays);
  if (risk.kind === 'too-little') return { kind: 'too-little', risk };
  const highUsd = costOf(risk, carried);
  const isCarried = new Decimal(highUsd).lte(carried.contingencyUsd);
  return {
    kind: 'known',
    risk,
    highUsd,
    isCarried,
    shorterDays: isCarried ? null : longestCarried(steps, asOf, carried),
    triggerPercent: triggerOf(carried),
  };
}

function costOf(risk: Extract<PriceRisk, { kind: 'known' }>, { materialsUsd }: RiskCarried): Usd {
  return usd(Decimal.max(0, new Decimal(materialsUsd).times(risk.highPercent).div(100)));
}

function longestCarried(steps: readonly CostStep[], asOf: string, carried: RiskCarried): number | null {
  for (let days = carried.validDays - 1; days >= 1; days -= 1) {
    const risk = priceRisk(steps, asOf, days);
    if (risk.kind === 'known' && new Decimal(costOf(risk, carried)).lte(carried.contingencyUsd)) return days;
  }
  return null;
}

function triggerOf({ materialsUsd, contingencyUsd }: RiskCarried): string {
  if (new Decimal(materialsUsd).isZero()) return '1';
  const percent = new Decimal(contingencyUsd).div(materialsUsd).times(100).floor();
  return Decimal.max(1, percent).toFixed(0);
}
