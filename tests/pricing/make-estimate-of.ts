import type { CutPlan, UnplannedStock } from '../../core/cutting/cut-plan-types.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { Estimate, EstimateTotal } from '../../core/pricing/estimate-types.ts';
import { makeEstimate } from '../../core/pricing/estimate.ts';
import type { Takeoff } from '../../core/takeoff/takeoff-types.ts';
import type { Usd } from '../../core/units/money.ts';

/** Estimates what must be sound. */
export const estimateOf = (
  input: JobInput,
  takeoff: Takeoff,
  cutPlans: readonly CutPlan[] = [],
  unplanned: readonly UnplannedStock[] = [],
): Estimate => {
  const made = makeEstimate(input, takeoff, cutPlans, unplanned);
  if (!made.ok) throw new Error(made.problem.code);
  return made.value;
};

/** The steps of an estimate by key. */
export const amounts = (estimate: Estimate) =>
  Object.fromEntries(estimate.totals.map(({ key, amountUsd }) => [key, amountUsd])) as Record<
    EstimateTotal['key'],
    Usd
  >;

/** The entry of one price, seen on the day that most tests use. */
export const seen = (priceUsd: string, more: Record<string, unknown> = {}) => ({
  prices: [{ priceUsd, observedOn: '2026-04-13', ...more }],
});
