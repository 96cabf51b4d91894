import type { EdgeBoards } from '../eave/edge-boards.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import { wallOutIn } from '../survey/wall-line.ts';
import type { WallReading } from '../survey/survey-document.ts';
import type { Box } from './clip.ts';
import type { Point } from './drawing.ts';

/** What a plan shows of an eave; of one that is only measured, the old framing alone. [in] */
export type PlanLayout = Pick<
  EaveLayout,
  | 'eaveId'
  | 'name'
  | 'wallLengthIn'
  | 'overhangLevelIn'
  | 'rafters'
  | 'occupied'
  | 'extenders'
  | 'unplaced'
  | 'bays'
  | 'fascia'
  | 'fasciaLengthIn'
  | 'subFascia'
>;

/** What of an eave is drawn from above, and where its lines run: y is 0 at the reference line and grows inward. [in] */
export type PlanView = {
  readonly layout: PlanLayout;
  readonly box: Box;
  readonly plateIn: number;
  readonly edgeBoards: EdgeBoards;
  readonly blockIn: number;
  readonly wallReadings: readonly Pick<WallReading, 'stationIn' | 'outIn'>[];
  /** Tells whether a station lies on the drawn stretch of the wall. */
  readonly inside: (stationIn: number) => boolean;
};

/** Height on the plan of the wall's framing face: a wall that stands out stands lower. [in] */
export function faceAt({ wallReadings }: Pick<PlanView, 'wallReadings'>, stationIn: number): number {
  return -wallOutIn(wallReadings, stationIn) || 0;
}

/** Height on the plan of a tail's end. [in] */
export function tailEnd(extender: Extender): number {
  return -extender.wallOutIn - extender.overhangLevelIn;
}

/** How far an extender reaches in from the wall's face, level. [in] */
export function backspanLevel(extender: Extender): number {
  return extender.section.backspanIn / extender.section.slopeFactor;
}

/**
 * Height on the plan of the line of the tails' ends: straight from tail to tail, and as the outermost tail beyond it. [in]
 * @param stationIn - along the wall. [in]
 */
export function tailLineAt(layout: PlanLayout, stationIn: number): number {
  const ends = layout.extenders;
  const after = ends.find((extender) => extender.centreIn > stationIn);
  const before = ends.findLast((extender) => extender.centreIn <= stationIn);
  if (before === undefined) return after === undefined ? -layout.overhangLevelIn : tailEnd(after);
  if (after === undefined) return tailEnd(before);
  const share = (stationIn - before.centreIn) / (after.centreIn - before.centreIn);
  return tailEnd(before) + share * (tailEnd(after) - tailEnd(before));
}

/** A rectangle of the plan. [in] */
export function rectangle(left: number, right: number, low: number, high: number): readonly Point[] {
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

/**
 * A band along the wall, in from a line that may bend.
 * @param stations - where the line is asked for, in order. [in]
 * @param lineAt - height of the line. [in]
 * @param widthIn - of the band, inward. [in]
 */
export function band(
  stations: readonly number[],
  lineAt: (stationIn: number) => number,
  widthIn: number,
): readonly Point[] {
  return [
    ...stations.map((station): Point => [station, lineAt(station)]),
    ...stations.toReversed().map((station): Point => [station, lineAt(station) + widthIn]),
  ];
}
