import { rafterAt } from './beside-rafter.ts';
import type { HeldTail } from './held-tails.ts';
import type { HungRoom } from './hung-rooms.ts';
import { fixedStations, type Neighbourhood } from './hung-stations.ts';
import { centresOf, type RafterPlaces } from './rafter-places.ts';
import { nailingRoomIn, type JointedWall } from './wall.ts';

/** Rafters looked at on each side of a bay, at most, while none is sure to have a tail beside it. */
const deepestLook = 4;

/**
 * What hung tails of a bay are placed against: the tails beside its rafters and beyond, up to those that are sure to have
 * one, and what stands in the bay.
 */
export function neighbourhood(
  bay: number,
  places: readonly RafterPlaces[],
  sure: readonly boolean[],
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
      if (sure[index] === true) break;
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
 * Whether a bay needs no hung tail however the rest is laid out: both its rafters are sure to have tails of their own, no
 * two of those stand further apart than is let stand, and no panel joint wants one there.
 */
export function isQuiet(
  bay: number,
  rooms: readonly HungRoom[],
  places: readonly RafterPlaces[],
  sure: readonly boolean[],
  wall: JointedWall,
): boolean {
  const [left, right] = [places[bay - 1], places[bay]];
  if (left === undefined || right === undefined) return false;
  const widestIn = Math.max(...centresOf(right)) - Math.min(...centresOf(left));
  if (widestIn > wall.largestGapIn) return false;
  const offIn = wall.jointToleranceIn;
  const joint = wall.jointsIn.some((jointIn) =>
    rooms.some(({ fromIn, toIn }) => jointIn >= fromIn - offIn && jointIn <= toIn + offIn),
  );
  return !joint && sure[bay - 1] === true && sure[bay] === true;
}

/**
 * Whether a rafter is sure to have a tail beside it: held, pinned, or with a free side that neither a neighbour's tail, nor
 * one that is held, nor one under a panel joint may take from it.
 */
export function isSure(
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
