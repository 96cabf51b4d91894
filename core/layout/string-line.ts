import { lineHeightIn } from './fascia-line.ts';
import type { EaveLayout, Extender } from './layout-types.ts';

/**
 * Thickness of the blocks that hold the string off the tails, so that none pushes it: a scrap of 1x.
 * [in] Common practice, no source.
 */
export const gaugeBlockIn = 0.75;

/** The string beside one tail. Offsets level, heights plumb. [in] */
export type StringAt = {
  readonly extender: Extender;
  readonly stationIn: number;
  /** From the wall's framing face out to the string. */
  readonly fromWallIn: number;
  /** String above (+) or below (-) the plate's top at this station. */
  readonly abovePlateIn: number;
  /** From the tail's plumb line at its top corner out to the string: a block's thickness where the tail stands right. */
  readonly fromTailIn: number;
  /** Tail's top corner above (+) or below (-) the string, as it is to be set. */
  readonly tailAboveIn: number;
  /** The same as the old rafter would leave it. */
  readonly asFoundAboveIn: number;
};

/** A string along the tails' top corners, stretched from the first tail to the last. */
export type StringLine = {
  readonly left: StringAt;
  readonly right: StringAt;
  readonly stations: readonly StringAt[];
};

/**
 * Where the string runs: in elevation on the line that the tails are brought to, in plan straight from the first tail's
 * top corner to the last one's, both set out by a gauge block. The string is taken as straight; its sag is not reckoned.
 * Source: geometry. Not rounded.
 * Worked: wall out 0 at the first tail and 0.25 at the next, overhangs 16 and 15.75 -> string 16.75 and 16.5 from the wall,
 * 3/4 in. off each tail.
 * @param layout - the eave. [in]
 * @returns undefined where fewer than two tails stand, so that nothing can be stretched.
 */
export function stringLine(layout: EaveLayout): StringLine | undefined {
  const tails = layout.extenders;
  const first = tails[0];
  const last = tails.at(-1);
  if (first === undefined || last === undefined || last.centreIn - first.centreIn < 1) return undefined;
  const [start, end] = [endOut(first), endOut(last)];
  const outAt = (stationIn: number): number =>
    start + ((end - start) * (stationIn - first.centreIn)) / (last.centreIn - first.centreIn);
  const stations = tails.map((extender): StringAt => {
    const { centreIn, plateUpIn, wallOutIn, section, liftAtTailIn } = extender;
    const outIn = outAt(centreIn) + gaugeBlockIn;
    const heightIn = lineHeightIn(layout.fasciaLine, centreIn) - plateUpIn;
    const tailAboveIn = section.tailTopAbovePlateIn - heightIn;
    return {
      extender,
      stationIn: centreIn,
      fromWallIn: outIn - wallOutIn,
      abovePlateIn: heightIn,
      fromTailIn: outIn - endOut(extender),
      tailAboveIn: Math.abs(tailAboveIn) < 1e-9 ? 0 : tailAboveIn,
      asFoundAboveIn: tailAboveIn - liftAtTailIn,
    };
  });
  const [left, right] = [stations[0], stations.at(-1)];
  return left === undefined || right === undefined ? undefined : { left, right, stations };
}

/** From the reference line of the wall readings out to a tail's top corner. [in] */
function endOut({ wallOutIn, overhangLevelIn }: Extender): number {
  return wallOutIn + overhangLevelIn;
}
