import { solidStretches } from '../bays.ts';
import { inTheWay } from '../in-the-way.ts';
import { rafterAt, type Standing, type Way } from './beside-rafter.ts';
import type { Candidate, Choices } from './candidate.ts';
import { heldCandidate, hungCandidate, ownCandidate } from './candidates.ts';
import { heldHungTails, type HeldTail } from './held-tails.ts';
import { hungRooms, type HungRoom } from './hung-rooms.ts';
import { hungStations } from './hung-stations.ts';
import { isQuiet, isSure, neighbourhood } from './look-around.ts';
import { placesOf, type RafterPlaces } from './rafter-places.ts';
import { in64ths } from './score.ts';
import { gapToleranceIn, nailingRoomIn, type JointedWall, type Wall } from './wall.ts';
import { jointsWanted } from './wanted-joints.ts';

/** All that the solver needs, and what its answer is explained by. */
export type Prepared = {
  readonly wall: JointedWall;
  readonly choices: Choices;
  readonly places: readonly RafterPlaces[];
  readonly held: readonly HeldTail[];
  readonly rooms: readonly (readonly HungRoom[])[];
  readonly standing: Standing;
};

/**
 * Sets out what the solver may choose from along a wall.
 * @param bare - the wall. [in]
 */
export function prepare(bare: Wall): Prepared {
  const standing = inTheWay(bare.occupied);
  const places = bare.rafters.map((_, index) => placesOf(index, bare, standing));
  const held = [...places.flatMap((one) => one.held ?? []), ...heldHungTails(bare)];
  const rooms = roomsOf(bare);
  const hangable = rooms.map((own, bay) => (own.length > 0 && mayHang(bay, places, bare) ? own : []));
  const wall = { ...bare, ...jointsWanted(bare, places, held, hangable.flat()) };
  const bays: Candidate[][] = Array.from({ length: wall.rafters.length + 1 }, () => []);
  const put = (bay: number, candidate: Candidate): void => {
    bays[bay]?.push(candidate);
  };
  for (const [index, { ways, wish }] of places.entries())
    for (const way of ways) put(bayOf(way, index), ownCandidate(way, index, wish.want === 'own', wall));
  for (const tail of held) put(bayAt(tail, wall), heldCandidate(tail, wall));
  const sure = places.map((_, index) => isSure(index, places, held, wall));
  for (const [bay, own] of hangable.entries()) {
    if (own.length === 0 || isQuiet(bay, own, places, sure, wall)) continue;
    for (const stationIn of hungStations(neighbourhood(bay, places, sure, held, rooms, wall), wall))
      put(bay, hungCandidate(stationIn, bay, own, wall));
  }
  return {
    wall,
    choices: {
      rafters: places.map(({ wish }) => wish),
      bays: bays.map((candidates) => ({ candidates: candidates.sort((a, b) => a.centreIn - b.centreIn) })),
      raftersAt: wall.rafters.map(({ centreIn }) => in64ths(centreIn)),
      from: in64ths(wall.fromIn),
      to: in64ths(wall.toIn),
      largestGap: in64ths(wall.largestGapIn + gapToleranceIn),
      roomIn: nailingRoomIn,
    },
    places,
    held,
    rooms,
    standing,
  };
}

function roomsOf(wall: Wall): readonly (readonly HungRoom[])[] {
  const solid = solidStretches(wall.occupied);
  return Array.from({ length: wall.rafters.length + 1 }, (_, bay) =>
    bay === 0 || bay === wall.rafters.length ? [] : hungRooms(bay - 1, wall, solid),
  );
}

/** Hung tails go where they are allowed and the bay is not to stay without, or where one of its rafters is pinned to have one. */
function mayHang(bay: number, places: readonly RafterPlaces[], wall: Wall): boolean {
  const pinned = (index: number): boolean => {
    const wish = places[index]?.wish;
    return wish?.want === 'any' && wish.hungLeft !== wish.hungRight;
  };
  if (pinned(bay - 1) || pinned(bay)) return true;
  const { allowBlockHung, baysWithoutTail } = wall.design.layout;
  return allowBlockHung && !baysWithoutTail.includes(rafterAt(bay - 1, wall).id);
}

/** A rafter's left places lie in the bay before it; its right ones, and its own, in the bay after. */
function bayOf({ side, method }: Way, index: number): number {
  return side === 'left' && method !== 'end-replacement' ? index : index + 1;
}

function bayAt({ leftIn, rightIn }: HeldTail, { rafters }: Wall): number {
  const centreIn = (leftIn + rightIn) / 2;
  return rafters.findLastIndex((rafter) => rafter.centreIn <= centreIn) + 1;
}
