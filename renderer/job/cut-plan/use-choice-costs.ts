import { createContext, useContext, useEffect, useState } from 'react';
import { cuttingChoices, type LumberSum, lumberWith } from '../../../core/job/cutting-choices.ts';
import { supplierWays, suppliersOf } from '../../../core/job/supplier-ways.ts';
import type { JobCutting } from '../../../core/eave/job-cutting.ts';
import type { Surroundings } from '../compute/computation.ts';
import { choiceSearch, useJobSearching, useSearchedPlans } from '../compute/use-plan-search.ts';
import type { Documents } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** What the lumber would come to by another choice; null where the job could not be computed with it. */
export type TriedSums = ReadonlyMap<string, LumberSum | null>;

/** Tried sums, and what they were tried with. */
type Tried = {
  readonly documents: Documents;
  readonly surroundings: Surroundings;
  readonly sums: TriedSums;
};

/** The key of a way to buy among the tried sums. */
export function wayKey(suppliers: readonly string[]): string {
  return `way/${JSON.stringify(suppliers)}`;
}

/**
 * Tries the job without each of its choices, and at each set of suppliers, once its own boards are searched: one after
 * another between frames, so that typing is not held up. What is not proven is then searched by the host.
 */
export function useTriedSums(): TriedSums {
  const { computation, documents, surroundings, isWorking } = useJob();
  const { solved } = useSearchedPlans();
  const isSearching = useJobSearching() !== null;
  const [tried, setTried] = useState<Tried | null>(null);
  const good = computation.current ? computation.good : null;
  useEffect(() => {
    if (good === null || isSearching || isWorking) return undefined;
    const { input, result } = good;
    const { cutting } = input.design;
    const suppliers = suppliersOf(input, result.cutPlans);
    const ways = suppliers.length < 2 ? [] : supplierWays(suppliers);
    const toTry: (readonly [string, JobCutting])[] = [
      ...cuttingChoices(cutting).map(({ id, without }) => [id, without] as const),
      ...ways.map(({ suppliers: names }): readonly [string, JobCutting] => [
        wayKey(names),
        { ...cutting, suppliers: [...names] },
      ]),
    ];
    const sums = new Map<string, LumberSum | null>();
    let timer = 0;
    const next = (index: number): void => {
      const [id, without] = toTry[index] ?? [];
      if (id === undefined || without === undefined) {
        setTried({ documents, surroundings, sums });
        choiceSearch().want([...sums.values()].flatMap((sum) => sum?.open ?? []));
        return;
      }
      const sum = lumberWith(input, without, solved);
      sums.set(id, sum.ok ? sum.value : null);
      timer = window.setTimeout(() => next(index + 1));
    };
    timer = window.setTimeout(() => next(0));
    return () => {
      window.clearTimeout(timer);
      choiceSearch().want([]);
    };
  }, [good, solved, isSearching, isWorking, documents, surroundings]);
  // Sums of the job before the last change say nothing of it as it is now.
  return tried?.documents === documents && tried.surroundings === surroundings ? tried.sums : none;
}

const none: TriedSums = new Map();

/** The tried sums, for what stands inside the cut plan. */
export const TriedSumsContext = createContext<TriedSums>(none);

/** The sum of one choice; undefined while it is being tried. */
export function useTriedSum(id: string): LumberSum | null | undefined {
  return useContext(TriedSumsContext).get(id);
}
