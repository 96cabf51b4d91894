import { useEffect, useState } from 'react';
import { computeJob } from '../../../core/job/compute-job.ts';
import type { JobInput } from '../../../core/job/job-file.ts';
import { type Designed, type Variant, variantKeys, variantOf } from '../../../core/job/variants.ts';

/** The variants of an eave as far as they are computed. */
export type Variants = {
  /** What they were computed from. */
  readonly input: JobInput;
  readonly variants: readonly Variant[];
  readonly isComplete: boolean;
};

/** Between two variants the page answers keys and pointer. [ms] */
const breathMs = 20;

/**
 * Computes the variants of an eave one by one, each in a turn of its own so that the page goes on answering.
 * @param wanted - the job that they were asked for; null while they are not.
 * @param eaveId - of the eave.
 */
export function useVariants(wanted: JobInput | null, eaveId: string): Variants | null {
  const [made, setMade] = useState<Variants | null>(null);
  useEffect(() => {
    if (wanted === null) return undefined;
    let timer = 0;
    const go = (designed: Designed, at: number, before: readonly Variant[]): void => {
      const key = variantKeys[at];
      if (key === undefined) return;
      const variants = [...before, variantOf(key, designed)];
      setMade({ input: wanted, variants, isComplete: at + 1 === variantKeys.length });
      timer = window.setTimeout(() => go(designed, at + 1, variants), breathMs);
    };
    timer = window.setTimeout(() => {
      const designed = asDesigned(wanted, eaveId);
      if (designed !== null) go(designed, 0, []);
    }, breathMs);
    return () => window.clearTimeout(timer);
  }, [wanted, eaveId]);
  return wanted !== null && made?.input === wanted ? made : null;
}

/** The boards of every variant are planned in the same way, so the design's are too. */
function asDesigned(input: JobInput, eaveId: string): Designed | null {
  const result = computeJob(input);
  const design = input.design.eaves.find((eave) => eave.eaveId === eaveId);
  const layout = result.ok ? result.value.eaves.find((eave) => eave.eaveId === eaveId) : undefined;
  return result.ok && design !== undefined && layout !== undefined
    ? { input, layout, design, result: result.value }
    : null;
}
