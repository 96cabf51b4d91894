import type { RakeDesign } from '../eave/design-document.ts';
import { dressedSection, type DressedSection } from '../lumber/dressed-sizes.ts';
import type { RakeCorner } from './rake-types.ts';

/** How far the eave's fascia runs past the gable wall's framing face to meet a rake. [in] */
export type EaveFasciaPast = {
  /** On its back, where it lies on the tails: to the barge rafter's outer face. */
  readonly backOutIn: number;
  /** On its face: the long point of the mitre, or the same where it ends square on the barge rafter. */
  readonly faceOutIn: number;
  readonly mitred: boolean;
};

/**
 * How far the eave's fascia runs out past the gable wall to meet a rake: its back to the barge rafter's outer face, its face
 * by the rake fascia's thickness further, so that both boards meet in a mitre. Without a rake fascia it ends square on the
 * barge rafter's outer face. Source: geometry. Not rounded.
 * Worked: overhang 12, rake fascia 1x8 (3/4) -> back 12, face 12-3/4.
 * @param design - of the rake. [in]
 * @returns undefined where nothing is built at the rake, or the rake fascia's section is not known. [in]
 */
export function eaveFasciaPast(
  design: Pick<RakeDesign, 'kind' | 'overhangIn' | 'fascia'>,
): EaveFasciaPast | undefined {
  if (design.kind === 'none') return undefined;
  const backOutIn = design.overhangIn;
  if (!design.fascia.wanted) return { backOutIn, faceOutIn: backOutIn, mitred: false };
  const size = dressedSection(design.fascia.stock.section);
  return size && { backOutIn, faceOutIn: backOutIn + size.thicknessIn, mitred: true };
}

/**
 * The corner where the eave's fascia and the rake's meet. On a plumb tail the eave's fascia stands plumb, so the rake
 * fascia's face runs past the tail by the eave fascia's thickness level, t s along the slope; on a square tail it leans,
 * and the face runs past by t along the slope. Both boards' faces stand square to each other in either case, so the mitre is
 * atan(t of the rake / t of the eave), 45 deg for boards as thick. Source: geometry. Not rounded.
 * Worked: 6/12, plumb, both 3/4 thick -> long point 0.75 x 1.118 = 0.839 past the tail's top corner, 45 deg; rake fascia
 * 7-1/4 deep -> its plumb cut is 8.106 high, 0.856 taller than an eave fascia of 7-1/4.
 */
export function cornerOf(input: {
  readonly past: EaveFasciaPast;
  readonly tailCut: 'plumb' | 'square';
  readonly slopeFactor: number;
  readonly eaveFascia: DressedSection;
  readonly rakeFascia: DressedSection | null;
}): RakeCorner {
  const { past, tailCut, slopeFactor, eaveFascia, rakeFascia } = input;
  const plumb = tailCut === 'plumb';
  const endCutIn = rakeFascia === null ? eaveFascia.depthIn : rakeFascia.depthIn * (plumb ? slopeFactor : 1);
  return {
    mitred: past.mitred,
    eaveShortOutIn: past.backOutIn,
    eaveLongOutIn: past.faceOutIn,
    rakeShortAlongIn: 0,
    rakeLongAlongIn: rakeFascia === null ? 0 : eaveFascia.thicknessIn * (plumb ? slopeFactor : 1),
    mitreDeg:
      rakeFascia === null
        ? 0
        : (Math.atan(rakeFascia.thicknessIn / eaveFascia.thicknessIn) * 180) / Math.PI,
    rakeTallerIn: endCutIn - eaveFascia.depthIn,
  };
}
