import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { lumberSum } from '../../core/job/cutting-choices.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { type SupplierCost, supplierCost, suppliersOf, supplierWays } from '../../core/job/supplier-ways.ts';
import { unsettledPlans } from '../../core/job/unsettled-plans.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Context } from './context.ts';

/** Where plans are searched, and how long for each stock at most. [ms] */
export type SearchMeans = Pick<Context, 'prover' | 'searchLimitMs'>;

/** A job with the best boards that were found, and the plans behind it by the key of their problem. */
export type ProvenJob = { readonly result: JobResult; readonly solved: ReadonlyMap<string, CutPlan> };

/** A plan that is found can change what else is asked; after so many rounds what there is stands. */
const mostRounds = 4;

/**
 * Computes a job with the boards that cost least, as the screen shows it once the search is over: what was searched before
 * comes out of the prover's memory, the rest is searched now.
 * @param means - where plans are searched, and how long.
 * @param input - the job.
 */
export async function computeProven(
  { prover, searchLimitMs }: SearchMeans,
  input: JobInput,
): Promise<Result<ProvenJob, Problem>> {
  const solved = new Map<string, CutPlan>();
  const tried = new Set<string>();
  let computed = computeJob(input);
  for (let round = 1; computed.ok && round <= mostRounds; round += 1) {
    const open = unsettledPlans(computed.value, tried);
    if (open.length === 0) break;
    for (const { key, problem } of open) {
      tried.add(key);
      const proven = await prover.prove(problem, { limitMs: searchLimitMs });
      if (proven.ok && proven.value.plan !== null) solved.set(key, proven.value.plan);
    }
    computed = computeJob(input, solved);
  }
  return computed.ok ? ok({ result: computed.value, solved }) : computed;
}

/**
 * What a job's lumber costs at each set of its suppliers, each searched as the job itself; none where there is one supplier.
 * @param means - where plans are searched, and how long.
 * @param input - the job.
 * @param result - the job as computed, which tells what lumber it needs.
 */
export async function provenSupplierCosts(
  means: SearchMeans,
  input: JobInput,
  result: JobResult,
): Promise<readonly SupplierCost[]> {
  const suppliers = suppliersOf(input, [...result.cutPlans, ...result.unplanned]);
  if (suppliers.length < 2) return [];
  const costs: SupplierCost[] = [];
  for (const way of supplierWays(suppliers)) {
    const cutting = { ...input.design.cutting, suppliers: [...way.suppliers] };
    const computed = await computeProven(means, { ...input, design: { ...input.design, cutting } });
    if (computed.ok) costs.push(supplierCost(input, way, lumberSum(computed.value.result)));
  }
  return costs;
}
