import { bearingOf } from './bearing.ts';
import { outlineOf } from './section-outline.ts';
import type { RafterSection, SectionInput } from './section-types.ts';

/**
 * Solves one tail in section: seat or shim, throat, backspan, blank, tail, fascia cover, soffit, clearances.
 *
 * Axes: x level, outward from the wall's framing face; y up from the plate's top. With m = rise/run, t = atan m and
 * s = sqrt(1 + m^2) the top edge is y = HAP - m x and the bottom edge lies d s plumb below it. The back end is square to
 * the slope. Nothing is rounded. Source: geometry, trade.md 1; proved in tests by intersecting lines.
 * Worked: 6/12, HAP 5, 2x6 (5-1/2), P 16 -> O 17.889, d s 6.149, heel 1.149, seat 2.298, throat 4.472,
 * plumb-tail blank at 2:1 with 1 in. to trim 17.889 x 3 + 2.75 + 1 = 57.416 in.
 * @param input - actual sizes, own pitch and own height above plate of this tail. [in]
 * @returns every figure of the section. [in]
 */
export function solveSection(input: SectionInput): RafterSection {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const cos = 1 / slopeFactor;
  const sin = m / slopeFactor;
  const { depthIn, heightAbovePlateIn, overhangLevelIn, tailCut } = input;
  const plumbDepthIn = depthIn * slopeFactor;
  const overhangAlongIn = overhangLevelIn * slopeFactor;

  const backspanWantedIn = input.backspanRatio * overhangAlongIn;
  const backspanIn = Math.min(backspanWantedIn, input.clearBackspanIn ?? Number.POSITIVE_INFINITY);
  // A plumb cut's bottom corner lies d m further down the slope; on a piece that rises outward the top corner is the far one.
  const pastTopCornerIn = tailCut === 'plumb' ? Math.max(0, depthIn * m) : 0;
  const finishedLengthIn = backspanIn + overhangAlongIn + pastTopCornerIn;

  const squareTailSetbackIn = tailCut === 'square' ? depthIn * sin : 0;
  const tailDropIn = overhangLevelIn * m;
  const tailTopAbovePlateIn = heightAbovePlateIn - tailDropIn;
  const tailBottomAbovePlateIn = tailTopAbovePlateIn - (tailCut === 'plumb' ? plumbDepthIn : depthIn * cos);
  const tailFaceIn = tailCut === 'plumb' ? plumbDepthIn : depthIn;
  const fasciaNeededIn = tailFaceIn + input.fasciaDropIn;

  const bearing = bearingOf(input, backspanIn * cos);
  const soffit = soffitOf(input, tailBottomAbovePlateIn, overhangLevelIn - squareTailSetbackIn, slopeFactor);
  return {
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
    squareTailSetbackIn,
    tailDropIn,
    tailTopAbovePlateIn,
    tailBottomAbovePlateIn,
    tailFaceIn,
    fasciaNeededIn,
    fasciaSpareIn: input.fasciaDepthIn - fasciaNeededIn,
    ...soffit,
    deepestInsertIn: heightAbovePlateIn * cos,
    outline: outlineOf(input, backspanIn, bearing),
  };
}

/**
 * A level soffit hangs at the tail's lowest corner; a sloped one lies under the tails, and meets the wall where their
 * bottom edge does; open tails meet the wall there too. The window head stands at the wall, so that is where its room is.
 */
function soffitOf(
  input: SectionInput,
  tailBottomIn: number,
  lowestCornerOutIn: number,
  slopeFactor: number,
): Pick<RafterSection, 'soffitWidthIn' | 'soffitBelowPlateIn' | 'windowHeadClearanceIn'> {
  const level = input.soffit === 'level';
  const tailAtWallIn = input.heightAbovePlateIn - input.depthIn * slopeFactor;
  const lowestAtWallIn = {
    level: tailBottomIn - input.soffitThicknessIn,
    sloped: tailAtWallIn - input.soffitThicknessIn * slopeFactor,
    open: tailAtWallIn,
  }[input.soffit];
  return {
    soffitWidthIn: { level: lowestCornerOutIn, sloped: lowestCornerOutIn * slopeFactor, open: null }[
      input.soffit
    ],
    soffitBelowPlateIn: level ? -lowestAtWallIn : null,
    windowHeadClearanceIn:
      input.windowHeadBelowPlateIn === null ? null : input.windowHeadBelowPlateIn + lowestAtWallIn,
  };
}
