import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import { type CoverBoard, jointsOfCourse, layCourse } from './panel-layout.ts';
import {
  coursesOf,
  ordinarySheet,
  panelGapIn,
  sheathingStrip,
  type SheathingStrip,
  type SheetSize,
} from './sheathing-strip.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';

/** Length of a plank where the price list gives none. [in] Common practice, no source: 16 ft. */
const ordinaryPlankIn = 192;

/** What covers the new overhang of one eave. */
export type Cover =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'panels';
      readonly item: PriceItem | undefined;
      readonly strip: SheathingStrip;
      readonly sheet: SheetSize;
      /** Every panel as laid, course by course from the edge up. */
      readonly boards: readonly CoverBoard[];
    }
  | {
      readonly kind: 'planks';
      readonly item: PriceItem | undefined;
      readonly strip: SheathingStrip;
      /** Width that one course covers. [in] */
      readonly coverIn: number;
      /** Every plank as laid, course by course from the edge up. */
      readonly boards: readonly CoverBoard[];
    };

/** An eave to take off with its cover, and what is missing to buy that cover. */
export type CoveredEave = EaveToTakeOff & { readonly cover: Cover; readonly coverLacks: Problem | null };

/**
 * Decides what covers an eave: the sheet or plank that the design names on the price list. Where none is named or
 * the name leads nowhere, the quantity is still counted with the ordinary size, and the lack is told. An item that is
 * not bought any more lends its size, but is not bought.
 * @param eave - the eave as surveyed, designed and laid out.
 * @param input - for the price list and the width that a plank covers. [in]
 */
export function coverEave(eave: EaveToTakeOff, input: JobInput): CoveredEave {
  const { kind, itemId } = eave.design.sheathing;
  if (kind === 'none') return { ...eave, cover: { kind }, coverLacks: null };
  const strip = sheathingStrip(eave);
  const category = kind === 'panels' ? 'sheet' : 'plank';
  const named = input.priceList.find((item) => item.id === itemId);
  const fitting = named?.category === category ? named : undefined;
  const item = fitting?.retired === true ? undefined : fitting;
  const coverLacks =
    item === undefined
      ? coverLack(eave, {
          what: 'Sheathing',
          itemId,
          kind: category,
          fits: fitting !== undefined,
          named,
          entry: 'sheathing.itemId',
        })
      : null;
  if (kind === 'planks') {
    const coverIn =
      (fitting === undefined ? undefined : dressedSection(fitting.section)?.depthIn) ??
      input.settings.plankCoverIn;
    const boardIn = fitting?.lengthFt == null ? ordinaryPlankIn : fitting.lengthFt * 12;
    const boards = layCover(eave.layout, strip, { coverIn, boardIn, gapIn: 0 });
    return { ...eave, cover: { kind, item, strip, coverIn, boards }, coverLacks };
  }
  const sheet: SheetSize = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  const boards = layCover(eave.layout, strip, {
    coverIn: sheet.widthIn,
    boardIn: sheet.lengthIn,
    gapIn: panelGapIn,
  });
  return { ...eave, cover: { kind, item, strip, sheet, boards }, coverLacks };
}

/**
 * Lays the courses of a cover from the edge up, joints on the new tails, staggered from course to course.
 * @param layout - for the tails. [in]
 * @param strip - what is covered. [in]
 * @param size - width and length of one board, and the gap at its edges. [in]
 */
export function layCover(
  { extenders }: Pick<EaveLayout, 'extenders'>,
  strip: Pick<SheathingStrip, 'widthIn' | 'breakIn' | 'fromIn' | 'toIn'>,
  { coverIn, boardIn, gapIn }: { readonly coverIn: number; readonly boardIn: number; readonly gapIn: number },
): readonly CoverBoard[] {
  let below: readonly number[] = [];
  return coursesOf(strip, coverIn, gapIn).flatMap(({ lowIn, highIn }, index) => {
    const { fromIn, toIn } = strip;
    const laid = layCourse({ fromIn, toIn, tails: extenders, boardIn, gapIn }, below);
    below = jointsOfCourse(laid).map(({ stationIn }) => stationIn);
    return laid.map((board) => ({ ...board, course: index + 1, lowIn, highIn }));
  });
}

/** How many courses a cover has. */
export function courseCount(boards: readonly CoverBoard[]): number {
  return boards.at(-1)?.course ?? 0;
}

/** Widths of a cover's courses up the slope, from the edge up. [in] */
export function courseWidthsIn(boards: readonly CoverBoard[]): readonly number[] {
  return boards.filter(({ leftJoint }) => leftJoint === null).map(({ lowIn, highIn }) => highIn - lowIn);
}

/**
 * What stands in the way of buying what an eave is to be covered with.
 * @param eave - of the cover.
 * @param wanted - what it is (`Sheathing`), the item's id and kind (`sheet`), the item of that id, and the entry's name.
 */
export function coverLack(
  eave: EaveToTakeOff,
  wanted: {
    readonly what: string;
    readonly itemId: string;
    readonly kind: string;
    readonly fits: boolean;
    readonly named: PriceItem | undefined;
    readonly entry: string;
  },
): Problem {
  const { what, entry } = wanted;
  return {
    code: 'entry-invalid',
    what: `${what} of ${eaveLabel(eave.layout)} (${eave.layout.name})`,
    detail: itemLackDetail(wanted),
    field: `design.eaves.${eave.designIndex}.${entry}`,
  };
}

/** Why an item of the price list cannot be bought for a use, and what to do. */
export function itemLackDetail(wanted: {
  readonly itemId: string;
  readonly kind: string;
  readonly fits: boolean;
  readonly named: PriceItem | undefined;
}): string {
  const { itemId, kind, fits, named } = wanted;
  return itemId === ''
    ? `no ${kind} is chosen, so it has no price. Choose one of the price list in Design.`
    : named === undefined
      ? `"${itemId}" is not on the price list. Choose another ${kind} in Design.`
      : fits
        ? `"${named.description}" is not bought any more. Choose another ${kind} in Design.`
        : `"${named.description}" is no ${kind}. Choose a ${kind} of the price list in Design.`;
}
