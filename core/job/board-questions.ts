import { piecesToCut } from '../takeoff/in-place.ts';
import { takeOff } from '../takeoff/take-off.ts';
import { documentProblem } from './document-problem.ts';
import type { JobInput } from './job-file.ts';
import { layOutJob } from './lay-out-job.ts';
import { lumberProblems } from './plan-lumber.ts';
import type { KeyedProblem } from './unsettled-plans.ts';

/** What the boards of a job have to answer; null where some piece has no board, or the job cannot be computed. */
export type BoardQuestions = readonly KeyedProblem[] | null;

/**
 * What has to be asked for the boards of a job, without planning any: the same questions that `computeJob` would answer.
 * What merely has no price is left out, as it is at every overhang alike.
 */
export function boardQuestions(input: JobInput): BoardQuestions {
  if (documentProblem(input) !== undefined) return null;
  const laidOut = layOutJob(input);
  if (!laidOut.ok) return null;
  const takeoff = takeOff(input, laidOut.value.eaves, laidOut.value.rakes);
  const { cuttingProblems, unplanned } = lumberProblems(input, piecesToCut(takeoff.pieces));
  return unplanned.some(({ problem: { code } }) => code === 'piece-longer-than-stock')
    ? null
    : cuttingProblems;
}
