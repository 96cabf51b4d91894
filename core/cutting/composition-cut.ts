import { bestFill } from './best-fill.ts';
import type { CuttingModel } from './cutting-model.ts';

/**
 * What boards must hold together: if a piece of each size is given a worth, and a board of a stock can hold at most so much
 * of it, then the boards of any plan, each counted with what it can hold, must come to the worth of all pieces. Whole
 * numbers, so that nothing of it is rounded.
 */
export type CompositionCut = {
  /** Worth of a piece, by size. */
  readonly worth: readonly number[];
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
    worth: values,
    needed: model.sizes.reduce((sum, { demand }, size) => sum + demand * (values[size] ?? 0), 0),
    perBoard: model.stocks.map((_, stock) => fill.valueOf(stock)),
  };
}

/** Whether so many boards of each stock come to what a cut asks for. */
export function keepsCut(cut: CompositionCut, boards: readonly number[]): boolean {
  return boards.reduce((sum, count, stock) => sum + count * (cut.perBoard[stock] ?? 0), 0) >= cut.needed;
}
