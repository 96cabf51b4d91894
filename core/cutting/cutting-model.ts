import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { stockGroup } from './stock-group.ts';
import type { Sixteenths } from '../units/sixteenths.ts';
import type { CuttingProblem } from './cut-plan-types.ts';

/** Pieces of one length. */
export type PieceSize = {
  /** Length and one kerf. [1/16 in] */
  readonly span: number;
  readonly demand: number;
};

/** A length worth buying. */
export type StockChoice = {
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  /** Length less both end trims, plus one kerf, since the last piece in a board needs no cut behind it. [1/16 in] */
  readonly room: number;
  readonly cents: number;
};

/**
 * The problem in whole numbers: spans to put into rooms. With a kerf added to each piece and one to each board, kerfs
 * need no further thought; exact where every piece is parted by one cut.
 */
export type CuttingModel = {
  /** Longest first, each span once. */
  readonly sizes: readonly PieceSize[];
  /** Shortest first; prices rise with length, since a length that costs no less than a longer one is left out. */
  readonly stocks: readonly StockChoice[];
  /** Price of the cheapest board that holds a span, by span from 0 to the longest room; 0 for nothing. [cents] */
  readonly centsForSpan: Float64Array;
};

/** One board in the making: index of its stock, and of the sizes in it, longest first. */
export type Load = { readonly stock: number; readonly sizes: readonly number[] };

/**
 * Turns pieces, lengths and saw into whole numbers.
 * @param problem - pieces [1/16 in], lengths [1/16 in, cents], kerf and end trim [1/16 in].
 * @returns the model; or the problem that there is no length to buy, or that a piece is longer than any.
 */
export function cuttingModel(problem: CuttingProblem): Result<CuttingModel, Problem> {
  const kerf = problem.kerfSixteenths;
  const trim = 2 * problem.endTrimSixteenths;
  const stocks = worthBuying(
    problem.lengths.map(({ itemId, lengthSixteenths, priceCents }) => ({
      itemId,
      lengthSixteenths,
      room: lengthSixteenths - trim + kerf,
      cents: priceCents,
    })),
  );
  const longest = stocks.at(-1);
  if (longest === undefined) return fail({ code: 'no-price', item: stockGroup(problem.stock) });
  const tooLong = problem.items.reduce<CuttingProblem['items'][number] | undefined>(
    (worst, item) =>
      item.lengthSixteenths + kerf > longest.room &&
      item.lengthSixteenths > (worst?.lengthSixteenths ?? Number.NEGATIVE_INFINITY)
        ? item
        : worst,
    undefined,
  );
  if (tooLong !== undefined) {
    return fail({
      code: 'piece-longer-than-stock',
      stock: stockGroup(problem.stock),
      mark: tooLong.mark,
      pieceIn: tooLong.lengthSixteenths / 16,
      longestIn: Math.max(0, longest.room - kerf) / 16,
    });
  }
  const demand = new Map<number, number>();
  for (const item of problem.items) {
    const span = item.lengthSixteenths + kerf;
    demand.set(span, (demand.get(span) ?? 0) + 1);
  }
  const sizes = [...demand].map(([span, count]) => ({ span, demand: count })).sort((a, b) => b.span - a.span);
  return ok({ sizes, stocks, centsForSpan: centsBySpan(stocks) });
}

/** Index of the cheapest stock that holds a span; the model has the longest hold every piece. */
export function cheapestStock(model: Pick<CuttingModel, 'stocks'>, span: number): number {
  return model.stocks.findIndex((stock) => stock.room >= span);
}

/** Span of all pieces in a load. [1/16 in] */
export function spanOf(model: Pick<CuttingModel, 'sizes'>, sizes: readonly number[]): number {
  return sizes.reduce((sum, size) => sum + (model.sizes[size]?.span ?? 0), 0);
}

/** Price of loads. [cents] */
export function centsOf(model: Pick<CuttingModel, 'stocks'>, loads: readonly Load[]): number {
  return loads.reduce((sum, load) => sum + (model.stocks[load.stock]?.cents ?? 0), 0);
}

function worthBuying(choices: readonly StockChoice[]): readonly StockChoice[] {
  const longestFirst = choices
    .filter((choice) => choice.room > 0)
    .toSorted((a, b) => b.room - a.room || a.cents - b.cents || (a.itemId < b.itemId ? -1 : 1));
  const kept: StockChoice[] = [];
  let cheapest = Number.POSITIVE_INFINITY;
  for (const choice of longestFirst) {
    if (choice.cents < cheapest) {
      kept.push(choice);
      cheapest = choice.cents;
    }
  }
  return kept.reverse();
}

function centsBySpan(stocks: readonly StockChoice[]): Float64Array {
  const cents = new Float64Array((stocks.at(-1)?.room ?? 0) + 1);
  let index = 0;
  for (let span = 1; span < cents.length; span += 1) {
    while ((stocks[index]?.room ?? Number.POSITIVE_INFINITY) < span) index += 1;
    cents[span] = stocks[index]?.cents ?? 0;
  }
  return cents;
}
