import type { FasciaLine } from './layout-types.ts';

/** Where a tail's top corner comes by its rafter's own line. [in] */
export type TailAsFound = { readonly stationIn: number; readonly topIn: number };

/**
 * The straight line that the tails' top corners are brought to. `parallel` is level, at the mean of the tails (least
 * squares without slope); `best-fit` is the least squares line over the stations; `as-found` lifts no tail, and the line
 * is the level mean against which its scatter is told. Source: least squares. Not rounded.
 * Worked: tails at 0, 10, 20 with tops -3, -2, -3 -> parallel at -2.667, highest +0.667, lowest -0.333.
 * @param mode - as designed.
 * @param tails - as found. [in]
 */
export function fitFasciaLine(mode: FasciaLine['mode'], tails: readonly TailAsFound[]): FasciaLine {
  const meanTop = meanOf(tails.map(({ topIn }) => topIn));
  const meanStation = meanOf(tails.map(({ stationIn }) => stationIn));
  let spread = 0;
  let rise = 0;
  for (const { stationIn, topIn } of tails) {
    spread += (stationIn - meanStation) ** 2;
    rise += (stationIn - meanStation) * (topIn - meanTop);
  }
  const risePerInch = mode === 'best-fit' && spread > 0 ? rise / spread : 0;
  const atStartIn = meanTop - risePerInch * meanStation;
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
 * Height of the line above the plate at a station.
 * @param line - a fitted line. [in]
 * @param stationIn - along the wall. [in]
 */
export function lineHeightIn(line: FasciaLine, stationIn: number): number {
  return line.atStartIn + line.risePerInch * stationIn;
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
