import type { EaveLayout } from './layout-types.ts';
import type { PlacedTails } from './place-tails.ts';
import type { HungRoom } from './solver/hung-rooms.ts';
import type { Wall } from './solver/wall.ts';

/** An eave as far as it is laid out, the wall it was laid out on, and what the solver chose from. */
export type FoundLayout = {
  readonly laid: Pick<
    EaveLayout,
    | 'eaveId'
    | 'wallLengthIn'
    | 'rafters'
    | 'occupied'
    | 'extenders'
    | 'unplaced'
    | 'bays'
    | 'largestGap'
    | 'panelJoints'
  >;
  /** Place of the eave in the survey. */
  readonly surveyIndex: number;
  readonly wall: Wall;
  readonly placed: PlacedTails;
};

/** Room for a hung tail, with the bay that it lies in. */
export type RoomInBay = HungRoom & { readonly bay: number };

/**
 * The rooms for hung tails that reach into a stretch of the wall, cut to it.
 * @param found - the eave.
 * @param fromIn - left end of the stretch. [in]
 * @param toIn - right end. [in]
 */
export function roomsWithin({ placed }: FoundLayout, fromIn: number, toIn: number): readonly RoomInBay[] {
  return placed.prepared.rooms.flatMap((rooms, bay) =>
    rooms
      .map((room) => ({ bay, fromIn: Math.max(room.fromIn, fromIn), toIn: Math.min(room.toIn, toIn) }))
      .filter((room) => room.toIn >= room.fromIn),
  );
}

/** The station of some rooms that lies nearest to another; undefined where there is no room. [in] */
export function nearestRoomIn(rooms: readonly HungRoom[], stationIn: number): number | undefined {
  const stations = rooms.map(({ fromIn, toIn }) => Math.min(toIn, Math.max(fromIn, stationIn)));
  return stations.toSorted((a, b) => Math.abs(a - stationIn) - Math.abs(b - stationIn))[0];
}

/**
 * What keeps a tail from hanging where there is room for it, as a person can change it; undefined where nothing does.
 * @param found - the eave.
 * @param bay - index of the bay.
 */
export function whyNotHung({ wall }: FoundLayout, bay: number): string | undefined {
  const { allowBlockHung, baysWithoutTail } = wall.design.layout;
  if (!allowBlockHung) return 'allow tails hung between rafters, under Layout in Design';
  const left = wall.rafters[bay - 1];
  if (left !== undefined && baysWithoutTail.includes(left.id))
    return `allow one in the bay right of rafter ${left.number}, where you want none`;
  return undefined;
}
