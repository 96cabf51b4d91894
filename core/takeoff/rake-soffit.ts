import type { RakeDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import { itemLackDetail } from './item-lack.ts';
import type { NailUse } from './nail-use.ts';
import type { SheetPart } from './pack-sheets.ts';
import type { SheetUse } from './sheet-lines.ts';
import { nailsAcross, ordinarySheet, panelGapIn, type SheetSize } from './sheathing-strip.ts';
import { counted, rakeLabel } from './takeoff-context.ts';

/** What closes a rake from below. */
export type RakeSoffit = {
  /** Undefined where the item named cannot be bought as a sheet; then it is counted in ordinary sheets. */
  readonly item: PriceItem | undefined;
  readonly sheet: SheetSize;
  /** Level, from the gable wall's framing face to the barge rafter's inner face. [in] */
  readonly widthIn: number;
  /** Its ends along the slope, and where panels meet end to end between them. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly jointsIn: readonly number[];
  readonly areaSqFt: number;
  readonly parts: readonly SheetPart[];
  /** Lookouts or rungs over it, which it is nailed to. [-] */
  readonly bearings: number;
  readonly lack: Problem | null;
};

/**
 * The soffit of a rake: panels ripped to the overhang less the barge rafter, up the slope from over the eave's wall, where
 * the eave's own soffit ends, to the ridge's centre line. End joints lie on lookouts or rungs, as far up as a sheet reaches;
 * where none is within reach the sheet is used whole. A gap at every joint; the wall side is scribed.
 * Worked: overhang 12, barge 1-1/2 -> rips of 10-1/2.
 * @param input - price list and design.
 * @param rake - laid out. [in]
 * @param designIndex - of its design in the document.
 * @returns null where no soffit is chosen for the rake.
 */
export function rakeSoffitOf(
  input: Pick<JobInput, 'priceList' | 'design'>,
  rake: RakeLayout,
  designIndex: number,
): RakeSoffit | null {
  const itemId = input.design.rakes[designIndex]?.soffit.itemId ?? '';
  const widthIn = rake.overhangIn - rake.bargeSize.thicknessIn;
  const { wallAlongIn: fromIn, alongIn: toIn } = rake;
  if (itemId === '' || widthIn <= 0 || toIn <= fromIn) return null;
  const named = input.priceList.find(({ id }) => id === itemId);
  const fitting = named?.category === 'sheet' ? named : undefined;
  const item = fitting?.retired === true ? undefined : fitting;
  const sheet = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  const bearingsIn = rake.lookouts
    .map(({ alongIn }) => alongIn)
    .filter((alongIn) => alongIn > fromIn && alongIn < toIn);
  const jointsIn = jointsOn(bearingsIn, fromIn, toIn, sheet.lengthIn);
  return {
    item,
    sheet,
    widthIn,
    fromIn,
    toIn,
    jointsIn,
    areaSqFt: (widthIn * (toIn - fromIn)) / 144,
    parts: partsOf([fromIn, ...jointsIn, toIn], widthIn, sheet.widthIn),
    bearings: bearingsIn.length,
    lack:
      item === undefined
        ? {
            code: 'entry-invalid',
            what: `Soffit of ${rakeLabel(rake)} (${rake.name})`,
            detail: itemLackDetail({ itemId, kind: 'sheet', fits: fitting !== undefined, named }),
            field: `design.rakes.${designIndex}.soffit.itemId`,
          }
        : null,
  };
}

/** Joints on the furthest bearing that a sheet reaches, one after the other. [in] */
function jointsOn(
  bearingsIn: readonly number[],
  fromIn: number,
  toIn: number,
  sheetLengthIn: number,
): readonly number[] {
  const joints: number[] = [];
  let startIn = fromIn;
  while (toIn - startIn > sheetLengthIn + 1e-6) {
    const reachIn = startIn + sheetLengthIn + panelGapIn / 2;
    const onBearing = bearingsIn.filter((alongIn) => alongIn > startIn + 1e-6 && alongIn <= reachIn).at(-1);
    startIn = onBearing ?? reachIn;
    joints.push(startIn);
  }
  return joints;
}

function partsOf(stopsIn: readonly number[], widthIn: number, sheetWidthIn: number): readonly SheetPart[] {
  const rips: number[] = [];
  for (let leftIn = widthIn; leftIn > 1e-6; leftIn -= sheetWidthIn + panelGapIn)
    rips.push(Math.min(leftIn, sheetWidthIn));
  const last = stopsIn.length - 2;
  return stopsIn.slice(1).flatMap((toIn, index) => {
    const gaps = (index === 0 ? 0 : 1) + (index === last ? 0 : 1);
    const lengthIn = toIn - (stopsIn[index] ?? toIn) - (gaps * panelGapIn) / 2;
    return rips.map((ripIn) => ({ lengthIn, widthIn: ripIn }));
  });
}

/** What the soffit of a rake is cut from sheets; nothing where there is none. */
export function rakeSoffitUse(
  rake: RakeLayout,
  layout: EaveLayout,
  soffit: RakeSoffit | null,
): readonly SheetUse[] {
  if (soffit === null) return [];
  const { rakeId } = rake;
  return [
    {
      use: 'rake-soffit',
      item: soffit.item,
      sheet: soffit.sheet,
      layout,
      rake,
      parts: soffit.parts,
      areaSqFt: soffit.areaSqFt,
      trace: [
        {
          label: `${rakeLabel(rake)}: soffit, from the gable wall to the back of the barge rafter`,
          value: formatLength(soffit.widthIn),
          ref: `rake/${rakeId}/design/overhangIn`,
        },
        {
          label: `${rakeLabel(rake)}: up the slope from the eave's wall to the ridge`,
          value: formatLength(soffit.toIn - soffit.fromIn),
          ref: `rake/${rakeId}/line`,
        },
        {
          label: `${rakeLabel(rake)}: ${counted(soffit.jointsIn.length, 'end joint')}, each on a ${bearingWord(rake)}`,
          value: counted(soffit.parts.length, 'panel'),
        },
      ],
    },
  ];
}

/**
 * Nails of a rake's soffit: a row across on each lookout or rung over it, once more for the second panel at each joint, and
 * along the barge rafter nowhere further apart than the spacing set. The gable wall gives nothing to nail to.
 * Worked: 10-1/2 wide over 7 lookouts with 1 joint at 6 in. -> 8 rows of 3; 150 up the slope -> 26 along the barge.
 * @param fastening - nail kind and spacing. [in]
 */
export function rakeSoffitNails(
  rake: RakeLayout,
  soffit: RakeSoffit | null,
  fastening: Fastening,
): readonly NailUse[] {
  if (soffit === null) return [];
  const spacingIn = fastening.soffitSpacingIn;
  const rows = soffit.bearings + soffit.jointsIn.length;
  const across = rows * nailsAcross(soffit.widthIn, spacingIn);
  const along = nailsAcross(soffit.toIn - soffit.fromIn, spacingIn);
  return [
    {
      nail: fastening.soffitNail,
      use: 'rake-soffit',
      phase: 'Soffit',
      eaveId: rake.eaveId,
      rakeId: rake.rakeId,
      count: across + along,
      parts: [
        {
          label: `${rakeLabel(rake)}, soffit: ${counted(rows, 'row')} across at ${spacingIn}", and along the barge rafter`,
          value: counted(across + along, 'nail'),
          ref: 'setting/fastening.soffitSpacingIn',
        },
      ],
    },
  ];
}

/** A soffit whose item says no thickness is drawn as thick as panels for it commonly are. [in] */
const drawnThicknessIn = 0.375;

/** How thick a rake's soffit is drawn; null where the rake stays open. [in] */
export function rakeSoffitThicknessIn(
  { design, priceList }: Pick<JobInput, 'design' | 'priceList'>,
  rakeId: string,
): number | null {
  const itemId = design.rakes.find((one) => one.rakeId === rakeId)?.soffit.itemId ?? '';
  if (itemId === '') return null;
  return priceList.find(({ id }) => id === itemId)?.thicknessIn ?? drawnThicknessIn;
}

/** Length up the slope that a rake's soffit is set along; 0 where there is none. [in] */
export function rakeSoffitLengthIn(rake: RakeLayout, design: Pick<RakeDesign, 'soffit'>): number {
  return design.soffit.itemId === '' ? 0 : Math.max(0, rake.alongIn - rake.wallAlongIn);
}

function bearingWord(rake: RakeLayout): string {
  return rake.kind === 'ladder' ? 'rung' : 'lookout';
}
