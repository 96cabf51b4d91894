import type { CheckResult } from '../../../core/checks/check-types.ts';
import { runChecks } from '../../../core/checks/run-checks.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import { useJob } from '../job-context.ts';

/** One run for each result, whoever asks. */
const known = new WeakMap<JobResult, readonly CheckResult[]>();

/** What the checks say of the figures in view; null while there are no figures. */
export function useChecks(): readonly CheckResult[] | null {
  const { good } = useJob().computation;
  if (good === null) return null;
  const before = known.get(good.result);
  if (before !== undefined) return before;
  const checks = runChecks(good.input, good.result);
  known.set(good.result, checks);
  return checks;
}
