import type { Stock } from '../eave/stock.ts';

/** Lumber as a client reads it: `2x6 No.2`; without a grade the section alone. */
export function stockName({ section, grade }: Stock): string {
  return `${section} ${grade}`.trim();
}
