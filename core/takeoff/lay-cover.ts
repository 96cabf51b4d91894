import type { EaveLayout } from '../layout/layout-types.ts';
import { type CoverBoard, jointsOfCourse, layCourse } from './panel-layout.ts';
import { coursesOf, type SheathingStrip } from './sheathing-strip.ts';

/**
 * Lays the courses of a cover from the edge up, joints on the new tails, staggered from course to course.
 * @param layout - for the tails. [in]
 * @param strip - what is covered. [in]
 * @param size - width and length of one board, the gap at its edges, and whether boards are cut back to tails. [in]
 */
export function layCover(
  { extenders }: Pick<EaveLayout, 'extenders'>,
  strip: Pick<SheathingStrip, 'widthIn' | 'breakIn' | 'fromIn' | 'toIn'>,
  {
    coverIn,
    boardIn,
    gapIn,
    cutBack = true,
  }: {
    readonly coverIn: number;
    readonly boardIn: number;
    readonly gapIn: number;
    readonly cutBack?: boolean;
  },
): readonly CoverBoard[] {
  let below: readonly number[] = [];
  return coursesOf(strip, coverIn, gapIn).flatMap(({ lowIn, highIn }, index) => {
    const { fromIn, toIn } = strip;
    const laid = layCourse({ fromIn, toIn, tails: extenders, boardIn, gapIn, cutBack }, below);
    below = jointsOfCourse(laid).map(({ stationIn }) => stationIn);
    return laid.map((board) => ({ ...board, course: index + 1, lowIn, highIn }));
  });
}

/** How many courses a cover has. */
export function courseCount(boards: readonly CoverBoard[]): number {
  return boards.at(-1)?.course ?? 0;
}

/** Widths of a cover's courses up the slope, from the edge up. [in] */
export function courseWidthsIn(boards: readonly CoverBoard[]): readonly number[] {
  return boards.filter(({ leftJoint }) => leftJoint === null).map(({ lowIn, highIn }) => highIn - lowIn);
}
