import { edgeBoards } from '../eave/edge-boards.ts';
import { slopeFactor } from '../units/pitch.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';

/** Size of one sheet and gap between sheets. [in] */
export type SheetSize = { readonly widthIn: number; readonly lengthIn: number };

/** A sheet where the price list gives no size: 4 ft x 8 ft. [in] */
export const ordinarySheet: SheetSize = { widthIn: 48, lengthIn: 96 };

/**
 * Gap left at every edge of a panel. [in]
 * Source: panel makers' layout rule, 1/8 in. at all edges, seen on secondary pages only.
 */
export const panelGapIn = 0.125;

/** The strip of new sheathing on one eave. */
export type SheathingStrip = {
  /** Up the slope. [in] */
  readonly widthIn: number;
  /** Stations of its ends; along the eave it is as long as they are apart. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly lengthIn: number;
  readonly areaSqFt: number;
  /** Of kicked-up tails: how far up from the edge the pitch breaks, where courses have to meet; else null. [in] */
  readonly breakIn: number | null;
};

/**
 * Size of the strip: width = (longest level overhang + edge boards where covered) x slope factor + tie-back. Of kicked-up
 * tails it runs at their own slope to the break, and on from there as far as the tie-back asks beyond it. It is as long as
 * the fascia's face; at an inside corner it begins at the wall's end, since its upper edge does, and is cut along the
 * valley. Not rounded. Source: slope factor sqrt(1 + m^2), as on framing-square tables.
 * @param eave - the eave as surveyed, designed and laid out.
 * @returns 16 in. at 6/12, fascia not covered, no tie-back -> 17.89 in. wide. [in, SF]
 */
export function sheathingStrip({ survey, design, layout }: EaveToTakeOff): SheathingStrip {
  const { left, right } = layout.fasciaRun;
  const fromIn = Math.min(0, left.faceIn);
  const toIn = Math.max(layout.wallLengthIn, right.faceIn);
  const lengthIn = toIn - fromIn;
  const edgeIn = design.sheathing.coversFascia ? edgeBoards(design).thicknessIn : 0;
  const breakIn = breakUpIn(layout, edgeIn);
  const { widthIn } = breakIn ?? {
    widthIn: (longestOverhangIn(layout) + edgeIn) * slopeFactor(survey.pitchRisePer12),
  };
  const beyondIn = Math.max(0, design.sheathing.tieBackIn - (breakIn?.insideIn ?? 0));
  return {
    widthIn: widthIn + beyondIn,
    fromIn,
    toIn,
    lengthIn,
    areaSqFt: ((widthIn + beyondIn) * lengthIn) / 144,
    breakIn: breakIn?.widthIn ?? null,
  };
}

/** On a bowed wall the tails' own overhangs differ, and the strip has to reach the wall line at the longest. [in] */
function longestOverhangIn({ extenders, overhangLevelIn }: EaveToTakeOff['layout']): number {
  return extenders.reduce(
    (longest, extender) => Math.max(longest, extender.overhangLevelIn),
    overhangLevelIn,
  );
}

/** From the edge up to the furthest break of kicked-up tails, and how far inside the wall it lies along the roof. [in] */
function breakUpIn(
  { extenders }: EaveToTakeOff['layout'],
  edgeIn: number,
): { readonly widthIn: number; readonly insideIn: number } | null {
  let furthest: { readonly widthIn: number; readonly insideIn: number } | null = null;
  for (const { section } of extenders) {
    const { kickUp, slopeFactor: ownFactor } = section;
    if (kickUp === null) continue;
    const widthIn = kickUp.breakToTailIn + edgeIn * ownFactor;
    if (furthest !== null && widthIn <= furthest.widthIn) continue;
    furthest = { widthIn, insideIn: -kickUp.breakOutIn * slopeFactor(kickUp.roofPitchRisePer12) };
  }
  return furthest;
}

/**
 * Divides a strip into courses from the edge up, with a gap at every edge; where the pitch breaks a course ends.
 * @param strip - width up the slope. [in]
 * @param coverIn - width of one panel, or what one plank covers. [in]
 * @param gapIn - between two courses. [in]
 * @returns lower and upper edge of each course; 60 in. with 48 in. panels and 1/8 in. -> 0 to 48, 48-1/8 to 60. [in]
 */
export function coursesOf(
  { widthIn, breakIn }: Pick<SheathingStrip, 'widthIn' | 'breakIn'>,
  coverIn: number,
  gapIn: number,
): readonly { readonly lowIn: number; readonly highIn: number }[] {
  const courses: { lowIn: number; highIn: number }[] = [];
  let lowIn = 0;
  for (const topIn of breakIn === null ? [widthIn] : [breakIn, widthIn])
    while (topIn - lowIn > 1e-6) {
      const highIn = Math.min(topIn, lowIn + coverIn);
      courses.push({ lowIn, highIn });
      lowIn = highIn + gapIn;
    }
  return courses;
}

/**
 * Nails on one support across a strip: the spacing is never exceeded and both edges get a nail.
 * @param widthIn - width of the course across the support. [in]
 * @param spacingIn - largest spacing on centre. [in]
 * @returns whole nails; 48 in. at 6 in. -> 9.
 */
export function nailsAcross(widthIn: number, spacingIn: number): number {
  return widthIn <= 0 ? 0 : Math.ceil(widthIn / spacingIn - 1e-9) + 1;
}
