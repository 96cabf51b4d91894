/** What one tail's section is computed from. All lengths actual. Axes: x level, outward from the wall's framing face. */
export type SectionInput = {
  /** Pitch of the extender's own top edge. [in/12 in] */
  readonly pitchRisePer12: number;
  /** Height of the extender's top edge above the plate's outer top edge, plumb. [in] */
  readonly heightAbovePlateIn: number;
  readonly plateWidthIn: number;
  /** Level overhang of the framing, wall's framing face to plumb line of the tail's top corner. [in] */
  readonly overhangLevelIn: number;
  /** Actual depth of the extender. [in] */
  readonly depthIn: number;
  readonly tailCut: 'plumb' | 'square';
  /** Depth left of the tail's cut face, its underside cut level from there; null leaves the face whole. [in] */
  readonly keptFaceIn: number | null;
  /** `parallel`: cut plumb, parallel to a plumb tail; `square`: square to the slope. */
  readonly backEnd: 'parallel' | 'square';
  readonly backspanRatio: number;
  /** Of a full-length rafter: level, from the wall's framing face to its back end, whatever the ratio asks; else null. [in] */
  readonly spanLevelIn: number | null;
  /** Clear backspan along the slope, null where nothing is in the way. [in] */
  readonly clearBackspanIn: number | null;
  readonly trimAllowanceIn: number;
  readonly fasciaDepthIn: number;
  readonly fasciaDropIn: number;
  readonly soffit: 'level' | 'sloped' | 'open';
  readonly soffitThicknessIn: number;
  readonly windowHeadBelowPlateIn: number | null;
  /** Null where the tail goes on at the roof's pitch. */
  readonly kickedFrom: KickedFrom | null;
};

/** The roof that a kicked-up tail leaves: of the old rafter, or between the two on either side of a hung tail. */
export type KickedFrom = {
  readonly pitchRisePer12: number;
  /** Plumb, from the plate's outer top edge. [in] */
  readonly heightAbovePlateIn: number;
  /** Actual depth of the rafter that the tail is nailed beside; null where it hangs between two. [in] */
  readonly rafterDepthIn: number | null;
  /** Depth over which the tail has to lie against the rafter for nails, square to the rafter. [in] */
  readonly leastLapIn: number;
};

/**
 * Where a kicked-up tail leaves the old roof. It is one piece, nailed beside the rafter where the two overlap, set at its
 * own flatter pitch on a seat or packer. Level distances are positive outward from the wall's framing face.
 */
export type KickUp = {
  readonly roofPitchRisePer12: number;
  /** How far its top edge stands above the rafter's, plumb at the wall line. [in] */
  readonly raiseAtWallIn: number;
  /** Where its top edge crosses the roof's: from there out the new deck lies flatter. [in] */
  readonly breakOutIn: number;
  readonly breakAbovePlateIn: number;
  /** Along its own slope, from the tail's top corner to that break. [in] */
  readonly breakToTailIn: number;
  /**
   * Along its own slope inward from the wall line: where it leaves the rafter's side but for less than two edge distances of
   * nails; null where it hangs. [in]
   */
  readonly leavesRafterIn: number | null;
  /**
   * The stretch over which it lies against the rafter by two edge distances or more, to its back end at most; null where it
   * hangs, or lies nowhere against it so far. [in]
   */
  readonly lap: { readonly fromIn: number; readonly toIn: number } | null;
};

/** How the extender meets the plate. */
export type Bearing =
  /** Notched over the plate: plumb heel cut and level seat; the seat bears on no more than the plate is wide. */
  | {
      readonly kind: 'notched';
      readonly heelCutIn: number;
      readonly seatIn: number;
      readonly bearingLengthIn: number;
      /** Notch depth square to the slope. [in] */
      readonly notchDepthIn: number;
    }
  /** Clear of the plate by this, plumb: needs a bearing shim of that height. */
  | { readonly kind: 'shimmed'; readonly shimIn: number }
  /** Bottom edge meets the plate's outer corner exactly. */
  | { readonly kind: 'on-corner' };

/** One tail, solved in full. Lengths are not rounded. */
export type RafterSection = {
  /** Of its own top edge. [in/12 in] */
  readonly pitchRisePer12: number;
  /** Of its own top edge at the wall line. [in] */
  readonly heightAbovePlateIn: number;
  readonly slopeFactor: number;
  readonly slopeAngleDeg: number;
  readonly overhangLevelIn: number;
  readonly overhangAlongIn: number;
  /** Depth of the extender measured plumb, d s. [in] */
  readonly plumbDepthIn: number;
  readonly bearing: Bearing;
  /** Wood left above the notch, square to the slope (whole depth where there is no notch). [in] */
  readonly throatIn: number;
  /** Backspan along the slope: what the ratio wants, and what is built. [in] */
  readonly backspanWantedIn: number;
  readonly backspanIn: number;
  readonly backspanRatio: number;
  /**
   * Along the slope from the back end to the tail's far corner before a level cut, without and with the trimming
   * allowance. [in]
   */
  readonly finishedLengthIn: number;
  readonly blankLengthIn: number;
  /** Level distance by which a square tail's bottom corner lies further in (0 for plumb). [in] */
  readonly squareTailSetbackIn: number;
  /** Drop of the tail's top corner below the top edge at the wall: P m. [in] */
  readonly tailDropIn: number;
  /** Height of the tail's top and lowest corner above the plate's top (negative below). [in] */
  readonly tailTopAbovePlateIn: number;
  readonly tailBottomAbovePlateIn: number;
  /** Depth of the tail's cut face, which the fascia has to cover (plus its drop). [in] */
  readonly tailFaceIn: number;
  /** Length of the level cut under the tail, inward from its lowest corner; 0 where there is none. [in] */
  readonly levelCutIn: number;
  readonly fasciaNeededIn: number;
  /** Actual fascia depth less what is needed; negative where it does not cover. [in] */
  readonly fasciaSpareIn: number;
  readonly soffitWidthIn: number | null;
  /** Underside of a level soffit below the plate's top (null where there is no level soffit). [in] */
  readonly soffitBelowPlateIn: number | null;
  /** Room between soffit (or tail) and window head; negative where it is too low. [in] */
  readonly windowHeadClearanceIn: number | null;
  /** Deepest board, square to the slope, that slides in between the old deck and the plate. [in] */
  readonly deepestInsertIn: number;
  /** Null where the tail goes on at the roof's pitch. */
  readonly kickUp: KickUp | null;
  /** Corner points for drawing and checks, [x, y] in the section's axes: top edge first, clockwise. [in] */
  readonly outline: readonly (readonly [number, number])[];
};
