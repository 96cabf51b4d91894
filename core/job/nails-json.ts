import type { EaveDesign } from '../eave/design-document.ts';
import type { Extender } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { CoveredEave } from '../takeoff/cover.ts';
import { lapOf } from '../takeoff/lap.ts';
import { nailUses } from '../takeoff/nail-uses.ts';
import type { CoveredRake } from '../takeoff/rake-cover.ts';
import { rakeNailUses } from '../takeoff/rake-nails.ts';
import { staggeredNails } from '../takeoff/stagger.ts';
import type { Json } from './json.ts';

/**
 * The nails of a job by eave, rake and use as JSON, net of loss.
 * @param covered - the eaves with their cover.
 * @param fastening - kinds, counts and spacings.
 * @param rakes - the rakes with their cover.
 */
export function nailUsesJson(
  covered: readonly CoveredEave[],
  fastening: Fastening,
  rakes: readonly CoveredRake[],
) {
  return [
    ...covered.flatMap((eave) => nailUses(eave, fastening)),
    ...rakes.flatMap((rake) => rakeNailUses(rake, fastening)),
  ].map(
    ({ eaveId, rakeId, use, nail, count }) =>
      ({ eaveId, rakeId: rakeId ?? null, use, nail, countNails: count }) satisfies Json,
  );
}

/**
 * Where each nail of an extender-to-rafter joint goes as JSON: row 1 is nearest the top edge, positions run from the back
 * end of the lap along the slope. A tail that hangs or replaces a rafter has none. [in]
 */
export function jointJson(extender: Extender, design: EaveDesign, { sister, throughFillerNail }: Fastening) {
  const overlapIn = lapOf(extender, design, dressedSection(design.extender.section)?.depthIn ?? 0);
  const nails = staggeredNails(overlapIn, sister);
  return {
    nail: extender.method === 'filler' ? throughFillerNail : sister.nail,
    overlapIn,
    countNails: nails.length,
    positions: nails.map(({ row, alongIn }) => ({ row, alongIn })),
  } satisfies Json;
}
