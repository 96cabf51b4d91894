import type { SisterPattern } from '../pricing/shop-settings.ts';

/** One nail of a joint. */
export type NailPosition = {
  /** 1 is the row nearest the top edge. */
  readonly row: number;
  /** From the back end of the lap, along the slope. [in] */
  readonly alongIn: number;
};

/** Fewest nails that a joint gets, however short the lap: our own floor, common practice, no source. */
export const fewestNailsInJoint = 4;

const dustIn = 1e-9;

/**
 * Lays out the nails of an extender-to-rafter joint: straight rows, every second row offset by half the spacing.
 *
 * Each row starts an end distance in from the back end (the second row half a spacing further) and goes on at the
 * spacing as long as it keeps the end distance to the other end. A lap so short that this gives fewer than
 * `fewestNailsInJoint` gets that many (a whole number a row), spread evenly between the two end distances.
 * Source: common practice, no source (two rows of 16d at 16 in. on centre, offset 8 in.).
 * @param overlapIn - length over which the faces touch, along the slope. [in]
 * @param pattern - rows, spacing and end distance. [in]
 * @returns positions by row; not rounded. 48 in., two rows at 16 in., 2 in. from the ends -> 2, 18, 34 and 10, 26, 42. [in]
 */
export function staggeredNails(
  overlapIn: number,
  pattern: Pick<SisterPattern, 'rows' | 'spacingIn' | 'endDistanceIn'>,
): readonly NailPosition[] {
  const positions = patternNails(overlapIn, pattern);
  return positions.length >= fewestNailsInJoint || overlapIn <= 0
    ? positions
    : spreadEvenly(overlapIn, pattern);
}

/** Nails of the pattern alone, without the floor. [in] */
export function patternNails(
  overlapIn: number,
  pattern: Pick<SisterPattern, 'rows' | 'spacingIn' | 'endDistanceIn'>,
): readonly NailPosition[] {
  if (overlapIn <= 0) return [];
  const lastIn = overlapIn - pattern.endDistanceIn;
  const positions: NailPosition[] = [];
  for (let row = 1; row <= pattern.rows; row += 1) {
    const offsetIn = row % 2 === 0 ? pattern.spacingIn / 2 : 0;
    const firstIn = pattern.endDistanceIn + offsetIn;
    for (let index = 0; firstIn + index * pattern.spacingIn <= lastIn + dustIn; index += 1) {
      positions.push({ row, alongIn: firstIn + index * pattern.spacingIn });
    }
  }
  return positions;
}

function spreadEvenly(
  overlapIn: number,
  pattern: Pick<SisterPattern, 'rows' | 'endDistanceIn'>,
): readonly NailPosition[] {
  const perRow = Math.ceil(fewestNailsInJoint / pattern.rows);
  const endIn = Math.min(pattern.endDistanceIn, overlapIn / 4);
  const positions: NailPosition[] = [];
  for (let row = 1; row <= pattern.rows; row += 1) {
    for (let index = 0; index < perRow; index += 1) {
      const share = perRow === 1 ? 0.5 : index / (perRow - 1);
      positions.push({ row, alongIn: endIn + share * (overlapIn - 2 * endIn) });
    }
  }
  return positions;
}
