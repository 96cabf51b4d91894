import type { Stock } from '../eave/stock.ts';

/** Text of a stock, the same in takeoff, cut plan and refs: `2x6 No.2`. */
export function stockGroup(stock: Stock): string {
  return `${stock.section} ${stock.grade}`.trim().replace(/\s+/g, ' ');
}

/** Key of a stock: those that differ only in case or spaces, as `2x6 No.2` and `2x6 no.2`, are one. */
export function stockKey(stock: Stock): string {
  return stockGroup(stock).toLowerCase();
}
