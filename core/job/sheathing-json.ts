import type { CoveredEave } from '../takeoff/cover.ts';
import { courseCount, courseWidthsIn } from '../takeoff/lay-cover.ts';
import type { CoverBoard } from '../takeoff/panel-layout.ts';
import type { Json } from './json.ts';

/**
 * What covers each eave as JSON: the strip of new sheathing and its courses, from the edge up. [in, SF]
 * @param covered - the eaves with their cover.
 */
export function sheathingJson(covered: readonly CoveredEave[]) {
  return covered.map(({ layout, cover }) => {
    const eave = { eaveId: layout.eaveId, kind: cover.kind };
    if (cover.kind === 'none') return eave satisfies Json;
    const { strip } = cover;
    const laid = {
      ...eave,
      itemId: cover.item?.id ?? null,
      stripWidthIn: strip.widthIn,
      stripLengthIn: strip.lengthIn,
      stripFromIn: strip.fromIn,
      stripToIn: strip.toIn,
      pitchBreakIn: strip.breakIn,
      areaSqFt: strip.areaSqFt,
      boards: cover.boards.map(boardJson),
    };
    return cover.kind === 'panels'
      ? ({
          ...laid,
          sheetWidthIn: cover.sheet.widthIn,
          sheetLengthIn: cover.sheet.lengthIn,
          courses: courseWidthsIn(cover.boards).map((widthIn) => ({ widthIn })),
          countPanels: cover.boards.length,
        } satisfies Json)
      : ({
          ...laid,
          coverIn: cover.coverIn,
          countCourses: courseCount(cover.boards),
        } satisfies Json);
  });
}

/** One panel or plank as laid: stations, edges up the slope, and the tails that its ends bear on. */
export function boardJson(board: CoverBoard) {
  return {
    countCourse: board.course,
    fromIn: board.fromIn,
    toIn: board.toIn,
    lowIn: board.lowIn,
    highIn: board.highIn,
    leftOn: endJson(board.leftJoint),
    rightOn: endJson(board.rightJoint),
    whole: board.whole,
  } satisfies Json;
}

function endJson(joint: CoverBoard['leftJoint']): string {
  return joint === null ? 'end' : (joint.tailId ?? 'no tail');
}
