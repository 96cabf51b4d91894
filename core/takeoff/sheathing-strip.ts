import { dressedSection } from '../lumber/dressed-sizes.ts';
import { slopeFactor } from '../units/pitch.ts';
import { sixteenthsUp } from '../units/sixteenths.ts';
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
  /** Along the eave. [in] */
  readonly lengthIn: number;
  readonly areaSqFt: number;
};

/**
 * Size of the strip: width = (level overhang + fascia thickness where covered) x slope factor + tie-back.
 * Source: slope factor sqrt(1 + m^2), as on framing-square tables.
 * @param eave - the eave as surveyed, designed and laid out.
 * @returns 16 in. at 6/12, fascia not covered, no tie-back -> 17.89 in. wide. [in, SF]
 */
export function sheathingStrip({ survey, design, layout }: EaveToTakeOff): SheathingStrip {
  const fasciaIn = design.sheathing.coversFascia
    ? (dressedSection(design.fascia.stock.section)?.thicknessIn ?? 0)
    : 0;
  const widthIn =
    (layout.overhangLevelIn + fasciaIn) * slopeFactor(survey.pitchRisePer12) + design.sheathing.tieBackIn;
  const lengthIn = layout.fasciaLengthIn;
  return { widthIn, lengthIn, areaSqFt: (widthIn * lengthIn) / 144 };
}

/** How one strip is covered by panels laid with their length along the eave. */
export type PanelCourses = {
  /** Widths of the courses, from the edge up. [in] */
  readonly courseWidthsIn: readonly number[];
  /** Panels one behind the other along the eave, in each course. */
  readonly panelsAlong: number;
};

/**
 * Divides a strip into courses of panels with a gap at every edge.
 * @param strip - width up the slope and length along the eave. [in]
 * @param sheet - size of one panel. [in]
 * @returns whole courses of the panel's width, then the rest; 60 in. with 48 in. panels -> 48 and 11-7/8 in. [in]
 */
export function panelCourses(
  strip: Pick<SheathingStrip, 'widthIn' | 'lengthIn'>,
  sheet: SheetSize,
): PanelCourses {
  const courseWidthsIn: number[] = [];
  let leftIn = strip.widthIn;
  while (leftIn > 1e-6) {
    const widthIn = Math.min(leftIn, sheet.widthIn);
    courseWidthsIn.push(widthIn);
    leftIn -= widthIn + panelGapIn;
  }
  const panelsAlong = Math.ceil((strip.lengthIn + panelGapIn) / (sheet.lengthIn + panelGapIn) - 1e-9);
  return { courseWidthsIn, panelsAlong: Math.max(1, panelsAlong) };
}

/**
 * Counts the sheets that strips of several eaves are ripped from: widest strip first, each into the first sheet that
 * still has room, one saw kerf between two rips.
 * @param courses - the courses of every eave. [in]
 * @param sheet - size of one sheet. [in]
 * @param kerfIn - width of the saw cut. [in]
 * @returns whole sheets; five strips of 17.89 in. from 48 in. sheets -> 3.
 */
export function sheetsNeeded(courses: readonly PanelCourses[], sheet: SheetSize, kerfIn: number): number {
  const kerf = sixteenthsUp(kerfIn);
  const room = Math.floor(sheet.widthIn * 16 + 1e-6) + kerf;
  const rips = courses
    .flatMap(({ courseWidthsIn, panelsAlong }) =>
      courseWidthsIn.flatMap((widthIn) =>
        Array.from({ length: panelsAlong }, () => sixteenthsUp(widthIn) + kerf),
      ),
    )
    .sort((a, b) => b - a);
  const left: number[] = [];
  for (const rip of rips) {
    const index = left.findIndex((space) => space >= rip);
    if (index === -1) left.push(room - rip);
    else left[index] = (left[index] ?? 0) - rip;
  }
  return left.length;
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

/**
 * Courses of planks that a strip takes.
 * @param widthIn - strip width up the slope. [in]
 * @param coverIn - width that one plank covers. [in]
 * @returns whole courses, rounded up; 17.89 in. with 5-1/2 in. planks -> 4.
 */
export function plankCourses(widthIn: number, coverIn: number): number {
  return Math.max(1, Math.ceil(widthIn / coverIn - 1e-9));
}
