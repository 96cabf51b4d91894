import { ratedPanels } from '../checks/data/panel-ratings.ts';
import type { EaveDesign } from '../eave/design-document.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { LayoutRules } from '../pricing/shop-settings.ts';

/** What neighbouring tails may stand apart, centre to centre, and what holds them to it. */
export type LargestGap = {
  readonly gapIn: number;
  readonly by: 'stated' | 'panels' | 'planks' | 'fascia' | 'soffit';
};

/** A fascia of this actual thickness spans as one on a sub-fascia does. [in] */
const thickFasciaIn = 1.5;

/**
 * The largest gap that may stand between neighbouring tails, centre to centre: what the person states; else the least of
 * what the sheathing, the fascia and the soffit may span. Panels go by their span rating, with or without edge support; an
 * unrated panel asks for nothing here, and the check of its span asks for the rating. Source: IRC Table R503.2.1.1(1) for
 * rated panels, cells from memory; the rest is the shop's own rule (common practice, no source).
 * Worked: a 32/16 panel without clips (28), a 1x fascia (24), a level soffit (24) -> 24 in., by the fascia.
 * @param design - of the eave. [in]
 * @param rules - the shop's. [in]
 */
export function largestGap(design: EaveDesign, rules: LayoutRules): LargestGap {
  const { largestGapIn } = design.layout;
  if (largestGapIn !== null) return { gapIn: largestGapIn, by: 'stated' };
  const gaps = [fasciaGap(design, rules), ...sheathingGap(design, rules), ...soffitGap(design, rules)];
  return gaps.reduce((least, one) => (one.gapIn < least.gapIn ? one : least));
}

function fasciaGap({ fascia }: EaveDesign, rules: LayoutRules): LargestGap {
  const thick =
    fascia.subFascia.wanted || (dressedSection(fascia.stock.section)?.thicknessIn ?? 0) >= thickFasciaIn;
  return { gapIn: thick ? rules.thickFasciaGapIn : rules.thinFasciaGapIn, by: 'fascia' };
}

function sheathingGap({ sheathing, structure }: EaveDesign, rules: LayoutRules): readonly LargestGap[] {
  if (sheathing.kind === 'none') return [];
  if (sheathing.kind === 'planks') return [{ gapIn: rules.plankGapIn, by: 'planks' }];
  if (structure.panelRating === null) return [];
  const { edgeSupportedIn, unsupportedIn } = ratedPanels[structure.panelRating];
  return [{ gapIn: structure.edgeClips ? edgeSupportedIn : unsupportedIn, by: 'panels' }];
}

function soffitGap({ soffit }: EaveDesign, rules: LayoutRules): readonly LargestGap[] {
  return soffit.kind === 'open' ? [] : [{ gapIn: rules.soffitGapIn, by: 'soffit' }];
}
