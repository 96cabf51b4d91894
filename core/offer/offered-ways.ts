import type { Design } from '../eave/design-document.ts';
import { computeJob } from '../job/compute-job.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Problem } from '../problems/problem.ts';
import { ok, type Result } from '../result.ts';
import { alternateDesign } from './alternate-design.ts';
import { scopeDifferences } from './scope-differences.ts';

/** One way to build the job, as it stands beside the others. */
export type Way = {
  /** Id of the alternate; blank for the design as it is drawn. */
  readonly id: string;
  readonly name: string;
  readonly design: Design;
  /** What it has otherwise than the one that is offered first; none for that one. */
  readonly differences: readonly string[];
};

/** A way with its figures, all reckoned from the same survey. */
export type PricedWay = Way & { readonly result: JobResult };

/** The ways of a job, the one that is offered first; one alone where the design has no alternates. */
export function waysOf({ design, priceList }: Pick<JobInput, 'design' | 'priceList'>): readonly Way[] {
  const { offer } = design;
  const all = [
    { id: '', name: offer.baseName.trim(), design },
    ...offer.alternates.map(({ id, name, changes }) => ({
      id,
      name: name.trim(),
      design: alternateDesign(design, changes),
    })),
  ];
  const first = all.find(({ id }) => id === offer.offeredId) ?? all[0];
  if (first === undefined) throw new Error('a job has at least the way that is drawn');
  const others = all.filter(({ id }) => id !== first.id);
  return [first, ...others].map((way) => ({
    ...way,
    differences: scopeDifferences(first.design, way.design, priceList),
  }));
}

/** The job as a way builds it. */
export function inputOfWay(input: JobInput, way: Pick<Way, 'design'>): JobInput {
  return { ...input, design: way.design };
}

/**
 * Every way of a job with its figures, each computed in full from the same survey and prices.
 * @param input - the job.
 * @param compute - computes a job; the whole computation unless told.
 * @returns the offered one first; or the first problem, since a quote names all of its ways or is not made.
 */
export function priceWays(
  input: JobInput,
  compute: (input: JobInput) => Result<JobResult, Problem> = computeJob,
): Result<readonly PricedWay[], Problem> {
  const priced: PricedWay[] = [];
  for (const way of waysOf(input)) {
    const result = compute(inputOfWay(input, way));
    if (!result.ok) return result;
    priced.push({ ...way, result: result.value });
  }
  return ok(priced);
}
