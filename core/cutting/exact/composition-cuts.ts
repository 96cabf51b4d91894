import { bestFill } from '../best-fill.ts';
import type { Column } from '../column.ts';
import type { CuttingModel } from '../cutting-model.ts';
import { relax } from '../relaxation.ts';

/**
 * What boards must hold together: if a piece of each size is given a worth, and a board of a stock can hold at most so much
 * of it, then the boards of any plan, each counted with what it can hold, must come to the worth of all pieces. Whole
 * numbers, so that nothing of it is rounded.
 */
export type CompositionCut = {
  /** Worth of all pieces. */
  readonly needed: number;
  /** Most that a board of each stock can hold. */
  readonly perBoard: readonly number[];
};

/** Worths of a cut are whole shares of a sixteenth of an inch. */
const sharesOfSixteenth = 2 ** 14;

/** Makes the cut of a worth for each size. [any unit] */
export function cutOfWorths(model: CuttingModel, worth: ArrayLike<number>): CompositionCut {
  const values = model.sizes.map((_, size) =>
    Math.max(0, Math.floor((worth[size] ?? 0) * sharesOfSixteenth)),
  );
  const fill = bestFill(
    model,
    model.sizes.map(({ demand }) => demand),
    values,
  );
  return {
    needed: model.sizes.reduce((sum, { demand }, size) => sum + demand * (values[size] ?? 0), 0),
    perBoard: model.stocks.map((_, stock) => fill.valueOf(stock)),
  };
}

/** Whether so many boards of each stock come to what a cut asks for. */
export function keepsCut(cut: CompositionCut, boards: readonly number[]): boolean {
  return boards.reduce((sum, count, stock) => sum + count * (cut.perBoard[stock] ?? 0), 0) >= cut.needed;
}

/**
 * Asks whether so many boards of each stock can hold all pieces, if boards could be cut in fractions of patterns.
 * @param model - the problem.
 * @param boards - how many of each stock.
 * @param pool - patterns known already, at no price; new ones are appended.
 * @returns the cut that they do not keep; undefined where they can hold the pieces, as far as this shows.
 */
export function cutAgainst(
  model: CuttingModel,
  boards: readonly number[],
  pool: Column[],
  stopped: () => boolean,
): CompositionCut | undefined {
  const free: CuttingModel = {
    ...model,
    stocks: model.stocks.map((stock, index) => ({ ...stock, cents: 0, available: boards[index] ?? 0 })),
    limited: true,
  };
  const left = {
    demand: model.sizes.map(({ demand }) => demand),
    supply: boards.map((count) => count),
  };
  // What finds no board counts by its length, so that the worths come out as lengths.
  const known = pool.filter(({ stock }) => (boards[stock] ?? 0) > 0);
  const before = known.length;
  const { worths } = relax(
    free,
    left,
    known,
    { cells: 50_000_000, stopped },
    (size) => model.sizes[size]?.span ?? 1,
  );
  pool.push(...known.slice(before));
  const cut = cutOfWorths(model, worths.worth);
  return keepsCut(cut, boards) ? undefined : cut;
}
