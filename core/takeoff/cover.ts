import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { JobInput } from '../job/job-file.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import {
  ordinarySheet,
  panelCourses,
  sheathingStrip,
  type PanelCourses,
  type SheathingStrip,
  type SheetSize,
} from './sheathing-strip.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';

/** What covers the new overhang of one eave. */
export type Cover =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'panels';
      readonly item: PriceItem | undefined;
      readonly strip: SheathingStrip;
      readonly sheet: SheetSize;
      readonly courses: PanelCourses;
    }
  | {
      readonly kind: 'planks';
      readonly item: PriceItem | undefined;
      readonly strip: SheathingStrip;
      /** Width that one course covers. [in] */
      readonly coverIn: number;
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
  const coverLacks = item === undefined ? sheathingLack(eave, itemId, category, named) : null;
  if (kind === 'planks') {
    const coverIn =
      (fitting === undefined ? undefined : dressedSection(fitting.section)?.depthIn) ??
      input.settings.plankCoverIn;
    return { ...eave, cover: { kind, item, strip, coverIn }, coverLacks };
  }
  const sheet: SheetSize = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  return { ...eave, cover: { kind, item, strip, sheet, courses: panelCourses(strip, sheet) }, coverLacks };
}

function sheathingLack(
  eave: EaveToTakeOff,
  itemId: string,
  category: 'sheet' | 'plank',
  named: PriceItem | undefined,
): Problem {
  const detail =
    itemId === ''
      ? `no ${category} is chosen, so it has no price. Choose one of the price list in Design.`
      : named === undefined
        ? `"${itemId}" is not on the price list. Choose another ${category} in Design.`
        : named.category === category
          ? `"${named.description}" is not bought any more. Choose another ${category} in Design.`
          : `"${named.description}" is no ${category}. Choose a ${category} of the price list in Design.`;
  return {
    code: 'entry-invalid',
    what: `Sheathing of ${eaveLabel(eave.layout)} (${eave.layout.name})`,
    detail,
    field: `design.eaves.${eave.designIndex}.sheathing.itemId`,
  };
}
