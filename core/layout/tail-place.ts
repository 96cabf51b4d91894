import type { Method } from '../eave/design-document.ts';
import type { Side } from '../survey/survey-document.ts';
import type { Interval } from './in-the-way.ts';
import type { Extender, PlacedRafter } from './layout-types.ts';

/** Where a new tail stands along the wall and how it is fastened, before its section is solved. */
export type TailPlace = Interval & {
  readonly id: string;
  readonly method: Method;
  /** The rafter it is fastened to; of a hung tail the one on its left. */
  readonly rafter: PlacedRafter;
  /** Of a hung tail, the rafter on its right; null where it is fastened to one, or hangs past the last. */
  readonly rightRafter: PlacedRafter | null;
  /** Id of the rafter that a hung tail stands for, which has none of its own; null where it stands for none. */
  readonly standsFor: string | null;
  readonly side: Side;
  readonly because: Extender['because'];
  readonly clash: string | null;
  /** Of a filler, the clear distance between rafter and tail that it has to make up. [in] */
  readonly fillerIn: number | null;
  readonly inPlace: boolean;
};

/**
 * The middle of something along the wall. [in]
 * @param interval - [left, right]. [in]
 */
export function centreOf({ leftIn, rightIn }: Interval): number {
  return (leftIn + rightIn) / 2;
}

/**
 * The old roof's line at a tail: its own rafter's; for a tail hung between two, pitch and height above plate as they lie
 * between those of the two at its station, and the shorter clear backspan. Source: straight between two rafters.
 * Worked: HAP 5 at 16 and 5-1/2 at 40, tail at 28 -> 5-1/4.
 * @param tail - as placed. [in]
 */
export function roofLineAt(
  tail: Pick<TailPlace, 'rafter' | 'rightRafter' | 'leftIn' | 'rightIn'>,
): PlacedRafter {
  const { rafter, rightRafter } = tail;
  if (rightRafter === null) return rafter;
  const stationIn = centreOf(tail);
  const apartIn = rightRafter.centreIn - rafter.centreIn;
  const share = apartIn <= 0 ? 0 : Math.min(1, Math.max(0, (stationIn - rafter.centreIn) / apartIn));
  const between = (left: number, right: number): number => left + (right - left) * share;
  return {
    ...rafter,
    centreIn: stationIn,
    pitchRisePer12: between(rafter.pitchRisePer12, rightRafter.pitchRisePer12),
    heightAbovePlateIn: between(rafter.heightAbovePlateIn, rightRafter.heightAbovePlateIn),
    clearBackspanIn: leastClear(rafter.clearBackspanIn, rightRafter.clearBackspanIn),
  };
}

/** Where only one was measured, that one holds. */
function leastClear(left: number | null, right: number | null): number | null {
  if (left === null || right === null) return left ?? right;
  return Math.min(left, right);
}
