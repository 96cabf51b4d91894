import type { EaveDesign } from '../eave/design-document.ts';
import type { CutPlan } from '../cutting/cut-plan-types.ts';
import { eaveLetter } from '../layout/eave-letter.ts';
import { layOutEave } from '../layout/lay-out-eave.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { makeEstimate } from '../pricing/estimate.ts';
import { longestUsableIn } from '../pricing/stock-lengths.ts';
import { strangeSections } from '../pricing/strange-sections.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { takeOff } from '../takeoff/take-off.ts';
import { uncountedSoffits } from '../takeoff/uncounted-soffit.ts';
import { documentProblem } from './document-problem.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';
import { looseEnds } from './loose-ends.ts';
import { planLumber } from './plan-lumber.ts';

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
  const laidOut = layOutEaves(input);
  if (!laidOut.ok) return laidOut;
  const eaves = laidOut.value;
  const takeoff = takeOff(input, eaves);
  const { cutPlans, cuttingProblems, unplanned, leftOut } = planLumber(input, takeoff.pieces, solved);
  const notes = [...looseEnds(input), ...strangeSections(input.priceList)];
  const estimate = makeEstimate(input, takeoff, cutPlans, unplanned, leftOut, notes);
  if (!estimate.ok) return estimate;
  return ok({
    eaves,
    takeoff,
    cutPlans,
    unplanned,
    cuttingProblems,
    estimate: estimate.value,
    findings: [...eaves.flatMap(({ findings }) => findings), ...uncountedSoffits(input, eaves)],
  });
}

function layOutEaves(input: JobInput): Result<readonly EaveLayout[], Problem> {
  const longest = longestByStock(input);
  const layouts: EaveLayout[] = [];
  for (const [index, eave] of input.survey.eaves.entries()) {
    const designIndex = input.design.eaves.findIndex(({ eaveId }) => eaveId === eave.id);
    const design = input.design.eaves[designIndex];
    if (design === undefined) throw new Error(`eave ${eave.id} has no design after the check`);
    const layout = layOutEave(eave, design, eaveLetter(index), longest(design));
    if (!layout.ok) return fail(atEave(layout.problem, index, designIndex));
    layouts.push(layout.value);
  }
  return ok(layouts);
}

/** Longest usable fascia board of a design, looked up once a stock. [in] */
function longestByStock(input: JobInput): (design: EaveDesign) => number | null {
  const known = new Map<string, number | null>();
  return ({ fascia: { stock } }) => {
    const key = JSON.stringify([stock.section, stock.grade]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const longest = longestUsableIn(input, stock);
    known.set(key, longest);
    return longest;
  };
}

/** A problem of an eave, with the path of its entry in the job; the layout knows the eave but not its place. */
function atEave(problem: Problem, surveyIndex: number, designIndex: number): Problem {
  const field = (problem.field ?? `design.eaves.${designIndex}`)
    .replace(/^survey\.eaves\.\d+/, `survey.eaves.${surveyIndex}`)
    .replace(/^design\.eaves\.\d+/, `design.eaves.${designIndex}`);
  return { ...problem, field };
}
