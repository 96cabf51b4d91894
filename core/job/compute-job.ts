import type { CutPlan } from '../cutting/cut-plan-types.ts';
import { findAtEnds } from '../layout/find-at-ends.ts';
import { makeEstimate } from '../pricing/estimate.ts';
import { strangeSections } from '../pricing/strange-sections.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { inPlaceNotes, piecesToCut } from '../takeoff/in-place.ts';
import { takeOff } from '../takeoff/take-off.ts';
import { uncountedRakeSoffits } from '../takeoff/uncounted-rake-soffit.ts';
import { uncountedSoffits } from '../takeoff/uncounted-soffit.ts';
import { documentProblem } from './document-problem.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';
import { layOutJob } from './lay-out-job.ts';
import { looseEnds } from './loose-ends.ts';
import { planLumber } from './plan-lumber.ts';
import { looseRakes } from './rake-problems.ts';

/**
 * Computes a whole job: survey and design to layout, pieces, cut plans and estimate.
 * Eaves are laid out in the order of the survey and lettered A, B ... Z, AA.
 * @param input - documents, prices and settings; nothing else is read, so that equal inputs give equal results.
 * @param solved - cut plans found before, by `problemKey`; one that fits is used instead of planning anew.
 * @returns every figure of the job; or the problem that stops it, with the path of the entry to mend. What merely has
 * no price does not stop it: the estimate names it in `lacks`.
 */
export function computeJob(
  input: JobInput,
  solved?: ReadonlyMap<string, CutPlan>,
): Result<JobResult, Problem> {
  const problem = documentProblem(input);
  if (problem !== undefined) return fail(problem);
  const laidOut = layOutJob(input);
  if (!laidOut.ok) return laidOut;
  const { eaves, rakes } = laidOut.value;
  const takeoff = takeOff(input, eaves, rakes);
  const { cutPlans, cuttingProblems, unplanned, leftOut } = planLumber(
    input,
    piecesToCut(takeoff.pieces),
    solved,
  );
  const notes = [
    ...inPlaceNotes(input, eaves),
    ...looseEnds(input),
    ...looseRakes(input),
    ...strangeSections(input.priceList),
  ];
  const estimate = makeEstimate(input, takeoff, cutPlans, unplanned, leftOut, notes);
  if (!estimate.ok) return estimate;
  return ok({
    eaves,
    rakes,
    takeoff,
    cutPlans,
    unplanned,
    cuttingProblems,
    estimate: estimate.value,
    findings: [
      ...eaves.flatMap(({ findings }) => findings),
      ...findAtEnds(input, eaves),
      ...uncountedSoffits(input, eaves),
      ...rakes.flatMap(({ findings }) => findings),
      ...uncountedRakeSoffits(input),
    ],
  });
}
