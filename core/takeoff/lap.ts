import type { EaveDesign } from '../eave/design-document.ts';
import type { Extender } from '../layout/layout-types.ts';
import { inchesOf } from '../units/sixteenths.ts';

/**
 * Whether an extender's two ends are parallel plumb cuts, so that pieces nest head to tail in a board. Of a kicked-up or
 * hung tail too: every end is cut at the piece's own pitch.
 * @param design - of its eave.
 */
export function hasPlumbEnds(design: Pick<EaveDesign, 'backEnd' | 'tailCut'>): boolean {
  return design.backEnd === 'parallel' && design.tailCut === 'plumb';
}

/**
 * Length along the slope over which nails can be driven between an extender and its rafter: on the shorter of its two edges,
 * no longer than its filler, and of a kicked-up tail only where it lies against the rafter. A back end cut plumb takes d m
 * off the bottom edge. A tail that hangs, or stands in the old rafter's place, has none. Source: geometry. Not rounded.
 * Worked: 6/12, backspan 35.777 in., back end plumb, 5-1/2 deep -> 35.777 - 5.5 x 0.5 = 33.027 in.
 * @param extender - as laid out. [in]
 * @param design - of its eave.
 * @param depthIn - actual depth of the extender. [in]
 */
export function lapOf(
  { method, section, pitchRisePer12, filler }: Extender,
  design: Pick<EaveDesign, 'backEnd'>,
  depthIn: number,
): number {
  if (method === 'block-hung' || method === 'end-replacement') return 0;
  const { kickUp } = section;
  const alongIn =
    kickUp === null ? section.backspanIn : kickUp.lap === null ? 0 : kickUp.lap.toIn - kickUp.lap.fromIn;
  const shorterIn = design.backEnd === 'parallel' ? (depthIn * Math.abs(pitchRisePer12)) / 12 : 0;
  const fillerIn = filler === null ? Number.POSITIVE_INFINITY : inchesOf(filler.lengthSixteenths);
  return Math.max(0, Math.min(alongIn - shorterIn, fillerIn));
}
