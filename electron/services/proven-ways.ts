import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import { inputOfWay, type PricedWay, waysOf } from '../../core/offer/offered-ways.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import { computeProven, type SearchMeans } from './proven-job.ts';

/** Every way of a job, the offered one first, with the plans behind all of them. */
export type ProvenWays = {
  readonly ways: readonly PricedWay[];
  readonly solved: ReadonlyMap<string, CutPlan>;
};

/**
 * Every way to build a job with the boards that cost least for it, each searched as the job itself is.
 * @param means - where plans are searched, and how long.
 * @param input - the job, as it is drawn.
 */
export async function provenWays(means: SearchMeans, input: JobInput): Promise<Result<ProvenWays, Problem>> {
  const ways: PricedWay[] = [];
  const solved = new Map<string, CutPlan>();
  for (const way of waysOf(input)) {
    // oxlint-disable-next-line no-await-in-loop -- the search uses every core for one way at a time.
    const computed = await computeProven(means, inputOfWay(input, way));
    if (!computed.ok) return computed;
    ways.push({ ...way, result: computed.value.result });
    for (const [key, plan] of computed.value.solved) solved.set(key, plan);
  }
  return ok({ ways, solved });
}
