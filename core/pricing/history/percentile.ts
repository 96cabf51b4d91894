import { Decimal } from 'decimal.js';

/**
 * A percentile of some values: with N values in order and p between 0 and 1, k + d = p (N + 1), k whole; the answer lies d of
 * the way from the k-th value to the next, and is the first or the last value where k falls outside of them.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2, from memory.
 * Worked: of twelve values the 90th stands at 0.9 x 13 = 11.7, seven tenths of the way from the 11th to the 12th.
 * @param values - in any order, at least one.
 * @param p - 0.5 for the median. [-]
 * @returns exact, in the unit of the values.
 */
export function percentile(values: readonly Decimal[], p: number): Decimal {
  const sorted = values.toSorted((a, b) => a.comparedTo(b));
  const place = new Decimal(p).times(sorted.length + 1);
  const k = place.floor().toNumber();
  const least = sorted[Math.min(Math.max(k, 1), sorted.length) - 1];
  const next = sorted[Math.min(Math.max(k + 1, 1), sorted.length) - 1];
  if (least === undefined || next === undefined) throw new Error('a percentile of nothing');
  return k < 1 ? least : least.plus(next.minus(least).times(place.minus(k)));
}
