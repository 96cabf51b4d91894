import { Decimal } from 'decimal.js';
import { adoptPlan } from '../cutting/adopt-plan.ts';
import { planCuts } from '../cutting/plan-cuts.ts';
import { problemKey } from '../cutting/problem-key.ts';
import type {
  CutItem,
  CutPlan,
  CuttingProblem,
  StockLength,
  UnplannedStock,
} from '../cutting/cut-plan-types.ts';
import { stockGroup, stockKey } from '../cutting/stock-group.ts';
import type { Design } from '../eave/design-document.ts';
import type { Stock } from '../eave/stock.ts';
import { boardsOnHand } from '../pricing/boards-on-hand.ts';
import { itemsOfStock, stockLengths, type PriceQuestion } from '../pricing/stock-lengths.ts';
import type { Problem } from '../problems/problem.ts';
import { ok } from '../result.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { sawOf } from './saw-of.ts';
import { usd } from '../units/money.ts';
import { inchesOf, nearestSixteenth } from '../units/sixteenths.ts';

/** A problem of one stock, by its `problemKey`. */
type KeyedCutting = { readonly key: string; readonly problem: CuttingProblem };

/** The boards to buy, stock by stock, and the pieces that no board could be planned for. */
export type LumberPlan = {
  readonly cutPlans: readonly CutPlan[];
  /** What each plan answers, in the same order. */
  readonly cuttingProblems: readonly KeyedCutting[];
  readonly unplanned: readonly UnplannedStock[];
  /** Lengths without a usable price, which the plans go without. */
  readonly leftOut: readonly Problem[];
};

/** What boards are planned with: prices and saw, and what the job wants of its boards. */
export type LumberQuestion = PriceQuestion & { readonly design: Pick<Design, 'cutting'> };

/** Pieces that share boards. */
type Shared = { readonly stock: Stock; readonly pieces: readonly Piece[] };

/** What is to be planned, before any board is chosen. */
export type LumberProblems = Pick<LumberPlan, 'cuttingProblems' | 'unplanned' | 'leftOut'>;

/**
 * Plans the boards of a job. Pieces that can be cut from the same items of the price list share boards, whatever they
 * are used for and however their grade is written; the plan bears the graded name. Where a piece is longer than any
 * board, it alone is left unplanned and the others go on. What is cut and set already needs no board.
 * @param input - day, price list, settings with kerf and end trim [in], and the job's own wishes.
 * @param pieces - every piece of the job. [1/16 in]
 * @param solved - plans found before, by `problemKey`.
 */
export function planLumber(
  input: LumberQuestion,
  pieces: readonly Piece[],
  solved?: ReadonlyMap<string, CutPlan>,
): LumberPlan {
  const { cuttingProblems: asked, unplanned: without, leftOut } = lumberProblems(input, pieces);
  const cutPlans: CutPlan[] = [];
  const cuttingProblems: KeyedCutting[] = [];
  const unplanned = [...without];
  for (const { key, problem } of asked) {
    const known = solved?.get(key);
    const adopted = known === undefined ? undefined : adoptPlan(problem, known);
    const plan = adopted === undefined ? planCuts(problem) : ok(adopted);
    if (plan.ok) {
      cutPlans.push(plan.value);
      cuttingProblems.push({ key, problem });
    } else {
      const marks = problem.items.map(({ mark }) => mark);
      unplanned.push({
        group: stockGroup(problem.stock),
        stock: problem.stock,
        marks,
        problem: plan.problem,
      });
    }
  }
  return { cutPlans, cuttingProblems, unplanned, leftOut };
}

/** What the boards of a job have to answer, stock by stock, and the pieces that no board is long enough for. */
export function lumberProblems(input: LumberQuestion, pieces: readonly Piece[]): LumberProblems {
  const cuttingProblems: KeyedCutting[] = [];
  const unplanned: UnplannedStock[] = [];
  const leftOut: Problem[] = [];
  const toCut = pieces.filter(({ inPlace }) => inPlace !== true);
  for (const { stock, pieces: ofStock } of sharedStocks(input, toCut)) {
    const group = stockGroup(stock);
    const leaveOut = (left: readonly Piece[], problem: Problem): void => {
      unplanned.push({ group, stock, marks: left.map(({ mark }) => mark), problem });
    };
    const { lengths, problems } = stockLengths(input, stock);
    const longest = lengths.at(-1);
    if (longest === undefined) {
      // One way out is enough to ask for: with one length priced, the others are told as left out.
      leaveOut(ofStock, problems[0] ?? { code: 'no-price', item: group });
      continue;
    }
    leftOut.push(...problems);
    const saw = sawOf(input.settings.cutting, stock);
    const usable = longest.lengthSixteenths - 2 * saw.endTrimSixteenths;
    const onHand = boardsOnHand(input.design.cutting, stock);
    const held = heldByOnHand(ofStock, onHand, usable, saw.endTrimSixteenths);
    const tooLong = ofStock.filter((piece) => piece.lengthSixteenths > usable && !held.has(piece));
    for (const ofUse of Map.groupBy(tooLong, ({ use }) => use).values())
      leaveOut(ofUse, tooLongProblem(group, ofUse, usable));
    const fitting = ofStock.filter((piece) => piece.lengthSixteenths <= usable || held.has(piece));
    if (fitting.length === 0) continue;
    const problem: CuttingProblem = {
      stock,
      items: fitting.map(cutItem),
      lengths: [...lengths, ...onHand],
      ...saw,
      ...preferencesOf(input, fitting),
    };
    cuttingProblems.push({ key: problemKey(problem), problem });
  }
  return { cuttingProblems, unplanned, leftOut };
}

/** What the job wants of the boards of these pieces; pins of other pieces are none of theirs. */
function preferencesOf(
  { design: { cutting } }: LumberQuestion,
  pieces: readonly Piece[],
): Pick<CuttingProblem, 'preferences'> {
  const marks = new Set(pieces.map(({ mark }) => mark));
  const pinned = cutting.pins.filter((pin) => pin.marks.some((mark) => marks.has(mark)));
  const centsPerBoard = new Decimal(usd(cutting.usdPerBoard)).times(100).toNumber();
  return pinned.length === 0 && centsPerBoard === 0 ? {} : { preferences: { pinned, centsPerBoard } };
}

/**
 * Pieces too long for any board that can be bought, but not for a board on hand: the longest into the longest, one a
 * board.
 * @param usable - longest that can be bought, ends trimmed. [1/16 in]
 */
function heldByOnHand(
  pieces: readonly Piece[],
  onHand: readonly StockLength[],
  usable: number,
  endTrim: number,
): ReadonlySet<Piece> {
  const rooms = onHand
    .flatMap(({ lengthSixteenths, available = 0 }) =>
      Array.from({ length: available }, () => lengthSixteenths - 2 * endTrim),
    )
    .sort((a, b) => b - a);
  const held = new Set<Piece>();
  const long = pieces
    .filter(({ lengthSixteenths }) => lengthSixteenths > usable)
    .toSorted((a, b) => b.lengthSixteenths - a.lengthSixteenths);
  for (const piece of long) {
    const [room] = rooms;
    if (room === undefined || piece.lengthSixteenths > room) continue;
    rooms.shift();
    held.add(piece);
  }
  return held;
}

function cutItem({ mark, lengthSixteenths, slantSixteenths }: Piece): CutItem {
  return { mark, lengthSixteenths, ...(slantSixteenths === undefined ? {} : { slantSixteenths }) };
}

/**
 * Pieces by the set of price items that they can be cut from, in the order of their first piece. Stocks that the list
 * has no item for stay apart. Of several names of one set the first with a grade is used.
 */
function sharedStocks(input: PriceQuestion, pieces: readonly Piece[]): readonly Shared[] {
  const setOfStock = new Map<string, string>();
  const setOf = (stock: Stock): string => {
    const key = stockKey(stock);
    const known = setOfStock.get(key);
    if (known !== undefined) return known;
    const ids = itemsOfStock(input.priceList, stock).map(({ id }) => id);
    const set = ids.length === 0 ? key : JSON.stringify(ids);
    setOfStock.set(key, set);
    return set;
  };
  return [...Map.groupBy(pieces, ({ stock }) => setOf(stock)).values()].flatMap((ofSet) => {
    const named = ofSet.find(({ stock }) => stock.grade.trim() !== '') ?? ofSet[0];
    return named === undefined ? [] : [{ stock: named.stock, pieces: ofSet }];
  });
}

function tooLongProblem(group: string, tooLong: readonly Piece[], usable: number): Problem {
  const [worst] = tooLong.toSorted((a, b) => b.lengthSixteenths - a.lengthSixteenths);
  if (worst === undefined) throw new Error('no piece is too long');
  const pieceIn = inchesOf(worst.lengthSixteenths);
  return {
    code: 'piece-longer-than-stock',
    stock: group,
    mark: tooLong.length === 1 ? worst.mark : `${worst.mark} (the longest of ${tooLong.length})`,
    pieceIn,
    longestIn: inchesOf(nearestSixteenth(Math.max(0, usable) / 16)),
    use: worst.use,
    // Of a fascia board the station is its left end; of the others it is the middle.
    middleIn: worst.use === 'fascia' ? worst.stationIn + pieceIn / 2 : worst.stationIn,
  };
}
