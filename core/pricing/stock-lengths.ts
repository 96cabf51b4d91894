import { Decimal } from 'decimal.js';
import type { StockLength } from '../cutting/cut-plan-types.ts';
import { stockGroup } from '../cutting/stock-group.ts';
import type { Stock } from '../eave/stock.ts';
import type { JobCutting } from '../eave/job-cutting.ts';
import type { JobInput } from '../job/job-file.ts';
import type { Problem } from '../problems/problem.ts';
import { inchesOf, nearestSixteenth, type Sixteenths } from '../units/sixteenths.ts';
import { plainWords } from './plain-words.ts';
import type { PriceItem } from './price-list.ts';
import { priceOn } from './price-on.ts';
import { pieceUsd } from './unit-conversion.ts';

/** The lengths of one stock that can be bought on the estimate's day, and what stands in the way of the others. */
export type PricedStock = {
  /** One a length, the cheapest item of that length; shortest first. */
  readonly lengths: readonly StockLength[];
  /** One for each item of the stock that has no usable price; where there is no length at all, why. */
  readonly problems: readonly Problem[];
};

/** What prices are looked up in. */
export type PriceQuestion = Pick<JobInput, 'asOf' | 'priceList' | 'settings'> & {
  /** What the job wants of its boards; where left out, nothing. */
  readonly design?: { readonly cutting: Pick<JobCutting, 'forbiddenLengthsFt' | 'suppliers'> };
};

/**
 * The priced lengths of a stock. Retired items are left out, lengths that the shop or the job goes without, and items of
 * suppliers that the job does not buy from.
 *
 * A stock with a grade is met by items of that grade; a stock without one by items without one, or, where the price
 * list has none, by items of any grade of the section.
 * @param input - day, price list and settings.
 * @param stock - section and grade wanted.
 * @returns lengths in whole sixteenths [1/16 in] at whole cents [cent], rounded half up a piece.
 */
export function stockLengths(input: PriceQuestion, stock: Stock): PricedStock {
  const { forbiddenLengthsFt = [], suppliers = [] } = input.design?.cutting ?? {};
  const excluded = new Set([...input.settings.cutting.excludedLengthsFt, ...forbiddenLengthsFt]);
  const problems: Problem[] = [];
  const cheapest = new Map<Sixteenths, StockLength>();
  const items = itemsOfStock(input.priceList, stock);
  for (const item of items) {
    if (item.lengthFt !== null && excluded.has(item.lengthFt)) continue;
    if (suppliers.length > 0 && !suppliers.includes(item.supplier)) continue;
    // A plank without a length is bought by the foot, for sheathing.
    if (item.lengthFt === null && item.category === 'plank' && items.length > 1) continue;
    const priced = pricedLength(input, item);
    if (!priced.ok) {
      problems.push(priced.problem);
      continue;
    }
    const known = cheapest.get(priced.value.lengthSixteenths);
    if (known === undefined || priced.value.priceCents < known.priceCents)
      cheapest.set(priced.value.lengthSixteenths, priced.value);
  }
  const lengths = [...cheapest.values()].sort((a, b) => a.lengthSixteenths - b.lengthSixteenths);
  if (lengths.length === 0 && problems.length === 0) problems.push(nothingToBuy(input, items, stock));
  return { lengths, problems };
}

/**
 * Longest length that a stock gives once both ends are trimmed.
 * @param input - day, price list and settings with the end trim. [in]
 * @param stock - section and grade wanted.
 * @returns e.g. 16 ft with 1/2 in. off each end -> 191; null where no length has a price. [in]
 */
export function longestUsableIn(input: PriceQuestion, stock: Stock): number | null {
  const longest = stockLengths(input, stock).lengths.at(-1);
  return longest === undefined
    ? null
    : inchesOf(longest.lengthSixteenths) - 2 * input.settings.cutting.endTrimIn;
}

/** Why a stock has no length, where no item of it is at fault. */
function nothingToBuy(input: PriceQuestion, items: readonly PriceItem[], stock: Stock): Problem {
  const what = stockGroup(stock);
  const cutting = input.design?.cutting;
  const long = items.filter(({ lengthFt }) => lengthFt !== null);
  if (long.length === 0) return { code: 'no-price', item: what };
  if (cutting !== undefined && cutting.suppliers.length > 0) {
    const names = cutting.suppliers.map((name) => (name === '' ? 'items without a supplier' : name));
    return {
      code: 'entry-invalid',
      what,
      detail: `no length of it is sold by ${names.join(' or ')} on the price list. Buy this job's lumber from others too, on Cut plan.`,
      field: 'design.cutting.suppliers',
    };
  }
  const shop = new Set(input.settings.cutting.excludedLengthsFt);
  return cutting?.forbiddenLengthsFt.some((feet) => long.some((item) => item.lengthFt === feet)) === true &&
    long.some(({ lengthFt }) => lengthFt !== null && !shop.has(lengthFt))
    ? {
        code: 'entry-invalid',
        what,
        detail:
          'every length of it on the price list is among the lengths that this job goes without. Allow one on Cut plan, or add another to the price list.',
        field: 'design.cutting.forbiddenLengthsFt',
      }
    : {
        code: 'entry-invalid',
        what,
        detail:
          'every length of it on the price list is among the lengths that the shop does not buy. Allow one in Settings, or add another to the price list.',
        field: 'settings.cutting.excludedLengthsFt',
      };
}

/**
 * The items that a stock can be cut from, priced or not. Stocks with the same items are one: their pieces share boards.
 * @param priceList - every item of the shop.
 * @param stock - section and grade wanted.
 */
export function itemsOfStock(priceList: readonly PriceItem[], stock: Stock): readonly PriceItem[] {
  const ofSection = priceList.filter(
    (item) =>
      (item.category === 'lumber' || item.category === 'plank') &&
      !item.retired &&
      plainWords(item.section) === plainWords(stock.section),
  );
  const ofGrade = ofSection.filter((item) => plainWords(item.grade) === plainWords(stock.grade));
  return ofGrade.length === 0 && plainWords(stock.grade) === '' ? ofSection : ofGrade;
}

function pricedLength(
  input: PriceQuestion,
  item: PriceItem,
): { readonly ok: true; readonly value: StockLength } | { readonly ok: false; readonly problem: Problem } {
  if (item.lengthFt === null)
    return {
      ok: false,
      problem: {
        code: 'unit-does-not-fit',
        item: item.description,
        unit: item.unit,
        needs: 'its length in feet',
      },
    };
  const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
  if (!price.ok) return price;
  const piece = pieceUsd(item, price.value.observation.priceUsd);
  if (!piece.ok) return piece;
  return {
    ok: true,
    value: {
      itemId: item.id,
      lengthSixteenths: nearestSixteenth(item.lengthFt * 12),
      priceCents: new Decimal(piece.value).times(100).toNumber(),
    },
  };
}
