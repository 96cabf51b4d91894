import { Decimal } from 'decimal.js';
import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { decimalText, type DecimalText, sumUsd, usd, type Usd } from '../units/money.ts';
import type { ShopSettings } from './shop-settings.ts';

/** What the build-up starts from: sums of rounded lines. [$] */
export type CostSums = {
  readonly materialsUsd: Usd;
  readonly labourUsd: Usd;
  readonly otherUsd: Usd;
  /** The part of the materials that is taxed when bought. */
  readonly taxableMaterialsUsd: Usd;
};

/** From cost to price, every amount rounded to cents half up. [$] */
export type BuildUp = {
  readonly materialsTaxUsd: Usd;
  readonly directUsd: Usd;
  readonly contingencyUsd: Usd;
  readonly overheadUsd: Usd;
  /** Direct cost, contingency and overhead: what profit is reckoned on. */
  readonly fullCostUsd: Usd;
  readonly profitUsd: Usd;
  readonly roundingUsd: Usd;
  readonly priceUsd: Usd;
  readonly profitMarkupPercent: DecimalText;
  readonly profitMarginPercent: DecimalText;
  readonly grossMarkupPercent: DecimalText;
  readonly grossMarginPercent: DecimalText;
};

/**
 * Builds the price up from cost, in the order of the paper: materials tax where the contractor pays it, contingency on
 * direct cost, overhead on both, profit on all three, rounding.
 *
 * Markup u: price = cost (1 + u). Margin g: price = cost / (1 - g). Source: algebra; accounting
 * handbooks. Each step is rounded to cents half up before the next, so that the paper adds up by hand.
 * @param sums - sums of the rounded cost lines. [$]
 * @param money - the shop's money rules. [%]
 * @returns e.g. direct 8,156.60, contingency 8 % -> 652.53; at a margin of 33 % the price is 13,147.96; or
 * `margin-too-high` for a margin of 100 % or more.
 */
export function buildUp(sums: CostSums, money: ShopSettings['money']): Result<BuildUp, Problem> {
  const materialsTaxUsd =
    money.taxRule === 'contractor-pays' ? percentOf(sums.taxableMaterialsUsd, money.taxPercent) : usd(0);
  const directUsd = sumUsd([sums.materialsUsd, sums.labourUsd, sums.otherUsd, materialsTaxUsd]);
  const contingencyUsd = percentOf(directUsd, money.contingencyPercent);
  const overheadUsd = percentOf(sumUsd([directUsd, contingencyUsd]), money.overheadPercent);
  const fullCostUsd = sumUsd([directUsd, contingencyUsd, overheadUsd]);
  const profit = profitOn(fullCostUsd, money);
  if (!profit.ok) return profit;
  const profitUsd = profit.value;
  const beforeRounding = sumUsd([fullCostUsd, profitUsd]);
  const priceUsd = roundedUpTo(beforeRounding, money.roundToUsd);
  const gross = new Decimal(priceUsd).minus(directUsd);
  return ok({
    materialsTaxUsd,
    directUsd,
    contingencyUsd,
    overheadUsd,
    fullCostUsd,
    profitUsd,
    roundingUsd: usd(new Decimal(priceUsd).minus(beforeRounding)),
    priceUsd,
    profitMarkupPercent: shareOf(profitUsd, fullCostUsd),
    profitMarginPercent: shareOf(profitUsd, beforeRounding),
    grossMarkupPercent: shareOf(gross, directUsd),
    grossMarginPercent: shareOf(gross, priceUsd),
  });
}

/**
 * A percentage of an amount, rounded to cents half up, e.g. 7 % of 2,200.00 -> 154.00.
 * @param amount - base. [$]
 * @param percent - rate. [%]
 */
export function percentOf(amount: Usd, percent: string): Usd {
  return usd(new Decimal(amount).times(percent).div(100));
}

function profitOn(costUsd: Usd, money: ShopSettings['money']): Result<Usd, Problem> {
  if (money.profitMethod === 'markup') return ok(percentOf(costUsd, money.profitPercent));
  const left = new Decimal(100).minus(money.profitPercent);
  if (left.lte(0))
    return fail({
      code: 'margin-too-high',
      percent: money.profitPercent,
      field: 'settings.money.profitPercent',
    });
  const price = usd(new Decimal(costUsd).times(100).div(left));
  return ok(usd(new Decimal(price).minus(costUsd)));
}

function roundedUpTo(amount: Usd, multiple: string): Usd {
  const step = new Decimal(multiple);
  return step.isZero() ? amount : usd(new Decimal(amount).div(step).ceil().times(step));
}

/** A share in percent to 2 decimals half up; of nothing it is 0. */
function shareOf(part: Decimal.Value, whole: Usd): DecimalText {
  const base = new Decimal(whole);
  return base.isZero()
    ? decimalText(0)
    : decimalText(new Decimal(part).times(100).div(base).toDecimalPlaces(2, Decimal.ROUND_HALF_UP));
}
