/** A thing along the wall line. [in] */
export type Interval = { readonly leftIn: number; readonly rightIn: number };

/** Overlaps up to this are within what the tape reads, and are no clash. [in] */
export const clashToleranceIn = 1 / 32;

/**
 * Prepares a quick search for what an interval runs into, by more than 1/32 in.
 * @param things - what stands along the wall, in any order. [in]
 * @returns a function that gives the things an interval overlaps, from left to right.
 */
export function inTheWay<T extends Interval>(things: readonly T[]): (interval: Interval) => readonly T[] {
  const sorted = [...things].sort((a, b) => a.leftIn - b.leftIn);
  const reaches: number[] = [];
  for (const thing of sorted)
    reaches.push(Math.max(reaches.at(-1) ?? Number.NEGATIVE_INFINITY, thing.rightIn));
  return (interval) => {
    const found: T[] = [];
    for (let index = firstAtOrAfter(sorted, interval.rightIn) - 1; index >= 0; index -= 1) {
      const thing = sorted[index];
      if (thing === undefined || (reaches[index] ?? 0) <= interval.leftIn + clashToleranceIn) break;
      if (overlaps(thing, interval)) found.unshift(thing);
    }
    return found;
  };
}

/** Whether two things along the wall overlap by more than 1/32 in. */
export function overlaps(one: Interval, other: Interval): boolean {
  return Math.min(one.rightIn, other.rightIn) - Math.max(one.leftIn, other.leftIn) > clashToleranceIn;
}

function firstAtOrAfter(sorted: readonly Interval[], stationIn: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle]?.leftIn ?? 0) < stationIn) low = middle + 1;
    else high = middle;
  }
  return low;
}
