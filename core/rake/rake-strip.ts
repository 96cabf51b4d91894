import { formatLength } from '../units/format-length.ts';
import { ordinarySheet, panelGapIn } from '../takeoff/sheathing-strip.ts';
import { gableFaces, gableRafterOf, insideFaces, type RakeParts } from './rake-parts.ts';
import type { RakeStrip } from './rake-types.ts';

/** How far in from the gable the old deck is stripped back. [in] */
export type StripBack = {
  readonly insideIn: number;
  /** Of every second course of planks; the same where all break alike. [in] */
  readonly everySecondIn: number;
  /** The member that the new sheathing's inner edge lands on; null where it lands on none. */
  readonly landsOn: string | null;
};

/**
 * Where the old deck stays on: as designed, else the middle of the first rafter inside, so that both decks bear on it.
 * @param parts - the rake and its eave. [in]
 */
export function stripBackOf(parts: RakeParts): StripBack {
  const { survey, design, layout } = parts;
  const gable = gableRafterOf(parts);
  const inside = layout.rafters
    .filter(({ id }) => id !== gable?.id)
    .map((rafter) => ({
      label: `rafter ${rafter.number}`,
      ...insideFaces(parts, { leftIn: rafter.leftFaceIn, rightIn: rafter.rightFaceIn }),
    }))
    .toSorted((a, b) => a.outerInsideIn - b.outerInsideIn);
  const first = inside[0];
  const firstThicknessIn =
    first === undefined ? parts.eave.rafterThicknessIn : first.innerInsideIn - first.outerInsideIn;
  const firstFaceIn = survey.firstInsideIn ?? first?.outerInsideIn;
  const middleIn = firstFaceIn === undefined ? undefined : firstFaceIn + firstThicknessIn / 2;
  const insideIn =
    design.sheathing.stripBackIn ??
    middleIn ??
    (gable === undefined ? 0 : gableFaces(parts, gable).innerInsideIn);
  const everySecondIn =
    design.sheathing.kind === 'planks' ? (design.sheathing.everySecondIn ?? insideIn) : insideIn;
  const landsOn =
    design.sheathing.stripBackIn === null
      ? middleIn === undefined
        ? null
        : (first?.label ?? 'the first rafter inside')
      : (inside.find((one) => insideIn >= one.outerInsideIn && insideIn <= one.innerInsideIn)?.label ?? null);
  return { insideIn, everySecondIn, landsOn };
}

/**
 * The strip of new sheathing up a rake, from the top of the eave's new sheathing (or from the edge where the eave gets
 * none) to the ridge's centre line, and from the rake's edge in to where the old deck stays on. Panels are laid with their
 * length up the slope, across the lookouts, with a gap at every edge. Source: geometry. Not rounded.
 * Worked: overhang 12, rake fascia 3/4 covered, stripped back to 16-1/8 -> 28-7/8 wide; from 26 to 178 along the slope:
 * 152 in. x 28-7/8 in. = 30.48 sq ft, joints at 26-1/16 and 122-3/16.
 * @param parts - the rake and its eave. [in]
 * @param line - along the slope: the eave's wall line, the ridge, and the lower edge at the eave. [in]
 * @param sheetLengthIn - of the panel on the price list; null takes the ordinary 8 ft. [in]
 * @returns null where no new sheathing is wanted.
 */
export function rakeStripOf(
  parts: RakeParts,
  line: { readonly wallAlongIn: number; readonly alongIn: number; readonly edgeAlongIn: number },
  rakeFasciaIn: number,
  sheetLengthIn: number | null,
): RakeStrip | null {
  const { design, eaveDesign } = parts;
  const { sheathing } = design;
  if (sheathing.kind === 'none') return null;
  const outIn = design.overhangIn + (sheathing.coversFascia ? rakeFasciaIn : 0);
  const { insideIn, everySecondIn } = stripBackOf(parts);
  const widthIn = outIn + (insideIn + everySecondIn) / 2;
  const onEave = eaveDesign.sheathing.kind !== 'none';
  const fromIn = onEave ? line.wallAlongIn + eaveDesign.sheathing.tieBackIn : line.edgeAlongIn;
  const toIn = line.alongIn;
  if (toIn <= fromIn) return null;
  return {
    widthIn,
    outIn,
    fromIn,
    toIn,
    areaSqFt: (widthIn * (toIn - fromIn)) / 144,
    jointsIn:
      sheathing.kind === 'panels'
        ? panelJoints(fromIn, toIn, sheetLengthIn ?? ordinarySheet.lengthIn, onEave)
        : [],
  };
}

/** The middles of the gaps between panels up the slope. [in] */
function panelJoints(
  fromIn: number,
  toIn: number,
  sheetLengthIn: number,
  onEave: boolean,
): readonly number[] {
  const joints = onEave ? [fromIn + panelGapIn / 2] : [];
  const startIn = onEave ? fromIn + panelGapIn : fromIn;
  for (
    let endIn = startIn + sheetLengthIn + panelGapIn;
    endIn < toIn && joints.length < mostJoints;
    endIn += sheetLengthIn + panelGapIn
  )
    joints.push(endIn - panelGapIn / 2);
  return joints;
}

/** More than any roof has; a sheet of no length would never end. */
const mostJoints = 200;

/** The strip in words, for a label: `2' 4-7/8" by 12' 8"`. */
export function stripText({ widthIn, fromIn, toIn }: RakeStrip): string {
  return `${formatLength(widthIn)} by ${formatLength(toIn - fromIn)}`;
}
