import { Decimal } from 'decimal.js';
import type { StockLength } from '../cutting/cut-plan-types.ts';
import type { Stock } from '../eave/stock.ts';
import type { JobCutting } from '../eave/job-cutting.ts';
import { usd } from '../units/money.ts';
import { sixteenthsDown } from '../units/sixteenths.ts';
import { plainWords } from './plain-words.ts';

const prefix = 'on-hand-';

/**
 * Boards and offcuts on hand that a stock's pieces may be cut from, each at what it is worth to the person. One without a
 * grade serves any; where the job asks for no grade, any serves.
 * @param cutting - what the job wants of its boards; none where it leaves what is on hand alone.
 * @param stock - section and grade wanted.
 * @returns lengths in whole sixteenths, rounded down [1/16 in], values in whole cents, half up [cent].
 */
export function boardsOnHand(cutting: JobCutting, stock: Stock): readonly StockLength[] {
  if (!cutting.useOnHand) return [];
  const grade = plainWords(stock.grade);
  return cutting.onHand
    .filter(
      (board) =>
        plainWords(board.section) === plainWords(stock.section) &&
        (grade === '' || board.grade.trim() === '' || plainWords(board.grade) === grade),
    )
    .map((board) => ({
      itemId: `${prefix}${board.id}`,
      lengthSixteenths: sixteenthsDown(board.lengthIn),
      priceCents: new Decimal(usd(board.valueUsd)).times(100).toNumber(),
      available: board.count,
      source: 'on-hand' as const,
    }));
}

/** The id of a board on hand in the item id that plans carry. */
export function onHandIdOf(itemId: string): string {
  return itemId.slice(prefix.length);
}
