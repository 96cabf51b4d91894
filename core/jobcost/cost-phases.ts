import { type Phase, phases } from '../eave/phases.ts';
import type { JobCostSettings } from '../pricing/shop-settings.ts';

/** Where costs go that no phase of the shop takes. */
export const otherPhase = 'Other';

/**
 * The phases that a shop keeps its costs by, in order; what none of them takes goes to the last, `Other`.
 * @returns e.g. the estimate's own ten phases and `Other`, where the shop has set none.
 */
export function costPhases({ phases: own }: Pick<JobCostSettings, 'phases'>): readonly string[] {
  const names = own.length === 0 ? [...phases] : own.map(({ name }) => name);
  return [...new Set([...names, otherPhase])];
}

/** The shop's phase that takes what the estimate has under one of its own. */
export function costPhaseOf({ phases: own }: Pick<JobCostSettings, 'phases'>, phase: Phase): string {
  if (own.length === 0) return phase;
  return own.find(({ takes }) => takes.includes(phase))?.name ?? otherPhase;
}
