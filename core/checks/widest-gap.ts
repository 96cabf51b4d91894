import type { EaveToCheck } from './eave-to-check.ts';
import type { Place } from './answer.ts';

/** The widest gap between neighbouring tails, centre to centre. */
export type WidestGap = { readonly gapIn: number; readonly at: Place };

/** Finds it; a tail that stands alone has none, and gives 0. [in] */
export function widestGap({ tails }: Pick<EaveToCheck, 'tails'>): WidestGap {
  let widest: WidestGap = { gapIn: 0, at: { where: 'Whole eave', stationIn: null } };
  for (const [index, right] of tails.entries()) {
    const left = tails[index - 1];
    if (left === undefined) continue;
    const gapIn = right.extender.centreIn - left.extender.centreIn;
    if (gapIn <= widest.gapIn) continue;
    widest = {
      gapIn,
      at: {
        where: `Between rafters ${left.extender.rafterNumber} and ${right.extender.rafterNumber}`,
        stationIn: (left.extender.centreIn + right.extender.centreIn) / 2,
      },
    };
  }
  return widest;
}
