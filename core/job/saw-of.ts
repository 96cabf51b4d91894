import type { Saw } from '../cutting/board-use.ts';
import type { Stock } from '../eave/stock.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { nearestSixteenth, sixteenthsUp } from '../units/sixteenths.ts';

/**
 * What the saw takes of a stock's boards: kerf and end trim of the shop, rounded up, and the depth that plumb ends slant
 * across, where the section is a known one.
 * @param cutting - the shop's kerf and end trim. [in]
 * @param stock - section and grade.
 * @returns whole sixteenths; e.g. 1/8 in. kerf, 1/2 in. trim, 2x6 -> 2, 8, 88. [1/16 in]
 */
export function sawOf({ kerfIn, endTrimIn }: ShopSettings['cutting'], stock: Stock): Saw {
  const dressed = dressedSection(stock.section);
  return {
    kerfSixteenths: sixteenthsUp(kerfIn),
    endTrimSixteenths: sixteenthsUp(endTrimIn),
    ...(dressed === undefined ? {} : { depthSixteenths: nearestSixteenth(dressed.depthIn) }),
  };
}
