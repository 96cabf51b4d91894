import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { wallMeanOutIn, wallOutIn } from '../survey/wall-line.ts';
import type { LineInPlan } from './layout-types.ts';

/** A wall that stays within this of its straight line is straight: half of what a string is read to. [in] */
const straightWithinIn = 1 / 16;

/** The line of the tails in plan, and how far out it lies from the bowed wall. */
export type PlanLine = Omit<LineInPlan, 'least' | 'most'> & {
  /** How far the wall's framing face stands out of the reference line at a station. [in] */
  readonly wallOutAt: (stationIn: number) => number;
  /** A tail's own level overhang, from the wall's framing face at its station to the line. [in] */
  readonly overhangAt: (stationIn: number) => number;
};

/**
 * Where the tails' top corners run in plan. Straight: the stated overhang is measured from the reference line of the wall
 * readings (or from the wall's mean, parallel to it), and each tail's own overhang is what is left from the bowed wall to
 * that line. Following the wall: every tail sticks out as stated. Source: geometry. Not rounded.
 * Worked: 16 in. stated, the wall 3/4 in. out of its reference line at 10 ft -> 15-1/4 in. there.
 * @param survey - wall readings and wall line. [in]
 * @param design - straight or following, and what it is measured from.
 * @param overhangLevelIn - as stated, level, to the framing. [in]
 */
export function planLine(
  survey: Pick<EaveSurvey, 'wallReadings' | 'lengthIn'>,
  design: Pick<EaveDesign, 'fasciaInPlan' | 'overhangFrom'>,
  overhangLevelIn: number,
): PlanLine {
  const { wallReadings: readings, lengthIn } = survey;
  const meanIn = wallMeanOutIn(readings, lengthIn);
  const kind = design.fasciaInPlan;
  const from = design.overhangFrom;
  const outIn = kind === 'follow' ? null : overhangLevelIn + (from === 'wall-mean' ? meanIn : 0);
  const wallOutAt = (stationIn: number): number => wallOutIn(readings, stationIn);
  const datumIn = from === 'wall-mean' ? meanIn : 0;
  return {
    kind,
    from,
    bowed: readings.some((reading) => Math.abs(reading.outIn - datumIn) > straightWithinIn),
    wallMeanOutIn: meanIn,
    outIn,
    wallOutAt,
    overhangAt: (stationIn) => (outIn === null ? overhangLevelIn : outIn - wallOutAt(stationIn)),
  };
}

/**
 * The line of the tails with the shortest and the longest of their own overhangs; of equal ones the leftmost.
 * @param line - of the eave. [in]
 * @param tails - from left to right. [in]
 */
export function lineInPlan(
  line: PlanLine,
  tails: readonly { readonly id: string; readonly stationIn: number; readonly overhangLevelIn: number }[],
): LineInPlan {
  const { kind, from, bowed, wallMeanOutIn: meanIn, outIn } = line;
  const ends = tails.map(({ id, stationIn, overhangLevelIn }) => ({
    extenderId: id,
    stationIn,
    overhangIn: overhangLevelIn,
  }));
  const pick = (sign: 1 | -1): LineInPlan['least'] =>
    ends.reduce<LineInPlan['least']>(
      (best, one) => (best === null || sign * (one.overhangIn - best.overhangIn) > 1e-9 ? one : best),
      null,
    );
  return { kind, from, bowed, wallMeanOutIn: meanIn, outIn, least: pick(-1), most: pick(1) };
}
