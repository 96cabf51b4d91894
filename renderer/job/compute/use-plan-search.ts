import { useEffect, useSyncExternalStore } from 'react';
import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { unsettledPlans } from '../../../core/job/unsettled-plans.ts';
import { invoke, subscribe } from '../../bridge.ts';
import type { Computation } from './computation.ts';
import { createPlanSearch, type PlanSearch, type Searching, type SearchWorld } from './plan-search.ts';
import { createPlanStore, type SearchedPlans } from './plan-store.ts';

const store = createPlanStore();

/** What was searched is left out by the search itself, which may be at it once more. */
const none: ReadonlySet<string> = new Set();

const world: SearchWorld = {
  solve: (input) => invoke('cutting.solve', input),
  cancel: (input) => invoke('cutting.cancel', input),
  hear: subscribe,
  later(act, afterMs) {
    const timer = window.setTimeout(act, afterMs);
    return () => window.clearTimeout(timer);
  },
  nowMs: () => performance.now(),
  newId: () => crypto.randomUUID(),
};

let ofJob: PlanSearch | null = null;
let ofChoices: PlanSearch | null = null;

/** The search for the boards of the job in view; started when it is first needed, since it listens to the host. */
export function jobSearch(): PlanSearch {
  ofJob ??= createPlanSearch(world, store);
  return ofJob;
}

/** The search for what choices would cost, which must not hold up the job's own. */
export function choiceSearch(): PlanSearch {
  ofChoices ??= createPlanSearch(world, store);
  return ofChoices;
}

/** What was searched so far; the component is drawn again when more is. */
export function useSearchedPlans(): SearchedPlans {
  return useSyncExternalStore(store.subscribe, store.read);
}

/** The search for the boards of the job in view, while one runs. */
export function useJobSearching(): Searching | null {
  const search = jobSearch();
  return useSyncExternalStore(search.subscribe, search.read);
}

/** The search for what choices would cost, while one runs. */
export function useChoiceSearching(): Searching | null {
  const search = choiceSearch();
  return useSyncExternalStore(search.subscribe, search.read);
}

/** Has the boards searched of every stock whose plan is not shown to be the best, as soon as the figures stand. */
export function useJobSearch({ current, good }: Computation): void {
  useEffect(() => {
    if (current && good !== null) jobSearch().want(unsettledPlans(good.result, none));
  }, [current, good]);
  useEffect(() => () => jobSearch().want([]), []);
}

/** Takes plans that were found in another way, where what a search found costs more; what nobody searched is left to it. */
export function keepFoundPlans(found: readonly { readonly key: string; readonly plan: CutPlan }[]): void {
  const { searched } = store.read();
  store.put(
    found.flatMap(({ key, plan }) => {
      const known = searched.get(key)?.plan;
      return known === undefined || known === null || Number(known.costUsd) <= Number(plan.costUsd)
        ? []
        : [[key, { plan, ended: plan.proof === 'none' ? 'limit' : 'proven' }] as const];
    }),
  );
}
