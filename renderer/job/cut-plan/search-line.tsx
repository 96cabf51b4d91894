import { Check, CircleAlert, LoaderCircle } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { wishWords } from '../../../core/documents/plan-words.ts';
import { lumberSum } from '../../../core/job/cutting-choices.ts';
import type { KeyedProblem } from '../../../core/job/unsettled-plans.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import { formatUsd, sumUsd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import type { Searching } from '../compute/plan-search.ts';
import { jobSearch, useJobSearching, useSearchedPlans } from '../compute/use-plan-search.ts';
import { useJob } from '../job-context.ts';
import { Said } from '../parts/said.tsx';

/**
 * How well the boards are known to be the cheapest: while they are searched, how long and how far, with a way to stop;
 * then the proof, or what is left to gain and a way to search on. One line that is always there, so that nothing jumps.
 */
export function SearchLine() {
  const { computation } = useJob();
  const searching = useJobSearching();
  const { searched } = useSearchedPlans();
  if (computation.good === null) return null;
  const { result } = computation.good;
  if (result.cutPlans.length === 0) return null;
  const { open } = lumberSum(result);
  // What nobody has searched yet is about to be: at the next pause in the typing.
  const isProving = searching !== null || (computation.current && open.some(({ key }) => !searched.has(key)));
  return (
    <div className="search-line">
      {isProving ? (
        <Running result={result} searching={searching} />
      ) : open.length === 0 ? (
        <Proven result={result} />
      ) : (
        <BestFound result={result} open={open} />
      )}
    </div>
  );
}

function Running({
  result,
  searching,
}: {
  readonly result: JobResult;
  readonly searching: Searching | null;
}) {
  const seconds = useSeconds(searching?.sinceMs ?? null);
  const reached = result.cutPlans.map(
    (plan, index) => searching?.reached.get(result.cuttingProblems[index]?.key ?? '') ?? plan,
  );
  return (
    <>
      <LoaderCircle size={16} aria-hidden="true" />
      <span role="status" className="visually-hidden">
        Proving the cut plan.
      </span>
      <span>
        <Said text={`Proving, ${seconds} s: best so far ${costOf(reached)}, bound ${boundOf(reached)}.`} />
      </span>
      {searching === null ? null : <Button onPress={() => jobSearch().enough()}>Cancel</Button>}
    </>
  );
}

function Proven({ result }: { readonly result: JobResult }) {
  return (
    <>
      <Check size={16} aria-hidden="true" />
      <span role="status">
        <Said
          text={`Proven: the lumber costs ${costOf(result.cutPlans)} in all; no purchase from this list costs less${wishWords(result.cutPlans)}.`}
        />
      </span>
    </>
  );
}

function BestFound({ result, open }: { readonly result: JobResult; readonly open: readonly KeyedProblem[] }) {
  return (
    <>
      <CircleAlert size={16} aria-hidden="true" />
      <span role="status">
        <Said
          text={`Best found: the lumber costs ${costOf(result.cutPlans)} in all; nothing can cost less than ${boundOf(result.cutPlans)}${wishWords(result.cutPlans)}.`}
        />
      </span>
      <Button onPress={() => jobSearch().again(open)}>Search on for a minute</Button>
    </>
  );
}

function costOf(plans: readonly Pick<CutPlan, 'costUsd'>[]): string {
  return formatUsd(sumUsd(plans.map(({ costUsd }) => costUsd)));
}

function boundOf(plans: readonly Pick<CutPlan, 'boundUsd'>[]): string {
  return formatUsd(sumUsd(plans.map(({ boundUsd }) => boundUsd)));
}

/** Whole seconds since a moment; 0 while there is none. */
function useSeconds(sinceMs: number | null): number {
  const [nowMs, setNowMs] = useState(() => performance.now());
  useEffect(() => {
    const timer = window.setInterval(() => setNowMs(performance.now()), 500);
    return () => window.clearInterval(timer);
  }, []);
  return sinceMs === null ? 0 : Math.max(0, Math.floor((nowMs - sinceMs) / 1000));
}
