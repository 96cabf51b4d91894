import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { JobInput } from '../job/job-file.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import { coverLack } from './item-lack.ts';
import { layCover } from './lay-cover.ts';
import type { CoverBoard } from './panel-layout.ts';
import {
  ordinarySheet,
  panelGapIn,
  sheathingStrip,
  type SheathingStrip,
  type SheetSize,
} from './sheathing-strip.ts';
import { type SoffitPlan, soffitOf } from './soffit.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';

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

/** An eave to take off with its sheathing and its soffit, and what is missing to buy the sheathing. */
export type CoveredEave = EaveToTakeOff & {
  readonly cover: Cover;
  readonly coverLacks: Problem | null;
  /** Null where the tails stay open, or no item is chosen for it. */
  readonly soffit: SoffitPlan | null;
};

/**
 * What covers an eave from above and below.
 * @param eave - the eave as surveyed, designed and laid out.
 * @param input - price list, settings and survey. [in]
 */
export function coverEave(eave: EaveToTakeOff, input: JobInput): CoveredEave {
  return { ...eave, ...sheathingOf(eave, input), soffit: soffitOf(eave, input) };
}

/**
 * Decides what sheathes an eave: the sheet or plank that the design names on the price list. Where none is named or
 * the name leads nowhere, the quantity is still counted with the ordinary size, and the lack is told. An item that is
 * not bought any more lends its size, but is not bought.
 */
function sheathingOf(eave: EaveToTakeOff, input: JobInput): Pick<CoveredEave, 'cover' | 'coverLacks'> {
  const { kind, itemId } = eave.design.sheathing;
  if (kind === 'none') return { cover: { kind }, coverLacks: null };
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
    return { cover: { kind, item, strip, coverIn, boards }, coverLacks };
  }
  const sheet: SheetSize = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  const boards = layCover(eave.layout, strip, {
    coverIn: sheet.widthIn,
    boardIn: sheet.lengthIn,
    gapIn: panelGapIn,
    cutBack: eave.design.layout.panelJointsOnTails,
  });
  return { cover: { kind, item, strip, sheet, boards }, coverLacks };
}
