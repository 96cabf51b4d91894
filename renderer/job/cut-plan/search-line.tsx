import { Check, CircleAlert, LoaderCircle } from 'lucide-react';
import { useEffect, useState } from 'react';
import { lumberSum } from '../../../core/job/cutting-choices.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import { formatUsd, sumUsd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import type { Searching } from '../compute/plan-search.ts';
import { jobSearch, useJobSearching } from '../compute/use-plan-search.ts';
import { useJob } from '../job-context.ts';
import { Said } from '../parts/said.tsx';

/**
 * How well the boards are known to be the cheapest: while they are searched, how long and how far, with a way to stop;
 * then the proof, or what is left to gain and a way to search on. One line that is always there, so that nothing jumps.
 */
export function SearchLine() {
  const { computation } = useJob();
  const searching = useJobSearching();
  if (computation.good === null) return null;
  const { result } = computation.good;
  return (
    <div className="search-line">
      {searching === null ? <Found result={result} /> : <Running result={result} searching={searching} />}
    </div>
  );
}

function Running({ result, searching }: { readonly result: JobResult; readonly searching: Searching }) {
  const seconds = useSeconds(searching.sinceMs);
  const reached = result.cutPlans.map(
    (plan, index) => searching.reached.get(result.cuttingProblems[index]?.key ?? '') ?? plan,
  );
  return (
    <>
      <LoaderCircle size={16} aria-hidden="true" />
      <span role="status" className="visually-hidden">
        Proving the cut plan.
      </span>
      <span>
        <Said
          text={`Proving, ${seconds} s: best so far ${formatUsd(sumUsd(reached.map((plan) => plan.costUsd)))}, bound ${formatUsd(sumUsd(reached.map((plan) => plan.boundUsd)))}.`}
        />
      </span>
      <Button onPress={() => jobSearch().enough()}>Cancel</Button>
    </>
  );
}

function Found({ result }: { readonly result: JobResult }) {
  const cost = formatUsd(sumUsd(result.cutPlans.map((plan) => plan.costUsd)));
  const { open } = lumberSum(result);
  if (result.cutPlans.length === 0) return null;
  return open.length === 0 ? (
    <>
      <Check size={16} aria-hidden="true" />
      <span role="status">
        <Said text={`Proven: the lumber costs ${cost} in all; no purchase from this list costs less.`} />
      </span>
    </>
  ) : (
    <>
      <CircleAlert size={16} aria-hidden="true" />
      <span role="status">
        <Said
          text={`Best found: the lumber costs ${cost} in all; nothing can cost less than ${formatUsd(sumUsd(result.cutPlans.map((plan) => plan.boundUsd)))}.`}
        />
      </span>
      <Button onPress={() => jobSearch().again(open)}>Search on for a minute</Button>
    </>
  );
}

/** Whole seconds since a moment. */
function useSeconds(sinceMs: number): number {
  const [nowMs, setNowMs] = useState(() => performance.now());
  useEffect(() => {
    const timer = window.setInterval(() => setNowMs(performance.now()), 500);
    return () => window.clearInterval(timer);
  }, []);
  return Math.max(0, Math.floor((nowMs - sinceMs) / 1000));
}
