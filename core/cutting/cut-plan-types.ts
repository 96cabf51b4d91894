import type { Stock } from '../eave/stock.ts';
import type { Problem } from '../problems/problem.ts';
import type { Usd } from '../units/money.ts';
import type { Sixteenths } from '../units/sixteenths.ts';

/** A length of one stock that can be had. Whole sixteenths and whole cents. */
export type StockLength = {
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  /** Price of a bought board; of one on hand its salvage value, which may be nothing. */
  readonly priceCents: number;
  /** How many there are; absent: as many as wanted. */
  readonly available?: number;
  /** Bought from the price list where absent; on hand: a board or offcut that he has. */
  readonly source?: 'bought' | 'on-hand';
};

/** A demand: one piece. */
export type CutItem = {
  readonly mark: string;
  /** Overall, from tip to tip where the ends slant. */
  readonly lengthSixteenths: Sixteenths;
  /**
   * Of a piece whose two ends are parallel plumb cuts, by how much its overall length exceeds its mid-line length: depth
   * x pitch. Absent or 0: square ends.
   */
  readonly slantSixteenths?: Sixteenths;
};

/** A board with exactly these pieces, fixed by the person. */
export type PinnedBoard = { readonly itemId: string; readonly marks: readonly string[] };

/** What the person wants of the boards besides the least money. */
export type CuttingPreferences = {
  readonly pinned?: readonly PinnedBoard[];
  /** What a board fewer is worth to him. */
  readonly centsPerBoard?: number;
  /** Absent: true. */
  readonly useOnHand?: boolean;
};

/** One problem: pieces of one stock, the lengths it comes in, and the saw. */
export type CuttingProblem = {
  readonly stock: Stock;
  readonly items: readonly CutItem[];
  readonly lengths: readonly StockLength[];
  readonly kerfSixteenths: Sixteenths;
  /** Cut off each end of each board. */
  readonly endTrimSixteenths: Sixteenths;
  /** Actual depth of the boards, across which plumb ends slant; needed where a piece has a slant. */
  readonly depthSixteenths?: Sixteenths;
  readonly preferences?: CuttingPreferences;
};

/** A board and what is cut from it, in the order of the saw: square pieces first, then by slant, so that they nest. */
export type Board = {
  readonly number: number;
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  readonly priceCents: number;
  /** From what he has, not bought. */
  readonly onHand: boolean;
  readonly items: readonly CutItem[];
  /** What is left in one piece behind the last cut, kerf and end trim taken off; on its short side where that cut slants. */
  readonly offcutSixteenths: Sixteenths;
};

/**
 * What shows that no plan is cheaper. `exact-bound`: whole numbers alone; every cheaper purchase is ruled out by a bound that
 * can be reckoned again. `solver-tree`: a search that reckons in floating point left nothing cheaper. `none`: not shown;
 * bound and gap as they stand.
 */
export type ProofKind = 'exact-bound' | 'solver-tree' | 'none';

/**
 * Worths of the pieces from which anyone can reckon the bound again (check-certificate.ts). If no board can hold pieces
 * worth more than its price (and, where there are only so many, the worth of having one more), then all pieces together
 * cost at least their worth less that of the boards there are: whole parts of a cent, 2^20 to the cent. Each of the cuts is
 * another worth for every size, in any unit: the boards of a plan, each counted with the most that it can hold, must come
 * to the worth of all pieces; numbers of boards that do not are ruled out.
 */
export type BoundCertificate = {
  readonly worths: readonly {
    readonly lengthSixteenths: Sixteenths;
    readonly slantSixteenths: Sixteenths;
    readonly parts: number;
  }[];
  /** Of lengths that there are only so many of; those not named are worth nothing more. */
  readonly supplies: readonly {
    readonly itemId: string;
    readonly lengthSixteenths: Sixteenths;
    readonly priceCents: number;
    readonly parts: number;
  }[];
  /** Each beside `worths`. */
  readonly cuts: readonly (readonly number[])[];
};

/** A pinned board that cannot be: its length is not to be had, a piece is gone or pinned twice, or it does not fit. */
export type UnmetPin = {
  readonly pin: PinnedBoard;
  readonly why: 'length-gone' | 'piece-gone' | 'does-not-fit';
};

/** The boards for one stock. */
export type CutPlan = {
  /** Text key of the stock, used in refs: `2x6 No.2`. */
  readonly group: string;
  readonly stock: Stock;
  readonly boards: readonly Board[];
  readonly costUsd: Usd;
  /**
   * No plan from these lengths, with these pins, can cost less than this. Where a board fewer is worth money, no plan is
   * better than this one by more than cost less bound, counting that worth.
   */
  readonly boundUsd: Usd;
  /** (cost - bound) / bound. [-] */
  readonly gap: number;
  readonly status: 'optimal' | 'best-found';
  readonly proof: ProofKind;
  /** Of the bound in whole numbers; null where there is none to give. */
  readonly certificate: BoundCertificate | null;
  /** Among plans of this cost none has fewer boards, nor of those fewer patterns. */
  readonly tiesProven: boolean;
  /** What a board fewer was worth in this plan. */
  readonly centsPerBoard: number;
  readonly unmetPins: readonly UnmetPin[];
  /** Net length of pieces, mid-line where two ends are plumb, over length of boards. [-] */
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
