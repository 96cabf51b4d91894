import { steepestPitchRisePer12 } from '../units/pitch.ts';
import type { PlacedRafter } from './layout-types.ts';

/** The extender's own top edge once its tail stands on the fascia line. */
export type OwnEdge = {
  readonly pitchRisePer12: number;
  readonly heightAbovePlateIn: number;
  readonly liftAtTailIn: number;
};

/** How a tail is set against the roof that it goes on from. */
export type Setting = {
  /** Its own level overhang. [in] */
  readonly overhangLevelIn: number;
  readonly backspanRatio: number;
  /** Of a full-length rafter: level, from the wall's framing face to its back end; else null. [in] */
  readonly spanLevelIn: number | null;
  /** A fixed flatter pitch, and how far its top edge stands above the roof's at the wall; null at the roof's pitch. */
  readonly kickUp: { readonly pitchRisePer12: number; readonly raiseIn: number } | null;
};

type Roof = Pick<PlacedRafter, 'pitchRisePer12' | 'heightAbovePlateIn' | 'clearBackspanIn'>;

/** A kicked-up tail is brought to its line by no more than this: past it a reading is wrong. [in] Common practice, no source. */
const furthestKickIn = 12;

/**
 * Whether a piece with this edge can be built: it falls outward, and no steeper than the program takes, or than the old
 * rafter beside it falls already with an inch in twelve to spare, since on a roof at that limit half the tails come down
 * to the line. A kicked-up tail, which keeps its pitch, is raised or lowered by no more than a foot.
 */
export function steepnessOf(
  edge: OwnEdge,
  roof: Pick<Roof, 'pitchRisePer12'>,
  kickedUp: boolean,
): 'buildable' | 'rises-outward' | 'too-steep' | 'too-far' {
  if (kickedUp && Math.abs(edge.liftAtTailIn) > furthestKickIn) return 'too-far';
  if (edge.pitchRisePer12 <= 0) return 'rises-outward';
  const steepest = Math.max(steepestPitchRisePer12, roof.pitchRisePer12 + 1);
  return edge.pitchRisePer12 <= steepest ? 'buildable' : 'too-steep';
}

/**
 * Height of a tail's own top corner above the plate before it is brought to any line: HAP - m P; of a kicked-up tail
 * HAP + raise - k P with its own flatter slope k. [in]
 */
export function tailTopAsFoundIn(
  roof: Pick<Roof, 'pitchRisePer12' | 'heightAbovePlateIn'>,
  { overhangLevelIn, kickUp }: Pick<Setting, 'overhangLevelIn' | 'kickUp'>,
): number {
  const risePer12 = kickUp?.pitchRisePer12 ?? roof.pitchRisePer12;
  return roof.heightAbovePlateIn + (kickUp?.raiseIn ?? 0) - (risePer12 / 12) * overhangLevelIn;
}

/**
 * The edge of a tail whose top corner stands at the wanted height. At the roof's pitch it is turned about its back end,
 * which stays flush with the roof's top edge: that end lies ratio x overhang inside the wall, or at the clear backspan
 * where that is less, both along the tail's own slope, or at the back end of a full-length rafter. A kicked-up tail keeps
 * its pitch and is raised or lowered as a whole, by its packer. Source: geometry (two points give the edge). Not rounded.
 * Worked: 6/12, HAP 5, P 16, ratio 2, tail lifted 0.48 to -2.52 -> back end at -32, 21; own pitch 5.88/12, own HAP 5.32.
 * @param roof - with its own pitch, HAP and clear backspan. [in]
 * @param setting - overhang and reach. [in]
 * @param tailTopIn - wanted height of the tail's top corner above the plate. [in]
 */
export function standOnLine(roof: Roof, setting: Setting, tailTopIn: number): OwnEdge {
  const { overhangLevelIn, kickUp } = setting;
  const slope = kickUp === null ? slopeTo(roof, setting, tailTopIn) : kickUp.pitchRisePer12 / 12;
  return {
    pitchRisePer12: slope * 12,
    heightAbovePlateIn: tailTopIn + slope * overhangLevelIn,
    liftAtTailIn: tailTopIn - tailTopAsFoundIn(roof, setting),
  };
}

function slopeTo(
  roof: Roof,
  { overhangLevelIn, backspanRatio, spanLevelIn }: Setting,
  tailTopIn: number,
): number {
  const roofSlope = roof.pitchRisePer12 / 12;
  const wantedLevelIn = spanLevelIn ?? backspanRatio * overhangLevelIn;
  const clearIn = (spanLevelIn === null ? roof.clearBackspanIn : null) ?? Number.POSITIVE_INFINITY;
  let slope = roofSlope;
  // The clear backspan runs along the slope that is sought: a few rounds settle it far below a sixteenth.
  for (let round = 0; round < 12; round += 1) {
    const backLevelIn = Math.min(wantedLevelIn, clearIn / Math.hypot(1, slope));
    const backTopIn = roof.heightAbovePlateIn + roofSlope * backLevelIn;
    slope = (backTopIn - tailTopIn) / (overhangLevelIn + backLevelIn);
  }
  return slope;
}
