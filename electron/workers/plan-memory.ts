import type { Raced } from './solver-race.ts';

/** A plan that was solved for, and how long it was searched. */
export type KnownPlan = Raced & {
  /** Longer searches may find a better one; Infinity where nobody is to search again. [ms] */
  readonly searchedMs: number;
};

/** Plans by the key of their problem; the one that was asked for longest ago is forgotten first. */
export type PlanMemory = {
  readonly get: (key: string) => KnownPlan | undefined;
  readonly put: (key: string, known: KnownPlan) => void;
};

/**
 * Makes an empty memory.
 * @param most - plans that are kept. [-]
 */
export function createPlanMemory(most: number): PlanMemory {
  const plans = new Map<string, KnownPlan>();
  const put = (key: string, known: KnownPlan): void => {
    plans.delete(key);
    plans.set(key, known);
    if (plans.size <= most) return;
    const [oldest] = plans.keys();
    if (oldest !== undefined) plans.delete(oldest);
  };
  return {
    get(key) {
      const known = plans.get(key);
      if (known !== undefined) put(key, known);
      return known;
    },
    put,
  };
}
