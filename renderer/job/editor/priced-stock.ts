import type { Stock } from '../../../core/eave/stock.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';

/** Lumber of a section in the first grade that the shop buys it in; without a grade where it buys none. */
export function pricedStock(section: string, prices: readonly PriceItem[]): Stock {
  const item = prices.find((one) => one.category === 'lumber' && one.section === section && !one.retired);
  return { section, grade: item?.grade ?? '' };
}
