import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { coverEave } from '../takeoff/cover.ts';
import type { CoverBoard } from '../takeoff/panel-layout.ts';
import { eavesToTakeOff } from '../takeoff/takeoff-context.ts';

/**
 * The boards of an eave's new deck, course by course from the edge up; none where it gets no sheathing.
 * @param layout - one of the job's eaves.
 * @param input - what the job was laid out from.
 */
export function deckBoards(layout: EaveLayout, input: JobInput): readonly CoverBoard[] {
  return eavesToTakeOff(input, [layout]).flatMap((eave) => {
    const { cover } = coverEave(eave, input);
    return cover.kind === 'none' ? [] : cover.boards;
  });
}

/** Stations where the boards of the lowest course end against one another. [in] */
export function lowestJoints(boards: readonly CoverBoard[]): readonly number[] {
  return boards.flatMap(({ course, rightJoint }) =>
    course === 1 && rightJoint !== null ? [rightJoint.stationIn] : [],
  );
}
