import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import { boardsOnJoints, supportsOf } from './fascia-joints.ts';
import type { FasciaRun } from './layout-types.ts';

type Partial = {
  readonly cents: number;
  readonly squares: number;
  readonly jointsIn: readonly number[];
};

/**
 * The ways to break a run of fascia that a worth of each piece makes look best, the best first: joints on tails only, no
 * piece longer than can be bought, none on a joint that is to be avoided. Found by dynamic programming that keeps so many
 * ways to every tail.
 * @param run - the run, its tails and the longest usable board. [in]
 * @param worthOf - what a piece of this length is taken to cost. [1/16 in -> cent]
 * @param centsPerJoint - what a joint is taken to cost. [cent]
 * @param most - ways kept. [-]
 * @param avoidIn - stations that no joint may lie on. [in]
 * @returns joints from left to right, one list a way. [in]
 */
export function jointChoices(
  run: FasciaRun,
  worthOf: (lengthSixteenths: number) => number,
  centsPerJoint: number,
  most: number,
  avoidIn: readonly number[] = [],
): readonly (readonly number[])[] {
  const supports = supportsOf(run);
  const longest = sixteenthsDown(run.longestIn ?? 0);
  const last = supports.length - 1;
  const avoided = (stationIn: number): boolean =>
    avoidIn.some((joint) => Math.abs(joint - stationIn) < 1 / 64);
  const ways: (readonly Partial[])[] = [[{ cents: 0, squares: 0, jointsIn: [] }]];
  for (let to = 1; to <= last; to += 1) {
    const toIn = supports[to] ?? 0;
    const found: Partial[] = [];
    // No board ends where no joint may lie.
    const nearest = to === last || !avoided(toIn) ? to - 1 : -1;
    for (let from = nearest; from >= 0; from -= 1) {
      const fromIn = supports[from] ?? 0;
      if (sixteenthsUp(toIn - fromIn) > longest) break;
      const lengthSixteenths = pieceBetween(run, from === 0 ? null : fromIn, to === last ? null : toIn);
      if (lengthSixteenths > longest) continue;
      const cents = worthOf(lengthSixteenths) + (to === last ? 0 : centsPerJoint);
      for (const way of ways[from] ?? [])
        found.push({
          cents: way.cents + cents,
          squares: way.squares + lengthSixteenths ** 2,
          jointsIn: to === last ? way.jointsIn : [...way.jointsIn, toIn],
        });
    }
    ways.push(
      found
        .toSorted(
          (a, b) => a.cents - b.cents || a.jointsIn.length - b.jointsIn.length || a.squares - b.squares,
        )
        .slice(0, most),
    );
  }
  return (ways[last] ?? []).map(({ jointsIn }) => jointsIn);
}

/** Length of the board from one joint to the next, its bevels in it; null stands for the run's own end. */
function pieceBetween(run: FasciaRun, fromIn: number | null, toIn: number | null): number {
  const joints = [fromIn, toIn].filter((joint) => joint !== null);
  const boards = boardsOnJoints(run, joints);
  return boards[fromIn === null ? 0 : 1]?.lengthSixteenths ?? 0;
}
