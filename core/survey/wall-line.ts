import type { PlateReading, WallReading } from './survey-document.ts';

/** A height or an offset read at a station. [in] */
type Read = { readonly stationIn: number; readonly valueIn: number };

/**
 * How far the wall's framing face stands out of the reference line at a station: straight from reading to reading, and
 * as the outermost reading beyond it; 0 where nothing was read. Not rounded.
 * Worked: out 0 at 0 and 1 at 120 -> 0.25 at 30, and 1 at 200.
 * @param readings - in any order. [in]
 * @param stationIn - along the wall line. [in]
 */
export function wallOutIn(
  readings: readonly Pick<WallReading, 'stationIn' | 'outIn'>[],
  stationIn: number,
): number {
  return valueAt(
    readings.map(({ stationIn: at, outIn }) => ({ stationIn: at, valueIn: outIn })),
    stationIn,
  );
}

/**
 * Mean of the wall's framing face over the whole wall line, against the reference line. Not rounded.
 * Source: areas under straight stretches. Worked: out 0 at 0, 1 at 60 and 0 at 120 of a 120 in. wall -> 0.5.
 * @param readings - in any order. [in]
 * @param lengthIn - of the wall line. [in]
 */
export function wallMeanOutIn(
  readings: readonly Pick<WallReading, 'stationIn' | 'outIn'>[],
  lengthIn: number,
): number {
  const breaks = [0, lengthIn, ...readings.map(({ stationIn }) => stationIn)]
    .filter((stationIn) => stationIn >= 0 && stationIn <= lengthIn)
    .toSorted((a, b) => a - b);
  const area = breaks.slice(1).reduce((sum, toIn, index) => {
    const fromIn = breaks[index] ?? toIn;
    return sum + ((wallOutIn(readings, fromIn) + wallOutIn(readings, toIn)) / 2) * (toIn - fromIn);
  }, 0);
  return area / lengthIn;
}

/**
 * How high the plate's top stands at a station above a level line through its top at the wall's left end. Straight from
 * reading to reading, and as the outermost reading beyond it; 0 where nothing was read. Not rounded.
 * Worked: up -10 at 0 and -9.5 at 120, read from a line overhead -> 0 at 0, 0.25 at 60.
 * @param readings - in any order, from any level line. [in]
 * @param stationIn - along the wall line. [in]
 */
export function plateUpIn(
  readings: readonly Pick<PlateReading, 'stationIn' | 'upIn'>[],
  stationIn: number,
): number {
  const heights = readings.map(({ stationIn: at, upIn }) => ({ stationIn: at, valueIn: upIn }));
  return valueAt(heights, stationIn) - valueAt(heights, 0);
}

function valueAt(readings: readonly Read[], stationIn: number): number {
  let before: Read | undefined;
  let after: Read | undefined;
  for (const reading of readings) {
    if (reading.stationIn <= stationIn) {
      if (before === undefined || reading.stationIn >= before.stationIn) before = reading;
    } else if (after === undefined || reading.stationIn < after.stationIn) after = reading;
  }
  if (before === undefined) return after?.valueIn ?? 0;
  if (after === undefined) return before.valueIn;
  const share = (stationIn - before.stationIn) / (after.stationIn - before.stationIn);
  return before.valueIn + share * (after.valueIn - before.valueIn);
}
