import { useEffect, useRef, useState } from 'react';
import type { CostStaircase } from '../../../../core/job/cost-staircase.ts';
import type { JobInput } from '../../../../core/job/job-file.ts';
import type { Problem } from '../../../../core/problems/problem.ts';
import { invoke, subscribe } from '../../../bridge.ts';
import { keepFoundPlans } from '../../compute/use-plan-search.ts';

/** The staircase as far as it is known, and how far that is. */
export type Climb = {
  /** What it was reckoned from. */
  readonly input: JobInput;
  readonly staircase: CostStaircase | null;
  readonly state:
    | { readonly kind: 'running'; readonly says: string }
    | { readonly kind: 'done' }
    | { readonly kind: 'failed'; readonly problem: Problem | null };
};

/** A staircase, and what can be done about it. */
export type Climbing = {
  readonly climb: Climb | null;
  /** Reckons it anew. */
  readonly start: (input: JobInput) => void;
  /** Leaves it at what is found. */
  readonly enough: () => void;
};

/** How far below and above the overhang is looked. [in] */
const reachIn = 3;

/** No overhang that the design takes is less or more. [in] */
const leastIn = 1;
const mostIn = 96;

/** Time to search, once every overhang is reckoned. [ms] */
const searchMs = 14_000;

/** Reckons the cost staircase of an eave on the host; one that is no longer looked at is given up. Key it by the eave. */
export function useStaircase(eaveId: string): Climbing {
  const [climb, setClimb] = useState<Climb | null>(null);
  const running = useRef<string | null>(null);
  useEffect(() => () => giveUp(running), []);
  useEffect(
    () =>
      subscribe((event) => {
        if (event.kind !== 'staircase' || event.solveId !== running.current) return;
        const { staircase, stage, done, of } = event;
        const says =
          stage === 'reckoning'
            ? `Reckoning overhang ${done} of ${of}.`
            : `Searching for cheaper boards and proofs: ${done} of ${of}.`;
        setClimb((now) => (now === null ? null : { ...now, staircase, state: { kind: 'running', says } }));
      }),
    [],
  );
  return {
    climb,
    start(input) {
      const overhangIn = input.design.eaves.find((eave) => eave.eaveId === eaveId)?.overhangIn;
      if (overhangIn === undefined) return;
      giveUp(running);
      const solveId = crypto.randomUUID();
      running.current = solveId;
      setClimb({ input, staircase: null, state: { kind: 'running', says: 'Reckoning the first overhang.' } });
      void (async () => {
        const state = await climbOnHost(solveId, input, eaveId, overhangIn);
        if (running.current !== solveId || state === null) return;
        running.current = null;
        setClimb((now) => (now === null ? null : { ...now, ...state }));
      })();
    },
    enough: () => cancel(running.current, 'enough'),
  };
}

function giveUp(running: { current: string | null }): void {
  cancel(running.current, 'superseded');
  running.current = null;
}

function cancel(solveId: string | null, why: 'enough' | 'superseded'): void {
  if (solveId !== null) invoke('cutting.cancel', { solveId, why }).catch(() => undefined);
}

async function climbOnHost(
  solveId: string,
  { asOf, job, survey, design, settings, priceList }: JobInput,
  eaveId: string,
  overhangIn: number,
): Promise<(Partial<Pick<Climb, 'staircase'>> & Pick<Climb, 'state'>) | null> {
  try {
    const reply = await invoke('cutting.staircase', {
      solveId,
      job: { asOf, job, survey, design, settings, priceList },
      eaveId,
      fromIn: Math.max(leastIn, overhangIn - reachIn),
      toIn: Math.min(mostIn, overhangIn + reachIn),
      limitMs: searchMs,
    });
    if (!reply.ok) return { state: { kind: 'failed', problem: reply.problem } };
    const { staircase, plans } = reply.value;
    if (staircase === null) return null;
    keepFoundPlans(plans);
    return { staircase, state: { kind: 'done' } };
  } catch {
    return { state: { kind: 'failed', problem: null } };
  }
}
