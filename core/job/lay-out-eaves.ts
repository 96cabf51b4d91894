import type { Stock } from '../eave/stock.ts';
import { meetingsOf } from '../layout/eave-ends.ts';
import { eaveLetter } from '../layout/eave-letter.ts';
import { layOutEave } from '../layout/lay-out-eave.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { longestUsableIn } from '../pricing/stock-lengths.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import type { JobInput } from './job-file.ts';
import { meansOfLayout } from './means-of-layout.ts';

/**
 * Lays out every eave of a job, in the order of the survey, lettered A, B ... Z, AA.
 * @param input - documents without contradictions, prices and settings. [in]
 * @returns the layouts; or the first problem that stops one, with the path of the entry to mend.
 */
export function layOutEaves(input: JobInput): Result<readonly EaveLayout[], Problem> {
  const longest = longestByStock(input);
  const layouts: EaveLayout[] = [];
  for (const index of input.survey.eaves.keys()) {
    const layout = layOutAt(input, index, longest);
    if (!layout.ok) return layout;
    layouts.push(layout.value);
  }
  return ok(layouts);
}

/**
 * Lays out one eave of a job alone, e.g. while a tail is being moved by hand.
 * @param input - documents without contradictions, prices and settings. [in]
 * @param eaveId - an eave that the survey and the design know.
 * @returns the layout; or the problem that stops it, with the path of the entry to mend.
 */
export function layOutOneEave(input: JobInput, eaveId: string): Result<EaveLayout, Problem> {
  const index = input.survey.eaves.findIndex(({ id }) => id === eaveId);
  return layOutAt(input, index, longestByStock(input));
}

function layOutAt(
  input: JobInput,
  index: number,
  longest: (stock: Stock) => number | null,
): Result<EaveLayout, Problem> {
  const eave = input.survey.eaves[index];
  const designIndex = input.design.eaves.findIndex(({ eaveId }) => eaveId === eave?.id);
  const design = input.design.eaves[designIndex];
  if (eave === undefined || design === undefined) throw new Error(`eave ${index} has no survey or no design`);
  const { stock, subFascia } = design.fascia;
  const layout = layOutEave(
    eave,
    design,
    eaveLetter(index),
    longest(stock),
    {
      meetings: meetingsOf(input, design),
      longestSubFasciaIn: subFascia.wanted ? longest(subFascia.stock) : null,
    },
    meansOfLayout(input, design),
  );
  return layout.ok ? layout : fail(atEave(layout.problem, index, designIndex));
}

/** Longest usable board of a stock, looked up once. [in] */
function longestByStock(input: JobInput): (stock: Stock) => number | null {
  const known = new Map<string, number | null>();
  return (stock) => {
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
