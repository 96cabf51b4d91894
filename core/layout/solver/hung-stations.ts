import { in64ths } from './score.ts';
import type { HungRoom } from './hung-rooms.ts';
import { gapToleranceIn, nailingRoomIn, type JointedWall, type Wall } from './wall.ts';

/** What hung tails of one bay are placed against. [in] */
export type Neighbourhood = {
  /** Where middles may be in this bay. */
  readonly rooms: readonly HungRoom[];
  /** Middles of tails that may stand on the left, from this bay's left rafter outward, and on the right; ends of rooms among them. */
  readonly leftIn: readonly number[];
  readonly rightIn: readonly number[];
  /** Middles of the tails beside the two rafters within this bay. */
  readonly besideIn: readonly number[];
  /** Whether no tail is sure to stand between the bay and an end of the fascia run. */
  readonly nearEnd: boolean;
  /** Middles of the rafters around that no tail stands beside. */
  readonly stuckIn: readonly number[];
};

/** No more tails than this are spread between two others. [-] */
const mostSpread = 6;

/**
 * The stations where a hung tail of a bay may matter: ends of the room there is, as close to a tail beside a rafter as
 * nailing lets it, under a panel joint or at the ends of what carries it, and wherever so many tails would divide the way
 * between two such places evenly. The best layout has its tails there: where nothing holds a tail, moving it toward the
 * middle between its neighbours makes the gaps more even.
 * @param near - the bay and what stands around. [in]
 * @param wall - the wall. [in]
 * @returns from left to right, none twice within 1/64 in. [in]
 */
export function hungStations(near: Neighbourhood, wall: JointedWall): readonly number[] {
  const { rooms } = near;
  if (rooms.length === 0) return [];
  const within = (stationIn: number): boolean =>
    rooms.some(({ fromIn, toIn }) => stationIn >= fromIn - 1e-9 && stationIn <= toIn + 1e-9);
  const fixed = [...besideStations(near, wall), ...fixedStations(rooms, wall)].filter(within);
  const stations = new Map<number, number>();
  const add = (stationIn: number): void => {
    if (within(stationIn) && !stations.has(in64ths(stationIn))) stations.set(in64ths(stationIn), stationIn);
  };
  fixed.forEach(add);
  const lefts = distinct([...near.leftIn, ...fixed]);
  const rights = distinct([...near.rightIn, ...fixed]);
  for (const fromIn of lefts)
    for (const toIn of rights) {
      const stuck = near.stuckIn.filter((stationIn) => stationIn > fromIn && stationIn < toIn).length;
      const most = Math.min(mostSpread, Math.max(1, stuck, tailsNeeded(toIn - fromIn, wall.largestGapIn)));
      for (let tails = 1; tails <= most; tails += 1)
        for (let place = 1; place <= tails; place += 1) add(fromIn + ((toIn - fromIn) * place) / (tails + 1));
    }
  // Before a wall's end no tail answers for the gap: there each stands the largest gap from the next.
  if (near.nearEnd)
    for (const stationIn of [...lefts, ...rights])
      for (let tails = 1; tails <= mostSpread; tails += 1)
        for (const step of [-tails, tails]) add(stationIn + step * (wall.largestGapIn + gapToleranceIn));
  return [...stations.values()].sort((a, b) => a - b);
}

/** Tails between two others that no gap is over the largest. */
function tailsNeeded(apartIn: number, largestGapIn: number): number {
  return Math.ceil(apartIn / largestGapIn - 1e-9) - 1;
}

function besideStations({ besideIn }: Neighbourhood, { thicknessIn }: Wall): readonly number[] {
  const apartIn = thicknessIn + nailingRoomIn;
  return besideIn.flatMap((centreIn) => [centreIn - apartIn, centreIn + apartIn]);
}

/**
 * The stations in some rooms that hung tails may be held at, wherever their neighbours stand: the rooms' ends, and under
 * each joint that a room reaches, its middle and both ends of where a tail carries it.
 * @param rooms - of one bay. [in]
 * @param wall - the wall. [in]
 */
export function fixedStations(
  rooms: readonly HungRoom[],
  { jointsIn, jointToleranceIn }: Pick<JointedWall, 'jointsIn' | 'jointToleranceIn'>,
): readonly number[] {
  return rooms.flatMap(({ fromIn, toIn }) => {
    const joints =
      jointToleranceIn < 0
        ? []
        : jointsIn.flatMap((jointIn) => [jointIn - jointToleranceIn, jointIn, jointIn + jointToleranceIn]);
    return [fromIn, toIn, ...joints.filter((stationIn) => stationIn > fromIn && stationIn < toIn)];
  });
}

function distinct(stationsIn: readonly number[]): readonly number[] {
  return [...new Map(stationsIn.map((stationIn) => [in64ths(stationIn), stationIn])).values()];
}
