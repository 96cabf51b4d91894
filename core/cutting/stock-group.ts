import type { Stock } from '../eave/design-document.ts';

/** Text key of a stock, the same in takeoff, cut plan and refs: `2x6 No.2`. */
export function stockGroup(stock: Stock): string {
  return `${stock.section} ${stock.grade}`.trim();
}
