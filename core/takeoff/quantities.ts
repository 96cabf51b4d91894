import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText } from '../units/money.ts';

/**
 * Rounds a quantity to hundredths, half up: how running feet, square feet and hours are printed and summed.
 * @param amount - any unit.
 * @returns e.g. 22.365 -> `22.37`. [same unit]
 */
export function hundredths(amount: Decimal.Value): DecimalText {
  return decimalText(new Decimal(amount).toDecimalPlaces(2, Decimal.ROUND_HALF_UP));
}

/**
 * Rounds a quantity up to hundredths, so that what is bought by it never falls short; forgives binary dust.
 * @param amount - any unit.
 * @returns e.g. 3.1201 -> `3.13`. [same unit]
 */
export function hundredthsUp(amount: Decimal.Value): DecimalText {
  const forgiven = new Decimal(amount).toDecimalPlaces(9, Decimal.ROUND_HALF_UP);
  return decimalText(forgiven.toDecimalPlaces(2, Decimal.ROUND_UP));
}

/**
 * Adds an allowance to a count and rounds up to whole things.
 * Source: quantity x (1 + allowance), as US Army EN0069A, "Frame Structures": 6000 nails and 20 % -> 7200.
 * @param count - net count.
 * @param percent - allowance. [%]
 * @returns whole things, rounded up.
 */
export function withAllowance(count: number, percent: number): number {
  return new Decimal(count).times(new Decimal(percent).plus(100)).div(100).ceil().toNumber();
}

/** Adds decimals exactly. */
export function sumDecimals(amounts: Iterable<Decimal.Value>): Decimal {
  let sum = new Decimal(0);
  for (const amount of amounts) sum = sum.plus(amount);
  return sum;
}
