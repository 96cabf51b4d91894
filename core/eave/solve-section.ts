import { bearingOf } from './bearing.ts';
import { kickUpOf, toBackEnd } from './kick-up.ts';
import { outlineOf } from './section-outline.ts';
import type { RafterSection, SectionInput } from './section-types.ts';
import { type TailEnd, tailEndOf } from './tail-end.ts';

/**
 * Solves one tail in section: seat or shim, throat, backspan, blank, tail, fascia cover, soffit, clearances.
 *
 * Axes: x level, outward from the wall's framing face; y up from the plate's top. With m = rise/run, t = atan m and
 * s = sqrt(1 + m^2) the top edge is y = HAP - m x and the bottom edge lies d s plumb below it. Of a kicked-up tail m and
 * HAP are its own, and its back end lies no further in than it still lies against the rafter. Nothing is rounded.
 * Source: geometry, trade.md 1; proved in tests by intersecting lines.
 * Worked: 6/12, HAP 5, 2x6 (5-1/2), P 16 -> O 17.889, d s 6.149, heel 1.149, seat 2.298, throat 4.472,
 * plumb-tail blank at 2:1 with 1 in. to trim 17.889 x 3 + 2.75 + 1 = 57.416 in.
 * @param input - actual sizes, own pitch and own height above plate of this tail. [in]
 * @returns every figure of the section. [in]
 */
export function solveSection(input: SectionInput): RafterSection {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const cos = 1 / slopeFactor;
  const { depthIn, heightAbovePlateIn, overhangLevelIn, tailCut } = input;
  const plumbDepthIn = depthIn * slopeFactor;
  const overhangAlongIn = overhangLevelIn * slopeFactor;

  const backspanWantedIn =
    input.spanLevelIn === null ? input.backspanRatio * overhangAlongIn : input.spanLevelIn * slopeFactor;
  const kickUp = input.kickedFrom === null ? null : kickUpOf(input, input.kickedFrom);
  const backspanIn = Math.min(
    backspanWantedIn,
    // A full-length rafter takes the old one's whole length, so nothing is in its way.
    (input.spanLevelIn === null ? input.clearBackspanIn : null) ?? Number.POSITIVE_INFINITY,
    kickUp?.beside?.toIn ?? Number.POSITIVE_INFINITY,
  );
  // A plumb cut's bottom corner lies d m further down the slope; on a piece that rises outward, further up it.
  const pastTailTopIn = tailCut === 'plumb' ? Math.max(0, depthIn * m) : 0;
  const pastBackTopIn = input.backEnd === 'parallel' ? Math.max(0, -depthIn * m) : 0;
  const finishedLengthIn = pastBackTopIn + backspanIn + overhangAlongIn + pastTailTopIn;

  const tail = tailEndOf(input);
  const tailDropIn = overhangLevelIn * m;
  const fasciaNeededIn = tail.faceIn + input.fasciaDropIn;

  const bearing = bearingOf(input, backspanIn * cos);
  return {
    pitchRisePer12: input.pitchRisePer12,
    heightAbovePlateIn,
    slopeFactor,
    slopeAngleDeg: (Math.atan(m) * 180) / Math.PI,
    overhangLevelIn,
    overhangAlongIn,
    plumbDepthIn,
    bearing,
    throatIn: bearing.kind === 'notched' ? heightAbovePlateIn * cos : depthIn,
    backspanWantedIn,
    backspanIn,
    backspanRatio: backspanIn / overhangAlongIn,
    finishedLengthIn,
    blankLengthIn: finishedLengthIn + input.trimAllowanceIn,
    squareTailSetbackIn: tail.setbackIn,
    tailDropIn,
    tailTopAbovePlateIn: heightAbovePlateIn - tailDropIn,
    tailBottomAbovePlateIn: tail.bottomAbovePlateIn,
    tailFaceIn: tail.faceIn,
    levelCutIn: tail.levelCutIn,
    fasciaNeededIn,
    fasciaSpareIn: input.fasciaDepthIn - fasciaNeededIn,
    ...soffitOf(input, tail, slopeFactor),
    deepestInsertIn: heightAbovePlateIn * cos,
    kickUp: kickUp === null ? null : toBackEnd(kickUp, backspanIn),
    outline: outlineOf(input, backspanIn, bearing, tail),
  };
}

/**
 * A level soffit hangs at the tail's lowest corner; a sloped one lies under the tails, level cut and all, and meets the
 * wall where their bottom edge does; open tails meet the wall there too. The window head stands at the wall, so that is
 * where its room is.
 */
function soffitOf(
  input: SectionInput,
  tail: TailEnd,
  slopeFactor: number,
): Pick<RafterSection, 'soffitWidthIn' | 'soffitBelowPlateIn' | 'windowHeadClearanceIn'> {
  const lowestOutIn = input.overhangLevelIn - tail.setbackIn;
  const tailAtWallIn = input.heightAbovePlateIn - input.depthIn * slopeFactor;
  const lowestAtWallIn = {
    level: tail.bottomAbovePlateIn - input.soffitThicknessIn,
    sloped: tailAtWallIn - input.soffitThicknessIn * slopeFactor,
    open: tailAtWallIn,
  }[input.soffit];
  return {
    soffitWidthIn: {
      level: lowestOutIn,
      sloped: (lowestOutIn - tail.levelCutIn) * slopeFactor + tail.levelCutIn,
      open: null,
    }[input.soffit],
    soffitBelowPlateIn: input.soffit === 'level' ? -lowestAtWallIn : null,
    windowHeadClearanceIn:
      input.windowHeadBelowPlateIn === null ? null : input.windowHeadBelowPlateIn + lowestAtWallIn,
  };
}
