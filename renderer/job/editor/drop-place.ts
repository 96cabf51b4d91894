import type { EaveLayout, PlacedRafter } from '../../../core/layout/layout-types.ts';
import type { Side } from '../../../core/survey/survey-document.ts';

/** Where a tail is let go: against a rafter's side, or between two of them. [in] */
export type DropPlace =
  | {
      readonly kind: 'beside';
      readonly rafterId: string;
      readonly rafterNumber: number;
      readonly side: Side;
      /** Centre of the tail there. */
      readonly stationIn: number;
    }
  | { readonly kind: 'hung'; readonly stationIn: number };

/** What a place is found by. */
type Wall = Pick<EaveLayout, 'rafters' | 'wallLengthIn'>;

/** Below this nobody reads a tape. [in] */
const dustIn = 1e-6;

/**
 * Where a tail comes to stand that is let go at a station: against the nearest side of a rafter within reach, or where it
 * would run into a rafter, else hung there, to the nearest sixteenth and within the wall.
 * @param wall - the rafters and the wall's length. [in]
 * @param thicknessIn - of the tail. [in]
 * @param stationIn - of the tail's centre. [in]
 * @param reachIn - how far a rafter's side draws it. [in]
 * @returns e.g. rafter 1-1/2 thick at 64, tail 1-1/2 thick let go at 65.9 with a reach of 1 -> its right side, at 65-1/2.
 */
export function dropPlace(wall: Wall, thicknessIn: number, stationIn: number, reachIn: number): DropPlace {
  const sides = wall.rafters
    .flatMap((rafter) => sidesOf(rafter, thicknessIn))
    .toSorted((a, b) => Math.abs(a.stationIn - stationIn) - Math.abs(b.stationIn - stationIn));
  const [nearest] = sides;
  const within = Math.min(wall.wallLengthIn - thicknessIn / 2, Math.max(thicknessIn / 2, stationIn));
  const hungIn = Math.round(within * 16) / 16;
  if (nearest === undefined) return { kind: 'hung', stationIn: hungIn };
  const draws = Math.abs(nearest.stationIn - stationIn) <= reachIn + dustIn;
  return draws || rafterAt(wall, thicknessIn, hungIn) !== undefined
    ? nearest
    : { kind: 'hung', stationIn: hungIn };
}

/**
 * The rafter that a tail would run into at a station.
 * @param thicknessIn - of the tail. [in]
 * @param stationIn - of the tail's centre. [in]
 */
export function rafterAt(
  wall: Pick<Wall, 'rafters'>,
  thicknessIn: number,
  stationIn: number,
): PlacedRafter | undefined {
  return wall.rafters.find(
    ({ leftFaceIn, rightFaceIn }) =>
      stationIn + thicknessIn / 2 > leftFaceIn + dustIn && stationIn - thicknessIn / 2 < rightFaceIn - dustIn,
  );
}

/** Where a tail stands against either side of a rafter. */
export function sidesOf(
  rafter: PlacedRafter,
  thicknessIn: number,
): readonly (DropPlace & { readonly kind: 'beside' })[] {
  const at = (side: Side, stationIn: number) =>
    ({ kind: 'beside', rafterId: rafter.id, rafterNumber: rafter.number, side, stationIn }) as const;
  return [at('left', rafter.leftFaceIn - thicknessIn / 2), at('right', rafter.rightFaceIn + thicknessIn / 2)];
}
