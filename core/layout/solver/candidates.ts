import { costOf, type Way } from './beside-rafter.ts';
import type { Candidate } from './candidate.ts';
import type { HeldTail } from './held-tails.ts';
import type { HungRoom } from './hung-rooms.ts';
import { in64ths } from './score.ts';
import { jointCarried, type JointedWall } from './wall.ts';

/** A way for a rafter to get its own tail. */
export function ownCandidate(way: Way, rafter: number, pinned: boolean, wall: JointedWall): Candidate {
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

/** A tail that stands where it was put or built. */
export function heldCandidate(tail: HeldTail, wall: JointedWall): Candidate {
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

/** A tail hung in a bay at a station. [in] */
export function hungCandidate(
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
