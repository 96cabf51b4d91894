import type { Board, CutItem, CuttingProblem, JoinedRun } from './cut-plan-types.ts';

/** Joints of each run, by place from left to right. */
export type Joints = readonly (readonly number[])[];

/**
 * The boards that a run is made of with chosen joints, as pieces.
 * @returns undefined where a board between two of them is none that it may be made of.
 */
export function boardsOfRun(run: JoinedRun, joints: readonly number[]): readonly CutItem[] | undefined {
  const stops = [0, ...joints, run.lastPlace];
  const items: CutItem[] = [];
  for (const [index, to] of stops.entries()) {
    if (index === 0) continue;
    const from = stops[index - 1];
    const board = run.boards.find((one) => one.from === from && one.to === to);
    const mark = run.marks[index - 1];
    if (board === undefined || mark === undefined) return undefined;
    items.push({ mark, lengthSixteenths: board.lengthSixteenths });
  }
  return items;
}

/**
 * The problem with its joints settled: the boards of its runs are pieces like the others.
 * @returns undefined where the joints are none that the runs allow.
 */
export function withJoints(problem: CuttingProblem, joints: Joints): CuttingProblem | undefined {
  const { runs = [], ...rest } = problem;
  if (joints.length !== runs.length) return undefined;
  const items = runs.map((run, index) => boardsOfRun(run, joints[index] ?? []));
  if (items.includes(undefined)) return undefined;
  return { ...rest, items: [...problem.items, ...items.flatMap((boards) => boards ?? [])] };
}

/** Joints in all. [-] */
export function jointCount(joints: Joints): number {
  return joints.reduce((sum, { length }) => sum + length, 0);
}

/**
 * The problem that boards answer, joints read off their pieces: the lengths of a run's boards, in the order of their marks,
 * must lead from its one end to the other.
 * @returns undefined where those of some run do not.
 */
export function asCut(problem: CuttingProblem, boards: readonly Board[]): CuttingProblem | undefined {
  const { runs = [] } = problem;
  if (runs.length === 0) return problem;
  const cut = new Map(boards.flatMap(({ items }) => items).map((item) => [item.mark, item]));
  const joints = runs.map((run) => {
    const lengths = run.marks.flatMap((mark) => cut.get(mark)?.lengthSixteenths ?? []);
    return jointsOfLengths(run, lengths);
  });
  if (joints.includes(undefined)) return undefined;
  return withJoints(
    problem,
    joints.map((places) => places ?? []),
  );
}

/** Places at which boards of these lengths, one after the other, can be jointed. */
function jointsOfLengths(run: JoinedRun, lengths: readonly number[]): readonly number[] | undefined {
  /** Every way to get to a place, by its joints. */
  let reached = new Map<number, readonly number[]>([[0, []]]);
  for (const length of lengths) {
    const next = new Map<number, readonly number[]>();
    for (const { from, to, lengthSixteenths } of run.boards) {
      const joints = reached.get(from);
      if (joints !== undefined && lengthSixteenths === length) next.set(to, [...joints, to]);
    }
    reached = next;
  }
  return reached.get(run.lastPlace)?.slice(0, -1);
}
