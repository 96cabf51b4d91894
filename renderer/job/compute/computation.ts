import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { computeJob } from '../../../core/job/compute-job.ts';
import type { JobInput } from '../../../core/job/job-file.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import type { Documents } from '../editor/documents.ts';
import { draftProblems } from '../editor/enter.ts';
import { withoutUnfilled } from './filled.ts';
import { placementProblems } from './measured-eave.ts';

/** What the job is computed with besides its own documents. */
export type Surroundings = {
  readonly today: string;
  readonly settings: ShopSettings;
  readonly prices: readonly PriceItem[];
};

/** The figures on the screen, and what stands in the way of newer ones. */
export type Computation = {
  /** The last good result and what it was computed from; null while there was none. */
  readonly good: { readonly input: JobInput; readonly result: JobResult } | null;
  /** False where `good` is from before the last change. */
  readonly current: boolean;
  /** What has to be mended first. Those with `field` stand at the entry. */
  readonly problems: readonly Problem[];
};

/** Before anything was computed. */
export const nothingComputed: Computation = { good: null, current: false, problems: [] };

/**
 * Computes the job anew, or keeps the last good figures and says what has to be mended.
 * @param before - the figures so far.
 * @param documents - the job as it stands now.
 * @param surroundings - day, settings and prices.
 * @param solved - cut plans that were searched before, by `problemKey`.
 */
export function computeNext(
  before: Computation,
  documents: Documents,
  surroundings: Surroundings,
  solved?: ReadonlyMap<string, CutPlan>,
): Computation {
  const unread = draftProblems(documents).filter((problem) => countsInFigures(problem.field));
  const misplaced = placementProblems(documents);
  if (unread.length > 0 && before.good !== null)
    return { good: before.good, current: false, problems: [...unread, ...misplaced] };
  // Until a first result is there, the last good values give one, unless an eave has never held a value.
  const filled = unread.length === 0 ? documents : withoutUnfilled(documents);
  if (filled === null) return { good: null, current: false, problems: [...unread, ...misplaced] };
  const input = inputOf(filled, surroundings);
  const computed = computeJob(input, solved);
  if (!computed.ok) {
    const others = misplaced.filter((problem) => problem.field !== computed.problem.field);
    return { good: before.good, current: false, problems: [...unread, computed.problem, ...others] };
  }
  return { good: { input, result: computed.value }, current: unread.length === 0, problems: unread };
}

/** What the computation takes, from the documents and their surroundings. */
export function inputOf(documents: Documents, surroundings: Surroundings): JobInput {
  return {
    asOf: documents.estimateOn ?? surroundings.today,
    job: documents.info,
    survey: documents.survey,
    design: documents.design,
    settings: surroundings.settings,
    priceList: [...surroundings.prices],
  };
}

function countsInFigures(path: string): boolean {
  return !path.startsWith('info.');
}
