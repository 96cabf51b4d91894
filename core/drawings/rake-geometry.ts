import type { RakeLayout } from '../rake/rake-types.ts';
import type { Point } from './drawing.ts';

/** Lines of a rake's elevation, seen from outside the gable: the eave is on the right of a rake at a left end. [in] */
export type RakeGeometry = {
  /** +1 where the eave is on the right, -1 where it is on the left. */
  readonly outward: 1 | -1;
  /** A place level from the eave wall's framing face (outward positive) and above the plate. */
  readonly at: (levelIn: number, aboveIn: number) => Point;
  /** A place along the slope on the barge rafter's top edge, and so far square above it. */
  readonly onSlope: (alongIn: number, aboveIn: number) => Point;
  /** Direction up the slope, of length one. */
  readonly upSlope: Point;
  /** Height of the gable rafter's top edge over a place. */
  readonly gableTop: (levelIn: number) => number;
  readonly slope: number;
};

export function rakeGeometry(rake: RakeLayout): RakeGeometry {
  const outward = rake.end === 'left' ? 1 : -1;
  const slope = rake.pitchRisePer12 / 12;
  const cosine = 1 / rake.slopeFactor;
  const sine = slope * cosine;
  const at = (levelIn: number, aboveIn: number): Point => [outward * levelIn, aboveIn];
  return {
    outward,
    at,
    onSlope: (alongIn, aboveIn) =>
      at(
        rake.eaveOverhangIn - alongIn * cosine + aboveIn * sine,
        rake.tailTopIn + alongIn * sine + aboveIn * cosine,
      ),
    upSlope: [-outward * cosine, sine],
    gableTop: (levelIn) => rake.gable.heightAbovePlateIn - (rake.gable.pitchRisePer12 / 12) * levelIn,
    slope,
  };
}

/**
 * Outline of a board up the slope with a plumb cut at the ridge, from the lower end's top corner clockwise up the slope.
 * @param board - ends of its top edge along the slope. [in]
 * @param depthIn - of the board, square to the slope. [in]
 * @param lowerEnd - plumb, or square to the slope.
 */
export function boardOutline(
  geometry: RakeGeometry,
  board: { readonly fromIn: number; readonly toIn: number },
  depthIn: number,
  lowerEnd: 'plumb' | 'square',
): readonly Point[] {
  const plumbShift = depthIn * geometry.slope;
  return [
    geometry.onSlope(board.fromIn, 0),
    geometry.onSlope(board.toIn, 0),
    geometry.onSlope(board.toIn - plumbShift, -depthIn),
    geometry.onSlope(board.fromIn - (lowerEnd === 'plumb' ? plumbShift : 0), -depthIn),
  ];
}
