import type { RafterSection } from '../eave/section-types.ts';
import type { Point } from './drawing.ts';

/**
 * Turns a point of the section's axes into those of the piece as it lies on the saw: x along its top edge, 0 where the
 * wall line crosses it and positive toward the tail; y square to it, 0 at the top edge and negative into the wood.
 * Source: geometry (turned by the slope's angle about the top edge's point over the wall). Not rounded.
 * Worked: 6/12, HAP 5: the plate's corner [0, 0] -> [5 x 0.4472, -5 x 0.8944] = [2.236, -4.472].
 * @param section - of the tail. [in]
 */
export function toPieceAxes(
  section: Pick<RafterSection, 'pitchRisePer12' | 'slopeFactor' | 'heightAbovePlateIn'>,
): (point: Point) => Point {
  const cosine = 1 / section.slopeFactor;
  const sine = section.pitchRisePer12 / 12 / section.slopeFactor;
  return ([x, y]) => {
    const up = y - section.heightAbovePlateIn;
    return [x * cosine - up * sine, x * sine + up * cosine];
  };
}
