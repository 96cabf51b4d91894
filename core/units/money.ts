import { Decimal } from 'decimal.js';

/** US dollars and cents as decimal text with two places, e.g. `12.30`: how money travels and is stored. */
export type Usd = string & { readonly __unit: 'usd' };

/** An exact decimal as text, e.g. a price of `0.0725` a nail or a quantity of `33.5`. */
export type DecimalText = string & { readonly __unit: 'decimal' };

/** Zero dollars. */
export const zeroUsd = '0.00' as Usd;

/** Rounds an exact amount to cents, half up (away from zero), e.g. 1.005 -> `1.01`. */
export function usd(amount: Decimal.Value): Usd {
  const cents = new Decimal(amount).toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
  return (cents.isZero() ? zeroUsd : cents.toFixed(2)) as Usd;
}

/** Writes an exact decimal as plain text without exponent. */
export function decimalText(amount: Decimal.Value): DecimalText {
  return new Decimal(amount).toFixed() as DecimalText;
}

/** Adds amounts that are already rounded to cents, exactly. */
export function sumUsd(amounts: Iterable<Usd>): Usd {
  let sum = new Decimal(0);
  for (const amount of amounts) sum = sum.plus(amount);
  return usd(sum);
}

/** Writes money for people: `$1,234.50`, negatives as `-$12.00`. */
export function formatUsd(amount: Usd | DecimalText): string {
  const fixed = usd(amount);
  const negative = fixed.startsWith('-');
  const [whole = '0', cents = '00'] = fixed.replace('-', '').split('.');
  return `${negative ? '-' : ''}$${whole.replace(/\B(?=(\d{3})+$)/g, ',')}.${cents}`;
}

/**
 * Splits a rounded total over weights so that the parts add up to it to the cent (largest remainder, then order).
 * @param total - amount to split. [$]
 * @param weights - non-negative weights; all zero puts everything on the first.
 * @returns one part a weight; their sum is exactly the total. [$]
 */
export function splitUsd(total: Usd, weights: readonly Decimal.Value[]): readonly Usd[] {
  if (weights.length === 0) return [];
  const cents = new Decimal(total).times(100);
  const sum = weights.reduce<Decimal>((acc, weight) => acc.plus(weight), new Decimal(0));
  const exact = weights.map((weight, index) =>
    sum.isZero() ? new Decimal(index === 0 ? cents : 0) : cents.times(weight).div(sum),
  );
  const floors = exact.map((value) => value.floor());
  let left = cents.minus(floors.reduce<Decimal>((acc, value) => acc.plus(value), new Decimal(0))).toNumber();
  const byRemainder = exact
    .map((value, index) => ({ index, remainder: value.minus(value.floor()) }))
    .sort((a, b) => b.remainder.comparedTo(a.remainder) || a.index - b.index);
  const parts = [...floors];
  for (const { index } of byRemainder) {
    if (left <= 0) break;
    parts[index] = (parts[index] ?? new Decimal(0)).plus(1);
    left -= 1;
  }
  return parts.map((value) => usd(value.div(100)));
}
