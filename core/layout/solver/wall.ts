import type { AsBuilt, EaveDesign } from '../../eave/design-document.ts';
import type { LayoutRules } from '../../pricing/shop-settings.ts';
import type { Side } from '../../survey/survey-document.ts';
import { formatLength } from '../../units/format-length.ts';
import { clashToleranceIn, type Interval } from '../in-the-way.ts';
import type { Occupied, PlacedRafter } from '../layout-types.ts';
import type { WantedJoints } from './wanted-joints.ts';

/** The old wall that tails are laid out on, and what is wanted of them. [in] */
export type Wall = {
  readonly rafters: readonly PlacedRafter[];
  readonly occupied: readonly Occupied[];
  readonly lengthIn: number;
  /** Actual thickness of a tail. */
  readonly thicknessIn: number;
  readonly design: Pick<EaveDesign, 'preferredSide' | 'pins' | 'addedTails' | 'layout'>;
  readonly asBuilt: readonly AsBuilt[];
  readonly weights: LayoutRules['weights'];
  /** Whether the old rafters' span was measured, so that a whole one can be cut. */
  readonly spanKnown: boolean;
  /** Ends of the fascia run. */
  readonly fromIn: number;
  readonly toIn: number;
  readonly largestGapIn: number;
  /** Length of a panel of the new sheathing along the eave, where panels are to stay whole; else null. */
  readonly wholeSheetIn: number | null;
  /** How far off a joint's middle the tail that carries it may stand. */
  readonly jointToleranceIn: number;
};

/** A wall with the panels' joints that want a tail under them. [in] */
export type JointedWall = Wall & WantedJoints;

/** Least clear room on each side of a hung tail, to nail it. [in] Common practice, no source. */
export const nailingRoomIn = 0.5;

/** Gaps between tails over the largest by less than this are within what the tape reads. [in] */
export const gapToleranceIn = 1 / 32;

/** A place as thick as a tail, beginning at its left face. [in] */
export function placeFrom(leftIn: number, { thicknessIn }: Pick<Wall, 'thicknessIn'>): Interval {
  return { leftIn, rightIn: leftIn + thicknessIn };
}

/** A place as thick as a tail about its middle. [in] */
export function placeAbout(centreIn: number, { thicknessIn }: Pick<Wall, 'thicknessIn'>): Interval {
  return placeFrom(centreIn - thicknessIn / 2, { thicknessIn });
}

/** Index of the panel joint that a tail with this middle carries, -1 where none. */
export function jointCarried(centreIn: number, { jointsIn, jointToleranceIn }: JointedWall): number {
  return jointsIn.findIndex((jointIn) => Math.abs(centreIn - jointIn) <= jointToleranceIn + 1e-9);
}

/** The wall's end that a place lies past, by more than the tape reads. */
export function pastEnd({ leftIn, rightIn }: Interval, wall: Pick<Wall, 'lengthIn'>): Side | null {
  if (leftIn < -clashToleranceIn) return 'left';
  return rightIn > wall.lengthIn + clashToleranceIn ? 'right' : null;
}

/** Says where something stands: `at 8' 4-3/4" to 8' 6-1/4"`. */
export function stretch({ leftIn, rightIn }: Interval): string {
  return `at ${formatLength(leftIn)} to ${formatLength(rightIn)}`;
}
