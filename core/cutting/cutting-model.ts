import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { kerfAlong, slantOf } from './board-use.ts';
import type { MetPin } from './settle-pins.ts';
import { settlePins } from './settle-pins.ts';
import { stockGroup } from './stock-group.ts';
import type { Sixteenths } from '../units/sixteenths.ts';
import type { CutItem, CuttingProblem, StockLength } from './cut-plan-types.ts';

/** Pieces of one length and slant. */
export type PieceSize = {
  /** Mid-line length and one kerf along the board. [1/16 in] */
  readonly span: number;
  /** Index of its slant among the model's. */
  readonly slant: number;
  readonly demand: number;
  /** One of the pieces. */
  readonly sample: CutItem;
};

/** A slant that pieces of a problem have. */
export type SlantClass = {
  /** By how much it exceeds the least slant of the problem. [1/16 in] */
  readonly over: number;
  /** By how much its kerf along the board exceeds that of the least slant. [1/16 in] */
  readonly moreKerf: number;
};

/** A length worth having. */
export type StockChoice = {
  readonly itemId: string;
  readonly lengthSixteenths: Sixteenths;
  /**
   * Length less both end trims, plus one kerf, since the last piece in a board needs no cut behind it, less the slant
   * that every piece has at least. [1/16 in]
   */
  readonly room: number;
  /** What a board of it counts for: its price, and what a board fewer is worth. */
  readonly cents: number;
  readonly priceCents: number;
  readonly onHand: boolean;
  /** How many there are; infinite where it can be bought. */
  readonly available: number;
};

/**
 * The problem in whole numbers: spans to put into rooms. With a kerf added to each piece and one to each board, kerfs
 * need no further thought; exact where every piece is parted by one cut. Pinned boards are no part of it.
 */
export type CuttingModel = {
  /** Longest first; each span with each slant once. */
  readonly sizes: readonly PieceSize[];
  /** Shortest first; one that costs no less than a longer one that can be bought is left out. */
  readonly stocks: readonly StockChoice[];
  /** Least first. */
  readonly slants: readonly SlantClass[];
  /** Index of the cheapest stock that can be bought, by need from 0 to the longest room; -1 for none. */
  readonly boughtForNeed: Int16Array;
  /** Whether there are only so many of some stock. */
  readonly limited: boolean;
};

/** One board in the making: index of its stock, and of the sizes in it, longest first. */
export type Load = { readonly stock: number; readonly sizes: readonly number[] };

/** A model beside the boards that are pinned. */
export type ModelAndPins = { readonly model: CuttingModel; readonly pins: readonly MetPin[] };

/**
 * Turns pieces, lengths and saw into whole numbers, pinned boards taken out.
 * @param problem - pieces [1/16 in], lengths [1/16 in, cents], kerf and end trim [1/16 in].
 * @returns the model; or the problem that there is no length to have, or that a piece is longer than any.
 */
export function cuttingModel(problem: CuttingProblem): Result<ModelAndPins, Problem> {
  const { met: pins, items, lengths } = settlePins(problem);
  if (lengths.length === 0 && items.length > 0)
    return fail({ code: 'no-price', item: stockGroup(problem.stock) });
  const longest = lengths.reduce((most, { lengthSixteenths }) => Math.max(most, lengthSixteenths), 0);
  const usable = Math.max(0, longest - 2 * problem.endTrimSixteenths);
  const tooLong = items.reduce<CutItem | undefined>(
    (worst, item) =>
      item.lengthSixteenths > usable &&
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
      longestIn: usable / 16,
    });
  }
  return ok({ model: modelOf(problem, items, lengths), pins });
}

function modelOf(
  problem: CuttingProblem,
  items: readonly CutItem[],
  lengths: readonly StockLength[],
): CuttingModel {
  const slants = [...new Set(items.map((item) => slantOf(problem, item)))].sort((a, b) => a - b);
  const least = slants[0] ?? 0;
  const leastKerf = kerfAlong(problem, least);
  const sizes = new Map<string, { span: number; slant: number; demand: number; sample: CutItem }>();
  for (const item of items) {
    const slant = slantOf(problem, item);
    const span = item.lengthSixteenths - slant + kerfAlong(problem, slant);
    const key = `${span}/${slant}`;
    const size = sizes.get(key);
    if (size === undefined) sizes.set(key, { span, slant: slants.indexOf(slant), demand: 1, sample: item });
    else size.demand += 1;
  }
  const centsPerBoard = problem.preferences?.centsPerBoard ?? 0;
  const stocks = worthHaving(
    lengths.map(({ itemId, lengthSixteenths, priceCents, available, source }) => ({
      itemId,
      lengthSixteenths,
      room: lengthSixteenths - 2 * problem.endTrimSixteenths + leastKerf - least,
      cents: priceCents + centsPerBoard,
      priceCents,
      onHand: source === 'on-hand',
      available: available ?? Number.POSITIVE_INFINITY,
    })),
  );
  return {
    sizes: [...sizes.values()].sort((a, b) => b.span - a.span || a.slant - b.slant),
    stocks,
    slants: slants.map((slant) => ({
      over: slant - least,
      moreKerf: kerfAlong(problem, slant) - leastKerf,
    })),
    boughtForNeed: boughtByNeed(stocks),
    limited: stocks.some(({ available }) => available !== Number.POSITIVE_INFINITY),
  };
}

/**
 * Room that the pieces of a load need: their spans, the most slanted one's slant over the least of the problem, less the
 * kerf that the least slanted one does not need. [1/16 in]
 */
export function needOf(model: Pick<CuttingModel, 'sizes' | 'slants'>, sizes: readonly number[]): number {
  let spans = 0;
  let most = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const index of sizes) {
    const size = model.sizes[index];
    if (size === undefined) continue;
    spans += size.span;
    most = Math.max(most, size.slant);
    least = Math.min(least, size.slant);
  }
  return spans === 0 ? 0 : spans + steepening(model, least, most);
}

/** What slants from the one class to the other add to the spans of a load. [1/16 in] */
export function steepening(model: Pick<CuttingModel, 'slants'>, least: number, most: number): number {
  return (model.slants[most]?.over ?? 0) - (model.slants[least]?.moreKerf ?? 0);
}

/** Room that a piece of a size needs in a board of its own. [1/16 in] */
export function needAlone(model: Pick<CuttingModel, 'sizes' | 'slants'>, size: number): number {
  return needOf(model, [size]);
}

/** What loads count for. [cents] */
export function centsOf(model: Pick<CuttingModel, 'stocks'>, loads: readonly Load[]): number {
  return loads.reduce((sum, load) => sum + (model.stocks[load.stock]?.cents ?? 0), 0);
}

/** Longest room of any stock. [1/16 in] */
export function longestRoom(model: Pick<CuttingModel, 'stocks'>): number {
  return model.stocks.at(-1)?.room ?? 0;
}

/** Leaves out what costs no less than something longer that can be bought as often as wanted. */
function worthHaving(choices: readonly StockChoice[]): readonly StockChoice[] {
  const longestFirst = choices
    .filter((choice) => choice.room > 0)
    .toSorted(
      (a, b) =>
        b.room - a.room ||
        a.cents - b.cents ||
        Number(b.available > a.available) - Number(b.available < a.available) ||
        (a.itemId < b.itemId ? -1 : 1),
    );
  const kept: StockChoice[] = [];
  let cheapest = Number.POSITIVE_INFINITY;
  for (const choice of longestFirst) {
    if (choice.cents >= cheapest) continue;
    kept.push(choice);
    if (choice.available === Number.POSITIVE_INFINITY) cheapest = choice.cents;
  }
  return kept.reverse();
}

function boughtByNeed(stocks: readonly StockChoice[]): Int16Array {
  const longest = stocks.at(-1)?.room ?? 0;
  const bought = [...stocks.entries()].filter(([, { available }]) => available === Number.POSITIVE_INFINITY);
  const choice = new Int16Array(longest + 1).fill(-1);
  let index = 0;
  for (let need = 0; need <= longest; need += 1) {
    while ((bought[index]?.[1].room ?? Number.POSITIVE_INFINITY) < need) index += 1;
    choice[need] = bought[index]?.[0] ?? -1;
  }
  return choice;
}
