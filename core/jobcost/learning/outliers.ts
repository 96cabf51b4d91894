import { Decimal } from 'decimal.js';

/** A score beyond this, either way, stands out (Iglewicz and Hoaglin 1993, in NIST/SEMATECH e-Handbook 1.3.5.17; from memory). */
const standsOutBeyond = 3.5;
/** Of fewer values nobody can say which one is the odd one. Our own choice. */
const fewest = 4;

/** Median; of an even number the mean of the middle two. Undefined of none. */
export function median(values: readonly Decimal.Value[]): Decimal | undefined {
  const sorted = values.map((value) => new Decimal(value)).sort((a, b) => a.comparedTo(b));
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? undefined : upper.plus(lower).div(2);
}

/**
 * Scores how far each value stands from the others: 0.6745 x (value - median) / MAD, where MAD is the median of the
 * distances from the median. Where more than half of the values are the same, the mean distance x 1.253314 stands in for
 * MAD / 0.6745 (same source). 0 for all where there are fewer than 4, or where all are the same.
 * Source: modified Z-score, Iglewicz and Hoaglin 1993, NIST/SEMATECH e-Handbook 1.3.5.17; from memory.
 * Worked: 0.38, 0.40, 0.42, 0.44, 0.90 -> median 0.42, MAD 0.02, the last scores 16.19.
 * @returns one score a value, to hundredths half up.
 */
export function oddScores(values: readonly Decimal.Value[]): readonly Decimal[] {
  const middle = median(values);
  if (middle === undefined || values.length < fewest) return values.map(() => new Decimal(0));
  const apart = values.map((value) => new Decimal(value).minus(middle));
  const deviation = median(apart.map((distance) => distance.abs())) ?? new Decimal(0);
  const meanApart = apart
    .reduce((sum, distance) => sum.plus(distance.abs()), new Decimal(0))
    .div(values.length);
  const scale = deviation.isZero() ? meanApart.times('1.253314') : deviation.div('0.6745');
  return apart.map((distance) =>
    scale.isZero() ? new Decimal(0) : distance.div(scale).toDecimalPlaces(2, Decimal.ROUND_HALF_UP),
  );
}

/** True where a score says that the value stands out from the others. */
export function standsOut(score: Decimal.Value): boolean {
  return new Decimal(score).abs().gt(standsOutBeyond);
}
