import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveDesign } from './design-document.ts';

/** Thickness of the boards that stand before the tails, from the tails outward. [in] */
export type EdgeBoards = {
  /** 0 where there is none. */
  readonly subFasciaIn: number;
  readonly fasciaIn: number;
  /** Both together. */
  readonly thicknessIn: number;
};

/**
 * The edge boards of an eave at their actual thickness. Source: PS 20-20 (dressed-sizes.ts). Not rounded.
 * Worked: 1x8 on a 2x6 -> 1-1/2 and 3/4, together 2-1/4. A section that is not known counts as nothing.
 * @param design - of the eave.
 */
export function edgeBoards({ fascia }: Pick<EaveDesign, 'fascia'>): EdgeBoards {
  const subFasciaIn = fascia.subFascia.wanted
    ? (dressedSection(fascia.subFascia.stock.section)?.thicknessIn ?? 0)
    : 0;
  const fasciaIn = dressedSection(fascia.stock.section)?.thicknessIn ?? 0;
  return { subFasciaIn, fasciaIn, thicknessIn: subFasciaIn + fasciaIn };
}
