import { useMemo } from 'react';
import { computeJob } from '../../../core/job/compute-job.ts';
import type { JobInput } from '../../../core/job/job-file.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import { inputOfWay, waysOf } from '../../../core/offer/offered-ways.ts';
import { useSearchedPlans } from '../compute/use-plan-search.ts';
import { useJob } from '../job-context.ts';

/** The way that the quote offers first, with its figures. */
export type Offered = { readonly input: JobInput; readonly result: JobResult };

/** The way that is offered first, as last computed; null while there are no figures of it. */
export function useOffered(): Offered | null {
  const { computation } = useJob();
  const { solved } = useSearchedPlans();
  const { good } = computation;
  return useMemo(() => {
    if (good === null) return null;
    const [first] = waysOf(good.input);
    if (first === undefined || first.id === '') return good;
    const input = inputOfWay(good.input, first);
    const result = computeJob(input, solved);
    return result.ok ? { input, result: result.value } : null;
  }, [good, solved]);
}
