import { steepestPitchRisePer12 } from '../units/pitch.ts';
import type { PlacedRafter } from './layout-types.ts';

/** The extender's own top edge once its tail stands on the fascia line. */
export type OwnEdge = {
  readonly pitchRisePer12: number;
  readonly heightAbovePlateIn: number;
  readonly liftAtTailIn: number;
};

/**
 * Whether a piece with this edge can be built: it falls outward, and no steeper than the program takes, or than the old
 * rafter beside it falls already with an inch in twelve to spare, since on a roof at that limit half the tails come down
 * to the line.
 */
export function steepnessOf(
  edge: OwnEdge,
  rafter: PlacedRafter,
): 'buildable' | 'rises-outward' | 'too-steep' {
  if (edge.pitchRisePer12 <= 0) return 'rises-outward';
  const steepest = Math.max(steepestPitchRisePer12, rafter.pitchRisePer12 + 1);
  return edge.pitchRisePer12 <= steepest ? 'buildable' : 'too-steep';
}

/** Height of a rafter's own tail corner above the plate: HAP - m P. [in] */
export function tailTopAsFoundIn(rafter: PlacedRafter, overhangLevelIn: number): number {
  return rafter.heightAbovePlateIn - (rafter.pitchRisePer12 / 12) * overhangLevelIn;
}

/**
 * Turns an extender about its back end, which stays flush with the rafter's top edge, until its tail's top corner stands
 * at the wanted height. The back end lies ratio x overhang inside the wall, or at the clear backspan where that is less;
 * both are measured along the extender's own slope. Source: geometry (two points give the edge). Not rounded.
 * Worked: 6/12, HAP 5, P 16, ratio 2, tail lifted 0.48 to -2.52 -> back end at -32, 21; own pitch 5.88/12, own HAP 5.32.
 * @param rafter - with its own pitch, HAP and clear backspan. [in]
 * @param overhangLevelIn - P. [in]
 * @param backspanRatio - of the overhang. [-]
 * @param tailTopIn - wanted height of the tail's top corner above the plate. [in]
 */
export function standOnLine(
  rafter: PlacedRafter,
  overhangLevelIn: number,
  backspanRatio: number,
  tailTopIn: number,
): OwnEdge {
  const rafterSlope = rafter.pitchRisePer12 / 12;
  const wantedLevelIn = backspanRatio * overhangLevelIn;
  let slope = rafterSlope;
  // The clear backspan runs along the slope that is sought: a few rounds settle it far below a sixteenth.
  for (let round = 0; round < 12; round += 1) {
    const clearLevelIn = (rafter.clearBackspanIn ?? Number.POSITIVE_INFINITY) / Math.hypot(1, slope);
    const backLevelIn = Math.min(wantedLevelIn, clearLevelIn);
    const backTopIn = rafter.heightAbovePlateIn + rafterSlope * backLevelIn;
    slope = (backTopIn - tailTopIn) / (overhangLevelIn + backLevelIn);
  }
  return {
    pitchRisePer12: slope * 12,
    heightAbovePlateIn: tailTopIn + slope * overhangLevelIn,
    liftAtTailIn: tailTopIn - tailTopAsFoundIn(rafter, overhangLevelIn),
  };
}
