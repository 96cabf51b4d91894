import { Decimal } from 'decimal.js';
import { boardFeet } from '../lumber/board-feet.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import { assertNever, fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { usd, type Usd } from '../units/money.ts';
import type { PriceItem } from './price-list.ts';

/**
 * Price of one piece of lumber or plank of its stock length, from the unit it is sold by.
 * Board feet go by nominal size: T x W x L / 12; MBF is 1000 BF (US Army EN0069A, "Frame Structures").
 * @param item - lumber or plank with its section and length.
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @returns whole cents half up, e.g. 2x6 of 16 ft (16 BF) at $750.00 MBF -> $12.00; or `unit-does-not-fit` or
 * `price-of-nothing`. [$]
 */
export function pieceUsd(item: PriceItem, priceUsd: string): Result<Usd, Problem> {
  switch (item.unit) {
    case 'each':
      return worth(item, usd(priceUsd));
    case 'LF':
      return item.lengthFt === null
        ? unfit(item, 'its length in feet')
        : worth(item, usd(new Decimal(priceUsd).times(item.lengthFt)));
    case 'BF':
    case 'MBF': {
      const section = dressedSection(item.section.trim());
      if (section === undefined || item.lengthFt === null)
        return unfit(item, 'a section like 2x6 and its length in feet');
      const feet = boardFeet(section, item.lengthFt);
      return worth(item, usd(new Decimal(priceUsd).times(feet).div(item.unit === 'MBF' ? 1000 : 1)));
    }
    case 'lb':
    case 'box':
    case 'sheet':
    case 'SF':
    case 'roll':
      return unfit(item, 'changing to each, LF, BF or MBF');
    default:
      return assertNever(item.unit);
  }
}

/**
 * Price of one foot of plank bought by running length, without a stock length.
 * @param item - plank; its section is needed where it is priced by BF or MBF.
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @returns exact, not rounded, e.g. 1x6 (0.5 BF a foot) at $1,900 MBF -> 0.95; or `unit-does-not-fit` or
 * `price-of-nothing`. [$/ft]
 */
export function footUsd(item: PriceItem, priceUsd: string): Result<Decimal, Problem> {
  const foot = exactFootUsd(item, priceUsd);
  if (!foot.ok) return foot;
  const worthwhile = worth(item, usd(foot.value));
  return worthwhile.ok ? foot : worthwhile;
}

/**
 * Price of one sheet, from each, sheet, or SF with the sheet's size.
 * @param item - sheet goods; width and length are needed where it is priced by SF. [in]
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @returns whole cents half up, e.g. 48 x 96 in. at $0.95 SF -> $30.40; or `unit-does-not-fit` or
 * `price-of-nothing`. [$]
 */
export function sheetUsd(item: PriceItem, priceUsd: string): Result<Usd, Problem> {
  switch (item.unit) {
    case 'each':
    case 'sheet':
      return worth(item, usd(priceUsd));
    case 'SF':
      return item.widthIn === null || item.lengthIn === null
        ? unfit(item, 'the width and length of a sheet')
        : worth(item, usd(new Decimal(priceUsd).times(item.widthIn).times(item.lengthIn).div(144)));
    case 'LF':
    case 'BF':
    case 'MBF':
    case 'lb':
    case 'box':
    case 'roll':
      return unfit(item, 'changing to each, sheet or SF');
    default:
      return assertNever(item.unit);
  }
}

/**
 * Price of one piece or roll of roof edge, from each, roll, or LF.
 * @param item - edge metal, priced by each, roll or LF.
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @param lengthIn - length of one piece. [in]
 * @returns whole cents half up, e.g. 120 in. at $0.89 LF -> $8.90; or `unit-does-not-fit` or
 * `price-of-nothing`. [$]
 */
export function edgeUsd(item: PriceItem, priceUsd: string, lengthIn: number): Result<Usd, Problem> {
  switch (item.unit) {
    case 'each':
    case 'roll':
      return worth(item, usd(priceUsd));
    case 'LF':
      return worth(item, usd(new Decimal(priceUsd).times(lengthIn).div(12)));
    case 'BF':
    case 'MBF':
    case 'lb':
    case 'box':
    case 'sheet':
    case 'SF':
      return unfit(item, 'changing to each or LF');
    default:
      return assertNever(item.unit);
  }
}

/**
 * Price of one package of nails, from lb with the package's pounds, box, or each package.
 * @param item - nails.
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @returns whole cents half up, e.g. a 5 lb package at $2.499 lb -> $12.50; or `unit-does-not-fit` or
 * `price-of-nothing`. [$]
 */
export function nailPackageUsd(item: PriceItem, priceUsd: string): Result<Usd, Problem> {
  switch (item.unit) {
    case 'lb':
      // Without a package, nails sold by the pound are weighed out in whole pounds.
      return worth(item, usd(new Decimal(priceUsd).times(item.packageLb ?? 1)));
    case 'box':
    case 'each':
      return item.packageLb === null && item.packageCount === null
        ? unfit(item, 'the pounds or the count of nails in a package')
        : worth(item, usd(priceUsd));
    case 'LF':
    case 'BF':
    case 'MBF':
    case 'sheet':
    case 'SF':
    case 'roll':
      return unfit(item, 'changing to lb, box or each');
    default:
      return assertNever(item.unit);
  }
}

/**
 * Price of one vent, piece of vent strip, or foot of strip, from each or LF.
 * @param item - the vent.
 * @param priceUsd - dollars for one unit of sale. [$/unit]
 * @returns whole cents half up; or `unit-does-not-fit` or `price-of-nothing`. [$]
 */
export function ventUsd(item: PriceItem, priceUsd: string): Result<Usd, Problem> {
  switch (item.unit) {
    case 'each':
    case 'LF':
      return worth(item, usd(priceUsd));
    case 'BF':
    case 'MBF':
    case 'lb':
    case 'box':
    case 'sheet':
    case 'SF':
    case 'roll':
      return unfit(item, 'changing to each or LF');
    default:
      return assertNever(item.unit);
  }
}

function unfit(item: PriceItem, needs: string): Result<never, Problem> {
  return fail({ code: 'unit-does-not-fit', item: item.description, unit: item.unit, needs });
}

/** A price that comes to $0.00 is a slip more often than a gift, so it counts as none. */
function worth(item: PriceItem, each: Usd): Result<Usd, Problem> {
  return new Decimal(each).isZero() ? fail({ code: 'price-of-nothing', item: item.description }) : ok(each);
}

function exactFootUsd(item: PriceItem, priceUsd: string): Result<Decimal, Problem> {
  if (item.unit === 'LF') return ok(new Decimal(priceUsd));
  if (item.unit !== 'BF' && item.unit !== 'MBF') return unfit(item, 'a stock length, or changing to LF');
  const section = dressedSection(item.section.trim());
  if (section === undefined) return unfit(item, 'a section like 1x6');
  return ok(new Decimal(priceUsd).times(boardFeet(section, 1)).div(item.unit === 'MBF' ? 1000 : 1));
}
