import type { Side } from '../../survey/survey-document.ts';
import { solidStretches } from '../bays.ts';
import { inTheWay } from '../in-the-way.ts';
import {
  rafterAt,
  rafterSide,
  waysOf,
  costOf,
  type RafterSide,
  type Standing,
  type Way,
} from './beside-rafter.ts';
import type { Candidate, Choices, RafterWish } from './candidate.ts';
import { heldBesideRafter, heldHungTails, type HeldTail } from './held-tails.ts';
import { hungRooms, type HungRoom } from './hung-rooms.ts';
import { fixedStations, hungStations, type Neighbourhood } from './hung-stations.ts';
import { in64ths } from './score.ts';
import { gapToleranceIn, jointCarried, nailingRoomIn, type JointedWall, type Wall } from './wall.ts';
import { jointsWanted } from './wanted-joints.ts';

/** One rafter with what is known of its places, before the solver chooses. */
export type RafterPlaces = {
  readonly sides: Readonly<Record<Side, RafterSide>>;
  readonly wish: RafterWish;
  readonly ways: readonly Way[];
  readonly held: HeldTail | undefined;
};

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
  for (const [bay, own] of hangable.entries()) {
    if (own.length === 0) continue;
    for (const stationIn of hungStations(neighbourhood(bay, places, held, rooms, wall), wall))
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

function placesOf(index: number, wall: Wall, standing: Standing): RafterPlaces {
  const { id, condition } = rafterAt(index, wall);
  const sides = {
    left: rafterSide(index, 'left', wall, standing),
    right: rafterSide(index, 'right', wall, standing),
  };
  const pin = wall.design.pins.find(({ rafterId }) => rafterId === id);
  const held = heldBesideRafter(index, sides, wall);
  const served: RafterWish = { want: 'served', hungLeft: false, hungRight: false, sideFree: false };
  if (held !== undefined || pin?.side === 'none') return { sides, wish: served, ways: [], held };
  if (pin?.method === 'block-hung') {
    const wish: RafterWish = {
      ...served,
      want: 'any',
      hungLeft: pin.side === 'left',
      hungRight: pin.side === 'right',
    };
    return { sides, wish, ways: [], held };
  }
  const order = wall.design.preferredSide === 'left' ? [sides.left, sides.right] : [sides.right, sides.left];
  const ways = waysOf(index, pin === undefined ? order : [sides[pin.side]], wall, standing);
  if (pin === undefined) {
    const mayHang = condition !== 'rotten';
    const sideFree = ways.some(({ method }) => method === 'side');
    return { sides, wish: { want: 'any', hungLeft: mayHang, hungRight: mayHang, sideFree }, ways, held };
  }
  // A pin stands whatever is in its way.
  const { place } = sides[pin.side];
  const forced: Way = {
    ...place,
    method: 'side',
    side: pin.side,
    fillerIn: null,
    cost: costOf('side', pin.side, wall),
  };
  const ownWays = ways.filter(({ method }) => method !== 'end-replacement');
  return {
    sides,
    wish: { ...served, want: 'own' },
    ways: ownWays.length > 0 ? ownWays : [forced],
    held,
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

function ownCandidate(way: Way, rafter: number, pinned: boolean, wall: JointedWall): Candidate {
  const centreIn = (way.leftIn + way.rightIn) / 2;
  return {
    ...way,
    centreIn,
    at: in64ths(centreIn),
    rafter,
    heldId: null,
    heldBy: null,
    stubborn: pinned,
    joint: jointCarried(centreIn, wall),
    roomFromIn: centreIn,
    roomToIn: centreIn,
  };
}

function heldCandidate(tail: HeldTail, wall: JointedWall): Candidate {
  const centreIn = (tail.leftIn + tail.rightIn) / 2;
  return {
    ...tail,
    centreIn,
    at: in64ths(centreIn),
    heldId: tail.id,
    heldBy: tail.by,
    stubborn: true,
    cost: costOf(tail.method, tail.side, wall),
    joint: jointCarried(centreIn, wall),
    roomFromIn: centreIn,
    roomToIn: centreIn,
  };
}

function hungCandidate(
  centreIn: number,
  bay: number,
  rooms: readonly HungRoom[],
  wall: JointedWall,
): Candidate {
  const room = rooms.find(({ fromIn, toIn }) => centreIn >= fromIn - 1e-9 && centreIn <= toIn + 1e-9);
  if (room === undefined) throw new Error('a hung tail without room');
  return {
    leftIn: centreIn - wall.thicknessIn / 2,
    rightIn: centreIn + wall.thicknessIn / 2,
    centreIn,
    at: in64ths(centreIn),
    method: 'block-hung',
    side: 'right',
    rafter: bay - 1,
    heldId: null,
    heldBy: null,
    stubborn: false,
    cost: costOf('block-hung', 'right', wall),
    joint: jointCarried(centreIn, wall),
    fillerIn: null,
    roomFromIn: room.fromIn,
    roomToIn: room.toIn,
  };
}

/** Rafters looked at on each side of a bay, at most, while none is sure to have a tail beside it. */
const deepestLook = 4;

function neighbourhood(
  bay: number,
  places: readonly RafterPlaces[],
  held: readonly HeldTail[],
  rooms: readonly (readonly HungRoom[])[],
  wall: JointedWall,
): Neighbourhood {
  const stuckIn: number[] = [];
  let nearEnd = false;
  const look = (step: -1 | 1): readonly number[] => {
    const stationsIn: number[] = [];
    for (let depth = 0; depth < deepestLook; depth += 1) {
      const index = (step < 0 ? bay - 1 : bay) + step * depth;
      const place = places[index];
      if (place === undefined) {
        nearEnd = true;
        stationsIn.push(step < 0 ? wall.fromIn : wall.toIn);
        break;
      }
      const own = centresOf(place);
      stationsIn.push(...own);
      if (isSure(index, places, held, wall)) break;
      stuckIn.push(rafterAt(index, wall).centreIn);
      stationsIn.push(...fixedStations(rooms[step < 0 ? index : index + 1] ?? [], wall));
    }
    return stationsIn;
  };
  const [left, right] = [look(-1), look(1)];
  const bayFromIn = rafterAt(bay - 1, wall).centreIn;
  const bayToIn = rafterAt(bay, wall).centreIn;
  const beside = [places[bay - 1], places[bay]].flatMap((place) =>
    place === undefined ? [] : centresOf(place),
  );
  const hungIn = held
    .map(({ leftIn, rightIn }) => (leftIn + rightIn) / 2)
    .filter((at) => at > bayFromIn && at < bayToIn);
  return {
    rooms: rooms[bay] ?? [],
    leftIn: [...left, ...hungIn],
    rightIn: [...right, ...hungIn],
    besideIn: [...beside.filter((at) => at > bayFromIn && at < bayToIn), ...hungIn],
    nearEnd,
    stuckIn,
  };
}

/**
 * Whether a rafter is sure to have a tail beside it: held, pinned, or with a free side that neither a neighbour's tail, nor
 * one that is held, nor one under a panel joint may take from it.
 */
function isSure(
  index: number,
  places: readonly RafterPlaces[],
  held: readonly HeldTail[],
  wall: JointedWall,
): boolean {
  const place = places[index];
  if (place === undefined || place.held !== undefined || place.wish.want === 'own') return true;
  const reachIn = wall.jointToleranceIn + wall.thicknessIn / 2;
  const rivals = [
    ...(places[index - 1]?.ways ?? []),
    ...(places[index + 1]?.ways ?? []),
    ...held,
    ...wall.jointsIn.map((jointIn) => ({ leftIn: jointIn - reachIn, rightIn: jointIn + reachIn })),
  ];
  return place.ways.some(
    ({ method, leftIn, rightIn }) =>
      method === 'side' &&
      rivals.every((one) => one.rightIn + nailingRoomIn <= leftIn || one.leftIn - nailingRoomIn >= rightIn),
  );
}

function centresOf({ ways, held }: RafterPlaces): readonly number[] {
  return [...ways, ...(held === undefined ? [] : [held])].map(
    ({ leftIn, rightIn }) => (leftIn + rightIn) / 2,
  );
}
