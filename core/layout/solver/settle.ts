import { isHung } from './candidate.ts';
import { evenOut, type Window } from './even-out.ts';
import type { Chosen } from './solve.ts';
import { nailingRoomIn, placeAbout, type Wall } from './wall.ts';
import type { Interval } from '../in-the-way.ts';

/** A chosen tail on its final place. [in] */
export type Settled = Chosen & Interval & { readonly centreIn: number };

/**
 * Spreads the hung tails that nothing holds evenly between their neighbours, as far as room, nailing and the panel joints
 * that they carry allow, and puts each on a whole sixteenth, as it is set by the tape. Tails beside rafters stay exactly
 * where the rafter has them.
 * @param chosen - by the solver, from left to right. [in]
 * @param wall - the wall. [in]
 */
export function settle(chosen: readonly Chosen[], wall: Wall): readonly Settled[] {
  const settled: Settled[] = [];
  for (let start = 0; start < chosen.length; ) {
    let end = start;
    while (chosen[end] !== undefined && moves(chosen[end])) end += 1;
    const fromIn = chosen[start - 1]?.candidate.centreIn ?? wall.fromIn;
    const toIn = chosen[end]?.candidate.centreIn ?? wall.toIn;
    const windows = chosen.slice(start, end).map((_, place) => windowOf(chosen, start + place, wall));
    const even = evenOut(fromIn, windows, toIn);
    for (const [place, window] of windows.entries()) {
      const one = chosen[start + place];
      const centreIn = onSixteenth(even[place] ?? window.fromIn, window);
      if (one !== undefined) settled.push({ ...one, ...placeAbout(centreIn, wall), centreIn });
    }
    const fixed = chosen[end];
    if (fixed !== undefined)
      settled.push({ ...fixed, ...facesOf(fixed), centreIn: fixed.candidate.centreIn });
    start = end + 1;
  }
  return settled;
}

function moves(one: Chosen | undefined): boolean {
  return one !== undefined && isHung(one.candidate) && one.candidate.heldId === null;
}

function facesOf({ candidate: { leftIn, rightIn } }: Chosen): Interval {
  return { leftIn, rightIn };
}

function windowOf(chosen: readonly Chosen[], index: number, wall: Wall): Window {
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
