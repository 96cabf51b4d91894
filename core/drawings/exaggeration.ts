/** How many times deviations may be drawn larger than lengths, largest first. */
const factors = [40, 20, 10, 5, 2, 1] as const;

/** Deviations fill no more than this share of the length that they are drawn along. [-] */
const mostShare = 1 / 12;

/**
 * How many times a deviation from a line is drawn larger than the line's length: as many as keep it within a twelfth of
 * that. Worked: 5/16 in. over 34 ft -> 40 times, 12-1/2 in. of 412; 3 in. over 20 ft -> 5 times.
 * @param largestIn - deviation, or the span of deviations. [in]
 * @param lengthIn - of what it is drawn along. [in]
 */
export function exaggerationOf(largestIn: number, lengthIn: number): number {
  return factors.find((factor) => largestIn * factor <= lengthIn * mostShare) ?? 1;
}
