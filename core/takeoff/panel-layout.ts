import type { Extender } from '../layout/layout-types.ts';

/** Least bearing of a panel's or plank's end on a tail. [in] Common practice, no source. */
export const leastEndBearingIn = 0.5;

/** A board is not cut shorter than this for the sake of a tail, and a last one not left so. [in] Common practice, no source. */
export const leastBoardIn = 24;

/** A joint between two boards of a course. */
export type CourseJoint = {
  /** Middle of the gap. [in] */
  readonly stationIn: number;
  /** Id of the tail that both ends bear on; null where none stands there, so that a block has to go under it. */
  readonly tailId: string | null;
};

/** One panel or plank of a cover, as laid. */
export type CoverBoard = {
  /** From the edge up, 1 is the lowest. */
  readonly course: number;
  /** Stations of its ends, gaps taken off. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** Its lower and upper edge, up the slope from the lower edge of the cover. [in] */
  readonly lowIn: number;
  readonly highIn: number;
  /** Null at the end of the run. */
  readonly leftJoint: CourseJoint | null;
  readonly rightJoint: CourseJoint | null;
  /** As long as it comes, no end cut off. */
  readonly whole: boolean;
};

/** A course to lay: where it begins and ends, what carries it, and how long its boards come. [in] */
export type Course = {
  readonly fromIn: number;
  readonly toIn: number;
  readonly tails: readonly Pick<Extender, 'id' | 'leftIn' | 'rightIn'>[];
  readonly boardIn: number;
  /** Left at every joint: 1/8 in. between panels, nothing between planks. */
  readonly gapIn: number;
  /** False: boards stay whole, and a joint falls where it does. */
  readonly cutBack?: boolean;
};

/** A board of a course, before it has its place up the slope. */
export type LaidBoard = Omit<CoverBoard, 'course' | 'lowIn' | 'highIn'>;

const dustIn = 1e-6;

/**
 * Lays one course from left to right: each board runs to the furthest tail that it reaches, on which both ends bear at
 * least 1/2 in. Where its uncut end comes there it stays whole, else it is cut to the tail's centre. A joint of the course
 * below is avoided, so that joints are staggered by at least one tail; where every tail in reach has one, it is not. Where
 * no tail is in reach the board stays whole and its joint is loose. A last board under 24 in. is lengthened by moving the
 * joint before it, where a tail is there.
 * Worked: 0 to 240 in., tails every 16 in. (1-1/2 thick), panels of 96 -> joints at 96, 192.
 * @param course - the course. [in]
 * @param avoidIn - joints of the course below. [in]
 * @returns boards from left to right; not rounded. [in]
 */
export function layCourse(course: Course, avoidIn: readonly number[] = []): readonly LaidBoard[] {
  if (course.cutBack === false) return boardsBetween(course, wholeJoints(course, avoidIn));
  const joints: CourseJoint[] = [];
  let startIn = course.fromIn;
  while (startIn + course.boardIn < course.toIn - dustIn) {
    const joint = furthestJoint(course, startIn, avoidIn);
    joints.push(joint);
    startIn = joint.stationIn + course.gapIn / 2;
  }
  return boardsBetween(course, withoutSliver(course, joints, avoidIn));
}

/** The joints of a course, from left to right. */
export function jointsOfCourse(boards: readonly LaidBoard[]): readonly CourseJoint[] {
  return boards.flatMap(({ rightJoint }) => (rightJoint === null ? [] : [rightJoint]));
}

/** Joints of whole boards, wherever they fall; the first board is half one where the course below has its joints there. */
function wholeJoints(course: Course, avoidIn: readonly number[]): readonly CourseJoint[] {
  const joints: CourseJoint[] = [];
  const stepIn = course.boardIn + course.gapIn;
  const firstIn = course.fromIn + course.boardIn + course.gapIn / 2;
  const below = avoidIn.some((stationIn) => Math.abs(stationIn - firstIn) < leastBoardIn / 2);
  for (
    let stationIn = below ? firstIn - course.boardIn / 2 : firstIn;
    stationIn - course.gapIn / 2 < course.toIn - dustIn;
    stationIn += stepIn
  ) {
    const on = course.tails.find((tail) => {
      const { leastIn, mostIn } = roomForJoint(tail, course.gapIn);
      return stationIn >= leastIn - dustIn && stationIn <= mostIn + dustIn;
    });
    joints.push({ stationIn, tailId: on?.id ?? null });
  }
  return joints;
}

/** The furthest joint that a board reaches from its left end. */
function furthestJoint(course: Course, startIn: number, avoidIn: readonly number[]): CourseJoint {
  const found = jointsInReach(course, startIn);
  return (
    found.findLast(({ tail }) => !hasJoint(tail, avoidIn))?.joint ??
    found.at(-1)?.joint ?? { stationIn: startIn + course.boardIn + course.gapIn / 2, tailId: null }
  );
}

/**
 * Every tail that a board from here reaches, with the joint that it would have there: where its uncut end comes, as long
 * as that bears on both sides, else at the tail's centre.
 */
function jointsInReach(course: Course, startIn: number) {
  const uncutIn = startIn + course.boardIn + course.gapIn / 2;
  return course.tails.flatMap((tail) => {
    const { leastIn, mostIn } = roomForJoint(tail, course.gapIn);
    const stationIn = uncutIn <= mostIn + dustIn ? uncutIn : (tail.leftIn + tail.rightIn) / 2;
    if (leastIn > uncutIn + dustIn || stationIn - startIn < leastOf(course)) return [];
    return [{ tail, joint: { stationIn, tailId: tail.id } }];
  });
}

/** Boards that come shorter than 24 in. are not held to it. [in] */
function leastOf({ boardIn }: Course): number {
  return Math.min(leastBoardIn, boardIn / 2);
}

/** Where a joint may lie on a tail; its centre alone on one too thin for the bearing on both sides. */
function roomForJoint({ leftIn, rightIn }: Course['tails'][number], gapIn: number) {
  const centreIn = (leftIn + rightIn) / 2;
  const asideIn = Math.max(0, (rightIn - leftIn) / 2 - leastEndBearingIn - gapIn / 2);
  return { leastIn: centreIn - asideIn, mostIn: centreIn + asideIn };
}

function hasJoint({ leftIn, rightIn }: Course['tails'][number], jointsIn: readonly number[]): boolean {
  return jointsIn.some((stationIn) => stationIn > leftIn - dustIn && stationIn < rightIn + dustIn);
}

function withoutSliver(
  course: Course,
  joints: readonly CourseJoint[],
  avoidIn: readonly number[],
): readonly CourseJoint[] {
  const last = joints.at(-1);
  const leastIn = leastOf(course);
  if (last === undefined || course.toIn - last.stationIn >= leastIn) return joints;
  const before = joints.at(-2);
  const startIn = before === undefined ? course.fromIn : before.stationIn + course.gapIn / 2;
  const better = jointsInReach(course, startIn).findLast(
    ({ tail, joint }) =>
      course.toIn - joint.stationIn >= leastIn &&
      course.toIn - joint.stationIn - course.gapIn / 2 <= course.boardIn + dustIn &&
      !hasJoint(tail, avoidIn),
  );
  return better === undefined ? joints : [...joints.slice(0, -1), better.joint];
}

function boardsBetween(course: Course, joints: readonly CourseJoint[]): readonly LaidBoard[] {
  return [...joints, null].map((rightJoint, index): LaidBoard => {
    const leftJoint = joints[index - 1] ?? null;
    const fromIn = leftJoint === null ? course.fromIn : leftJoint.stationIn + course.gapIn / 2;
    const toIn = rightJoint === null ? course.toIn : rightJoint.stationIn - course.gapIn / 2;
    return { fromIn, toIn, leftJoint, rightJoint, whole: Math.abs(toIn - fromIn - course.boardIn) < dustIn };
  });
}
