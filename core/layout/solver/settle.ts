import { isHung } from './candidate.ts';
import { evenOut, type Window } from './even-out.ts';
import type { Chosen } from './solve.ts';
import { gapToleranceIn, nailingRoomIn, placeAbout, type JointedWall } from './wall.ts';
import type { Interval } from '../in-the-way.ts';

/** A chosen tail on its final place. [in] */
export type Settled = Chosen & Interval & { readonly centreIn: number };

/**
 * Puts the chosen tails on their places: the hung ones that nothing holds evened out, each on a whole sixteenth, as it is
 * set by the tape. Tails beside rafters stay exactly where the rafter has them.
 * @param chosen - by the solver, from left to right. [in]
 * @param wall - the wall. [in]
 */
export function settle(chosen: readonly Chosen[], wall: JointedWall): readonly Settled[] {
  return evenedOut(chosen, wall).map(({ one, centreIn: evenIn, window }): Settled => {
    if (!moves(one)) return { ...one, ...facesOf(one), centreIn: evenIn };
    const centreIn = onSixteenth(evenIn, window);
    return { ...one, ...placeAbout(centreIn, wall), centreIn };
  });
}

/** A tail with its place, not rounded, and what it may move in. [in] */
type Evened = { readonly one: Chosen; readonly centreIn: number; readonly window: Window };

/**
 * Spreads the hung tails that nothing holds evenly between their neighbours, as far as room, nailing and the panel joints
 * that they carry allow. Not rounded.
 * @param chosen - by the solver, from left to right. [in]
 * @param wall - the wall. [in]
 */
export function evenedOut(chosen: readonly Chosen[], wall: JointedWall): readonly Evened[] {
  const evened: Evened[] = [];
  for (let start = 0; start <= chosen.length; ) {
    let end = start;
    while (moves(chosen[end])) end += 1;
    const run = chosen.slice(start, end);
    const windows = run.map((_, place) => windowOf(chosen, start + place, wall));
    const fixed = chosen[end];
    const before = chosen[start - 1]?.candidate.centreIn;
    const after = fixed?.candidate.centreIn;
    const evenIn = evenOut(before ?? wall.fromIn, windows, after ?? wall.toIn);
    const asChosen = run.map(({ candidate }) => candidate.centreIn);
    // Nothing holds the gap to an end of the run, so evening that one out, too, may widen those between tails.
    const over = (stationsIn: readonly number[]): number => overIn([before, ...stationsIn, after], wall);
    const placedIn = over(evenIn) > over(asChosen) + 1e-6 ? asChosen : evenIn;
    for (const [place, one] of run.entries()) {
      const centreIn = placedIn[place] ?? one.candidate.centreIn;
      evened.push({ one, centreIn, window: windows[place] ?? { fromIn: centreIn, toIn: centreIn } });
    }
    if (fixed !== undefined) {
      const { centreIn } = fixed.candidate;
      evened.push({ one: fixed, centreIn, window: { fromIn: centreIn, toIn: centreIn } });
    }
    start = end + 1;
  }
  return evened;
}

/** What gaps between tails exceed the largest by, in all; undefined where an end of the run has none. [in] */
function overIn(stationsIn: readonly (number | undefined)[], { largestGapIn }: JointedWall): number {
  return stationsIn.slice(1).reduce<number>((sum, rightIn, index) => {
    const leftIn = stationsIn[index];
    const gapIn = leftIn === undefined || rightIn === undefined ? 0 : rightIn - leftIn;
    return sum + Math.max(0, gapIn - largestGapIn - gapToleranceIn);
  }, 0);
}

function moves(one: Chosen | undefined): boolean {
  return one !== undefined && isHung(one.candidate) && one.candidate.heldId === null;
}

function facesOf({ candidate: { leftIn, rightIn } }: Chosen): Interval {
  return { leftIn, rightIn };
}

function windowOf(chosen: readonly Chosen[], index: number, wall: JointedWall): Window {
  const candidate = chosen[index]?.candidate;
  if (candidate === undefined) throw new Error('no such tail');
  const apartIn = nailingRoomIn + wall.thicknessIn / 2;
  const [before, after] = [chosen[index - 1], chosen[index + 1]];
  const jointIn = wall.jointsIn[candidate.joint];
  const fromIn = Math.max(
    candidate.roomFromIn,
    before === undefined || moves(before) ? candidate.roomFromIn : before.candidate.rightIn + apartIn,
    jointIn === undefined ? candidate.roomFromIn : jointIn - wall.jointToleranceIn,
  );
  const toIn = Math.min(
    candidate.roomToIn,
    after === undefined || moves(after) ? candidate.roomToIn : after.candidate.leftIn - apartIn,
    jointIn === undefined ? candidate.roomToIn : jointIn + wall.jointToleranceIn,
  );
  // Places that clear each other only by what the tape reads leave no window.
  return fromIn <= toIn ? { fromIn, toIn } : { fromIn: candidate.centreIn, toIn: candidate.centreIn };
}

function onSixteenth(centreIn: number, { fromIn, toIn }: Window): number {
  const nearest = Math.round(centreIn * 16) / 16;
  const within = [nearest, Math.floor(centreIn * 16) / 16, Math.ceil(centreIn * 16) / 16].find(
    (one) => one >= fromIn - 1e-9 && one <= toIn + 1e-9,
  );
  return within ?? centreIn;
}
