import type { EaveSurvey } from '../survey/survey-document.ts';
import { plateUpIn } from '../survey/wall-line.ts';
import type { FasciaLine } from './layout-types.ts';

/** Where a tail's top corner comes by its rafter's own line, above the level line of the fascia line. [in] */
export type TailAsFound = { readonly stationIn: number; readonly topIn: number };

/** A fascia line before the tails are cut to it. */
export type FittedLine = Omit<FasciaLine, 'highestAfterIn' | 'lowestAfterIn'>;

/**
 * The straight line that the tails' top corners are brought to, at the mean of the tails. `level` is level; `parallel`
 * has the fall of the plate's run (`plateRise`), and is level where the plate was not read; `best-fit` is the least
 * squares line over the stations; `as-found` lifts no tail, and the line is the parallel one against which its scatter is
 * told. Source: least squares. Not rounded.
 * Worked: tails at 0, 10, 20 with tops -3, -2, -3 -> parallel at -2.667, highest +0.667, lowest -0.333.
 * @param mode - as designed.
 * @param tails - as found. [in]
 * @param plateRise - of the plate's run. [in/in]
 */
export function fitFasciaLine(
  mode: FasciaLine['mode'],
  tails: readonly TailAsFound[],
  plateRise = 0,
): FittedLine {
  const risePerInch = { level: 0, parallel: plateRise, 'as-found': plateRise, 'best-fit': riseOf(tails) }[
    mode
  ];
  const atStartIn =
    meanOf(tails.map(({ topIn }) => topIn)) - risePerInch * meanOf(tails.map(({ stationIn }) => stationIn));
  const off = tails.map(({ stationIn, topIn }) => topIn - (atStartIn + risePerInch * stationIn));
  return {
    mode,
    atStartIn,
    risePerInch,
    highestIn: off.reduce((most, one) => Math.max(most, one), 0),
    lowestIn: off.reduce((least, one) => Math.min(least, one), 0),
  };
}

/**
 * Height of the line at a station, above a level line through the plate's top at the wall's left end.
 * @param line - a fitted line. [in]
 * @param stationIn - along the wall. [in]
 */
export function lineHeightIn(line: Pick<FasciaLine, 'atStartIn' | 'risePerInch'>, stationIn: number): number {
  return line.atStartIn + line.risePerInch * stationIn;
}

/** Readings that stand closer together than this tell nothing of a plate's run. [in] Common practice, no source. */
const leastRunIn = 12;

/**
 * Fall of the plate's run: the least squares line through its readings; 0 where they span less than a foot.
 * Source: least squares. Worked: 0 at 0 and 1/2 in. at 120 -> 0.00417.
 * @returns rise along the wall. [in/in]
 */
export function plateRise({ plateReadings }: Pick<EaveSurvey, 'plateReadings'>): number {
  const stations = plateReadings.map(({ stationIn }) => stationIn);
  if (stations.length === 0 || Math.max(...stations) - Math.min(...stations) < leastRunIn) return 0;
  return riseOf(
    plateReadings.map(({ stationIn }) => ({ stationIn, topIn: plateUpIn(plateReadings, stationIn) })),
  );
}

/** Slope of the least squares line; 0 where all stand at one station. */
function riseOf(points: readonly TailAsFound[]): number {
  const meanTop = meanOf(points.map(({ topIn }) => topIn));
  const meanStation = meanOf(points.map(({ stationIn }) => stationIn));
  let spread = 0;
  let rise = 0;
  for (const { stationIn, topIn } of points) {
    spread += (stationIn - meanStation) ** 2;
    rise += (stationIn - meanStation) * (topIn - meanTop);
  }
  return spread > 0 ? rise / spread : 0;
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
