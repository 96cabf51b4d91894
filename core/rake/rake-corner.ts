import type { DressedSection } from '../lumber/dressed-sizes.ts';
import type { RakeCorner } from './rake-types.ts';

/**
 * The corner where the eave's fascia and the rake's meet. The eave's boards run out past the gable wall: on the back to the
 * barge rafter's outer face, on the face by the rake fascia's thickness further. On a plumb tail they stand plumb, so the
 * rake fascia's top edge runs past the tail by their thickness level, t s along the slope; on a square tail they lean, and
 * it runs past by t along the slope. The faces stand square to each other either way, so the mitre is
 * atan(t of the rake / t of the eave): 45 deg for boards as thick. Without a rake fascia the eave's ends square on the
 * barge rafter's outer face. Source: geometry. Not rounded.
 * Worked: 6/12, plumb, both 3/4 thick -> long point 0.75 x 1.118 = 0.839 past the tail's top corner, 45 deg; rake fascia
 * 7-1/4 deep -> its plumb cut is 8.106 high, 0.856 taller than an eave fascia of 7-1/4.
 * @param input.subFasciaIn - thickness of the eave's sub-fascia, 0 where there is none. [in]
 */
export function cornerOf(input: {
  readonly overhangIn: number;
  readonly tailCut: 'plumb' | 'square';
  readonly slopeFactor: number;
  readonly subFasciaIn: number;
  readonly eaveFascia: DressedSection;
  readonly rakeFascia: DressedSection | null;
}): RakeCorner {
  const { overhangIn, subFasciaIn, eaveFascia, rakeFascia } = input;
  const alongLevel = input.tailCut === 'plumb' ? input.slopeFactor : 1;
  if (rakeFascia === null)
    return {
      mitred: false,
      eaveShortOutIn: overhangIn,
      eaveLongOutIn: overhangIn,
      rakeShortAlongIn: 0,
      rakeLongAlongIn: 0,
      mitreDeg: 0,
      rakeTallerIn: 0,
    };
  return {
    mitred: true,
    eaveShortOutIn: overhangIn,
    eaveLongOutIn: overhangIn + rakeFascia.thicknessIn,
    rakeShortAlongIn: subFasciaIn * alongLevel,
    rakeLongAlongIn: (subFasciaIn + eaveFascia.thicknessIn) * alongLevel,
    mitreDeg: (Math.atan(rakeFascia.thicknessIn / eaveFascia.thicknessIn) * 180) / Math.PI,
    rakeTallerIn: rakeFascia.depthIn * alongLevel - eaveFascia.depthIn,
  };
}
