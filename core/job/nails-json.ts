import type { Extender } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { CoveredEave } from '../takeoff/cover.ts';
import { nailUses } from '../takeoff/nail-uses.ts';
import { staggeredNails } from '../takeoff/stagger.ts';
import type { Json } from './json.ts';

/**
 * The nails of a job by eave and use as JSON, net of loss.
 * @param covered - the eaves with their cover.
 * @param fastening - kinds, counts and spacings.
 */
export function nailUsesJson(covered: readonly CoveredEave[], fastening: Fastening) {
  return covered
    .flatMap((eave) => nailUses(eave, fastening))
    .map(({ eaveId, use, nail, count }) => ({ eaveId, use, nail, countNails: count }) satisfies Json);
}

/**
 * Where each nail of an extender-to-rafter joint goes as JSON: row 1 is nearest the top edge, positions run from the back
 * end along the slope. [in]
 */
export function jointJson({ section }: Extender, { sister }: Fastening) {
  const nails = staggeredNails(section.backspanIn, sister);
  return {
    nail: sister.nail,
    overlapIn: section.backspanIn,
    countNails: nails.length,
    positions: nails.map(({ row, alongIn }) => ({ row, alongIn })),
  } satisfies Json;
}
