import { leastBoardIn } from '../../takeoff/panel-layout.ts';
import { panelGapIn } from '../../takeoff/sheathing-strip.ts';
import type { Interval } from '../in-the-way.ts';
import type { RafterPlaces } from './rafter-places.ts';
import type { HeldTail } from './held-tails.ts';
import type { HungRoom } from './hung-rooms.ts';
import type { Wall } from './wall.ts';

/** Joints between panels that are to stay whole. [in] */
export type WantedJoints = {
  /** Middles of the joints that want a tail under them, from left to right. */
  readonly jointsIn: readonly number[];
  /** Where whole panels would have had a joint that no tail can carry, so that one is cut back. */
  readonly cutBackIn: readonly number[];
};

/**
 * The joints that want a tail where panels are to stay whole, from the left end of the fascia run. A panel's joint stands
 * where it comes, if a tail beside a rafter or a hung one may carry it there. Where none may, the panel is cut back to the
 * furthest rafter that it reaches, to the tail that the rafter would have first; else to where a tail may hang. No panel
 * gets shorter than 24 in. Not rounded.
 * Worked: 8 ft panels from 0, rafters at 24 in. on centre from 24, tails 1-1/2 right of them, none hung -> cut back to
 * 73.5, then whole to 169.6.
 * @param wall - with the length of a panel. [in]
 * @param places - of the rafters, with their tails' places.
 * @param held - tails that are fixed.
 * @param rooms - where tails may hang, from left to right. [in]
 */
export function jointsWanted(
  wall: Wall,
  places: readonly RafterPlaces[],
  held: readonly HeldTail[],
  rooms: readonly HungRoom[],
): WantedJoints {
  const { wholeSheetIn, toIn } = wall;
  const jointsIn: number[] = [];
  const cutBackIn: number[] = [];
  if (wholeSheetIn === null || wall.jointToleranceIn < 0) return { jointsIn, cutBackIn };
  const supports = supportsOf(places, held);
  const leastIn = Math.min(leastBoardIn, wholeSheetIn / 2);
  for (let startIn = wall.fromIn; startIn + wholeSheetIn < toIn - 1e-6; ) {
    const uncutIn = startIn + wholeSheetIn + panelGapIn / 2;
    const jointIn = carriedAt(uncutIn, supports, rooms, wall)
      ? uncutIn
      : cutBackTo({ leastIn: startIn + leastIn, lastIn: uncutIn }, supports, rooms);
    if (jointIn !== uncutIn) cutBackIn.push(uncutIn);
    jointsIn.push(jointIn);
    startIn = jointIn + panelGapIn / 2;
  }
  return { jointsIn, cutBackIn };
}

/** Middles of the tails beside rafters: all that may be, and of each rafter the one that it would have first. [in] */
type Supports = { readonly anyIn: readonly number[]; readonly firstIn: readonly number[] };

function supportsOf(places: readonly RafterPlaces[], held: readonly HeldTail[]): Supports {
  const plain = places.map(({ ways }) => ways.filter(({ method }) => method === 'side').map(middleOf));
  const heldIn = held.map(middleOf);
  return {
    anyIn: [...plain.flat(), ...heldIn],
    firstIn: [...plain.flatMap(([first]) => first ?? []), ...heldIn],
  };
}

function carriedAt(
  stationIn: number,
  { anyIn }: Supports,
  rooms: readonly HungRoom[],
  { jointToleranceIn: offIn }: Wall,
): boolean {
  return (
    anyIn.some((tailIn) => Math.abs(tailIn - stationIn) <= offIn + 1e-9) ||
    rooms.some(({ fromIn, toIn }) => stationIn >= fromIn - offIn && stationIn <= toIn + offIn)
  );
}

function cutBackTo(
  { leastIn, lastIn }: { readonly leastIn: number; readonly lastIn: number },
  { firstIn }: Supports,
  rooms: readonly HungRoom[],
): number {
  const tailIn = Math.max(...firstIn.filter((stationIn) => stationIn >= leastIn && stationIn <= lastIn));
  if (Number.isFinite(tailIn)) return tailIn;
  const hungIn = rooms
    .filter(({ fromIn, toIn }) => toIn >= leastIn && fromIn <= lastIn)
    .map(({ toIn }) => Math.min(toIn, lastIn));
  return hungIn.length > 0 ? Math.max(...hungIn) : lastIn;
}

function middleOf({ leftIn, rightIn }: Interval): number {
  return (leftIn + rightIn) / 2;
}
