import { Decimal } from 'decimal.js';
import { boardFeet } from '../lumber/board-feet.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import { decimalText } from '../units/money.ts';
import type { PriceEntries } from './price-changes.ts';
import type { UnitOfSale } from './price-list.ts';

/** Places that a converted price keeps where it does not come out even. */
const placesKept = 6;

/**
 * Turns a price for one unit of sale into a price for another, by what one piece, sheet or package holds of each. Board
 * feet go by nominal size, T x W x L / 12 (US Army EN0069A, "Frame Structures").
 * @param item - the item; its sizes say what one of it holds.
 * @param priceUsd - dollars for one unit of `from`. [$/unit]
 * @returns exact where it comes out even, else 6 places half up, e.g. 2x6 of 16 ft (16 BF) at $750 MBF -> $12 each;
 * undefined where the sizes do not say how the units hang together. [$/unit]
 */
export function convertPrice(
  item: PriceEntries,
  priceUsd: Decimal.Value,
  from: UnitOfSale,
  to: UnitOfSale,
): string | undefined {
  if (from === to) return decimalText(priceUsd);
  const given = unitsInOne(item, from);
  const wanted = unitsInOne(item, to);
  if (given === undefined || wanted === undefined) return undefined;
  return decimalText(
    new Decimal(priceUsd).times(given).div(wanted).toDecimalPlaces(placesKept, Decimal.ROUND_HALF_UP),
  );
}

/** How many of a unit one piece, sheet, roll or package of an item is; undefined where its sizes do not say. */
function unitsInOne(item: PriceEntries, unit: UnitOfSale): Decimal | undefined {
  switch (unit) {
    case 'each':
      return new Decimal(1);
    case 'sheet':
      return item.category === 'sheet' ? new Decimal(1) : undefined;
    case 'roll':
      return item.category === 'edge' || item.category === 'other' ? new Decimal(1) : undefined;
    case 'box':
      return item.category === 'nails' ? new Decimal(1) : undefined;
    case 'lb':
      return item.category === 'nails' && item.packageLb !== null ? new Decimal(item.packageLb) : undefined;
    case 'LF':
      return feetInOne(item);
    case 'BF':
    case 'MBF': {
      const section = isBoard(item) ? dressedSection(item.section.trim()) : undefined;
      if (section === undefined || item.lengthFt === null) return undefined;
      return boardFeet(section, item.lengthFt).div(unit === 'MBF' ? 1000 : 1);
    }
    case 'SF':
      return item.category !== 'sheet' || item.widthIn === null || item.lengthIn === null
        ? undefined
        : new Decimal(item.widthIn).times(item.lengthIn).div(144);
    default:
      return unit satisfies never;
  }
}

function feetInOne(item: PriceEntries): Decimal | undefined {
  if (isBoard(item)) return item.lengthFt === null ? undefined : new Decimal(item.lengthFt);
  return item.category === 'sheet' || item.lengthIn === null ? undefined : new Decimal(item.lengthIn).div(12);
}

function isBoard(item: PriceEntries): boolean {
  return item.category === 'lumber' || item.category === 'plank';
}
