import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';

/** What a search came to: the plan, where there is one, and why it ended. */
export type SearchedPlan = {
  readonly plan: CutPlan | null;
  readonly ended: 'proven' | 'limit' | 'stopped' | 'no-plan';
};

/** What was searched, by `problemKey`, and of it the plans, as the computation takes them. */
export type SearchedPlans = {
  readonly searched: ReadonlyMap<string, SearchedPlan>;
  readonly solved: ReadonlyMap<string, CutPlan>;
};

/** Keeps what searches found while the window is open, for all of its jobs. */
export type PlanStore = {
  readonly read: () => SearchedPlans;
  readonly subscribe: (listener: () => void) => () => void;
  readonly put: (found: readonly (readonly [key: string, found: SearchedPlan])[]) => void;
};

/** Each length that is tried while one types leaves a plan; the oldest are let go. */
const mostPlans = 400;

/** Makes an empty store. */
export function createPlanStore(most = mostPlans): PlanStore {
  let plans: SearchedPlans = { searched: new Map(), solved: new Map() };
  const listeners = new Set<() => void>();
  return {
    read: () => plans,
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    put(found) {
      if (found.length === 0) return;
      const searched = new Map(plans.searched);
      for (const [key, one] of found) {
        searched.delete(key);
        searched.set(key, one);
      }
      for (const key of [...searched.keys()].slice(0, Math.max(0, searched.size - most)))
        searched.delete(key);
      const solved = new Map(
        [...searched].flatMap(([key, { plan }]) => (plan === null ? [] : [[key, plan] as const])),
      );
      plans = { searched, solved };
      for (const listener of listeners) listener();
    },
  };
}
