import type { Stock } from '../../../core/eave/stock.ts';
import { dressedSection, dressedSections } from '../../../core/lumber/dressed-sizes.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';

/** Lumber that can be chosen, and whether the price list has a price for it. */
export type StockOffer = { readonly key: string; readonly stock: Stock; readonly isPriced: boolean };

/** Names lumber as the price list and the lists of choices do: `2x6 No.2`. */
export function stockKey({ section, grade }: Stock): string {
  return `${section} ${grade}`.trim();
}

/**
 * Every dressed size in every grade of the price list, what has a price first, so that an overhang can be drawn before
 * anything is priced. The lumber that is set is always among them.
 * @param set - lumber that is chosen now.
 */
export function stockOffers(prices: readonly PriceItem[], set: Stock): readonly StockOffer[] {
  const lumber = prices.filter((item) => item.category === 'lumber' && !item.retired);
  const priced = new Set(lumber.filter((item) => item.prices.length > 0).map(stockKey));
  const grades = new Set(lumber.map((item) => item.grade));
  grades.add(set.grade);
  const stocks = new Map<string, Stock>();
  for (const { section } of dressedSections)
    for (const grade of grades) stocks.set(stockKey({ section, grade }), { section, grade });
  for (const { section, grade } of lumber)
    if (dressedSection(section) !== undefined) stocks.set(stockKey({ section, grade }), { section, grade });
  stocks.set(stockKey(set), set);
  const offers = [...stocks].map(([key, stock]) => ({ key, stock, isPriced: priced.has(key) }));
  return offers.sort(
    (a, b) =>
      Number(b.isPriced) - Number(a.isPriced) ||
      sizeRank(a.stock) - sizeRank(b.stock) ||
      a.key.localeCompare(b.key, 'en', { numeric: true }),
  );
}

/** Two-by lumber stands before boards, and narrow before wide. */
function sizeRank({ section }: Stock): number {
  const dressed = dressedSection(section);
  return dressed === undefined ? 0 : -dressed.nominalThicknessIn * 100 + dressed.nominalWidthIn;
}
