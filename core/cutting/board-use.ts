import type { CutItem, CuttingProblem } from './cut-plan-types.ts';

/** What the length that pieces take depends on besides the pieces. */
export type Saw = Pick<CuttingProblem, 'kerfSixteenths' | 'endTrimSixteenths' | 'depthSixteenths'>;

/**
 * By how much a piece's overall length exceeds its mid-line length. A slant that reaches past the whole piece, or that no
 * depth is given for, is not made use of: the piece is laid as if its ends were square, which needs no less room.
 * @returns whole sixteenths. [1/16 in]
 */
export function slantOf(saw: Saw, item: Omit<CutItem, 'mark'>): number {
  const slant = item.slantSixteenths ?? 0;
  return saw.depthSixteenths !== undefined && slant < item.lengthSixteenths ? slant : 0;
}

/**
 * What one cut takes along the board. The kerf is measured square to the cut, so a slanted one takes kerf x sqrt(1 +
 * (slant / depth)^2), here rounded up.
 * @param saw - kerf and depth. [1/16 in]
 * @param slant - of the cut, from edge to edge. [1/16 in]
 * @returns e.g. kerf 2, depth 88, slant 44 (6/12 on a 2x6): 2.24 -> 3. [1/16 in]
 */
export function kerfAlong({ kerfSixteenths: kerf, depthSixteenths: depth }: Saw, slant: number): number {
  if (slant === 0 || depth === undefined || depth === 0) return kerf;
  let along = Math.floor(kerf * Math.sqrt(1 + (slant / depth) ** 2));
  // The root may be a hair off; whole numbers decide.
  while (along * along * depth * depth < kerf * kerf * (depth * depth + slant * slant)) along += 1;
  return along;
}

/**
 * Length that pieces take in one board, tip to tip: pieces with parallel plumb ends nest, so that each takes its mid-line
 * length, and the most slanted one its slant once. Between two slants a wedge of half their difference stays on either
 * side, and from the square end of the board up to the steepest cut and back these add up to that one slant, as long as
 * the pieces stand in the order of their slants. Between two pieces goes the kerf of the steeper cut.
 * @param saw - kerf and depth. [1/16 in]
 * @param items - pieces in any order; they are reckoned in the order of their slants. [1/16 in]
 * @returns e.g. two pieces of 640 overall with slant 44 and kerf 3 along: 596 + 3 + 596 + 44 = 1239. [1/16 in]
 */
export function usedSixteenths(saw: Saw, items: readonly Omit<CutItem, 'mark'>[]): number {
  let middle = 0;
  let kerfs = 0;
  let most = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const slant = slantOf(saw, item);
    middle += item.lengthSixteenths - slant;
    kerfs += kerfAlong(saw, slant);
    most = Math.max(most, slant);
    least = Math.min(least, slant);
  }
  return items.length === 0 ? 0 : middle + kerfs - kerfAlong(saw, least) + most;
}
