import { Decimal } from 'decimal.js';

/**
 * Mean and spread of percent differences: how far estimates are off on the whole, and how much they scatter.
 * Spread is the sample standard deviation, over n - 1; null of fewer than two (NIST/SEMATECH e-Handbook 1.3.5.6; from memory).
 * Worked: +10, -10, +30 -> mean 10, spread 20.
 * @param values - e.g. actual over estimated, less one. [%]
 * @returns to tenths half up; mean null of none. [%]
 */
export function meanAndSpread(values: readonly Decimal.Value[]): {
  readonly mean: Decimal | null;
  readonly spread: Decimal | null;
} {
  if (values.length === 0) return { mean: null, spread: null };
  const sum = values.reduce<Decimal>((total, value) => total.plus(value), new Decimal(0));
  const mean = sum.div(values.length);
  const squares = values.reduce<Decimal>(
    (total, value) => total.plus(new Decimal(value).minus(mean).pow(2)),
    new Decimal(0),
  );
  return {
    mean: tenths(mean),
    spread: values.length < 2 ? null : tenths(squares.div(values.length - 1).sqrt()),
  };
}

/**
 * What something took beyond what was reckoned. [%]
 * @returns to tenths half up, 12 of 10 -> 20; null where nothing was reckoned.
 */
export function overPercent(actual: Decimal.Value, reckoned: Decimal.Value): Decimal | null {
  const base = new Decimal(reckoned);
  return base.lte(0) ? null : tenths(new Decimal(actual).minus(base).div(base).times(100));
}

function tenths(value: Decimal): Decimal {
  return value.toDecimalPlaces(1, Decimal.ROUND_HALF_UP);
}
