import { useEffect, useMemo, useState } from 'react';
import { computeJob } from '../../../core/job/compute-job.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import { inputOfWay, type Way, waysOf } from '../../../core/offer/offered-ways.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import type { Result } from '../../../core/result.ts';
import { useSearchedPlans } from '../compute/use-plan-search.ts';
import { useJob } from '../job-context.ts';

/** A way with its figures; null while they are being computed. */
export type ComputedWay = Way & { readonly outcome: Result<JobResult, Problem> | null };

/** Between two ways the page answers keys and pointer. [ms] */
const breathMs = 20;

/** Every way of the job, the offered one first, each computed in a turn of its own so that the page goes on answering. */
export function useWays(): readonly ComputedWay[] {
  const { computation } = useJob();
  const { solved } = useSearchedPlans();
  const { good } = computation;
  const ways = useMemo(() => (good === null ? [] : waysOf(good.input)), [good]);
  const [made, setMade] = useState<{
    readonly ways: readonly Way[];
    readonly outcomes: readonly Result<JobResult, Problem>[];
  } | null>(null);
  useEffect(() => {
    if (good === null) return undefined;
    let timer = 0;
    const go = (at: number, before: readonly Result<JobResult, Problem>[]): void => {
      const way = ways[at];
      if (way === undefined) return;
      const outcomes = [...before, computeJob(inputOfWay(good.input, way), solved)];
      setMade({ ways, outcomes });
      timer = window.setTimeout(() => go(at + 1, outcomes), breathMs);
    };
    timer = window.setTimeout(() => go(0, []), breathMs);
    return () => window.clearTimeout(timer);
  }, [good, solved, ways]);
  return ways.map((way, at) => ({
    ...way,
    outcome: made?.ways === ways ? (made.outcomes[at] ?? null) : null,
  }));
}
