import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';

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
