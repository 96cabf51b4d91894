import type { Stock } from '../eave/design-document.ts';
import type { Problem } from '../problems/problem.ts';
import type { Usd } from '../units/money.ts';
import type { Sixteenths } from '../units/sixteenths.ts';

/** A length of one stock that can be bought. Whole sixteenths and whole cents. */
export type StockLength = {
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  readonly priceCents: number;
};

/** A demand: so many pieces of one length. */
export type CutItem = { readonly mark: string; readonly lengthSixteenths: Sixteenths };

/** One problem: pieces of one stock, the lengths it comes in, and the saw. */
export type CuttingProblem = {
  readonly stock: Stock;
  readonly items: readonly CutItem[];
  readonly lengths: readonly StockLength[];
  readonly kerfSixteenths: Sixteenths;
  /** Cut off each end of each board. */
  readonly endTrimSixteenths: Sixteenths;
};

/** A bought board and what is cut from it, in the order of the saw. */
export type Board = {
  readonly number: number;
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  readonly priceCents: number;
  readonly items: readonly CutItem[];
  /** What is left in one piece behind the last cut, kerf and end trim taken off. */
  readonly offcutSixteenths: Sixteenths;
};

/** The boards to buy for one stock. */
export type CutPlan = {
  /** Text key of the stock, used in refs: `2x6 No.2`. */
  readonly group: string;
  readonly stock: Stock;
  readonly boards: readonly Board[];
  readonly costUsd: Usd;
  /** No purchase from these lengths can cost less than this. */
  readonly boundUsd: Usd;
  /** (cost - bound) / bound. [-] */
  readonly gap: number;
  readonly status: 'optimal' | 'best-found';
  /** Net length of pieces over length bought. [-] */
  readonly yield: number;
  /** What first-fit decreasing on the best single length would have cost; null where none holds every piece. */
  readonly oneLengthUsd: Usd | null;
  readonly oneLengthFt: number | null;
};

/** A stock whose pieces could not be planned, and why. */
export type UnplannedStock = {
  readonly group: string;
  readonly stock: Stock;
  readonly marks: readonly string[];
  readonly problem: Problem;
};
