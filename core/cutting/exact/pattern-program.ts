import { sizesOfColumn, type Column } from '../column.ts';
import type { CuttingModel, Load } from '../cutting-model.ts';
import { selectStocks } from '../select-stocks.ts';
import type { LinearModel } from './linear-programs.ts';
import { atLeast, exactly, makeProgram } from './make-program.ts';

/**
 * The cutting problem over listed patterns: how many boards of each, so that at least the pieces asked for are cut, no more
 * scarce boards are used than there are, and the least is paid.
 *
 * Beside each pattern's boards stand, as columns of their own, the boards of each stock and all boards. They say nothing
 * new, but they bear the cost, and a search that may part cases by them (five 16-footers or fewer, six or more) closes
 * many times sooner than one that can only part cases by single patterns.
 * @param model - the problem.
 * @param patterns - ways to cut a board.
 * @param mostBoards - boards in all, at most.
 * @returns columns: patterns, then stocks, then the number of boards; rows: sizes, then stocks, then the number of boards.
 */
export function patternProgram(
  model: CuttingModel,
  patterns: readonly Column[],
  mostBoards = Number.POSITIVE_INFINITY,
): LinearModel {
  const sizes = model.sizes.length;
  const allBoards = sizes + model.stocks.length;
  const pieces = model.sizes.reduce((sum, { demand }) => sum + demand, 0);
  return makeProgram(
    [...model.sizes.map(({ demand }) => atLeast(demand)), ...model.stocks.map(() => exactly(0)), exactly(0)],
    [
      ...patterns.map((pattern) => ({
        cost: 0,
        upper: mostOfPattern(model, pattern),
        entries: [...entriesOfPattern(pattern), [sizes + pattern.stock, 1] as const],
      })),
      ...model.stocks.map(({ cents, available }, stock) => ({
        cost: cents,
        upper: Math.min(available, pieces),
        entries: [[sizes + stock, -1] as const, [allBoards, 1] as const],
      })),
      { cost: 0, upper: Math.min(pieces, mostBoards), entries: [[allBoards, -1] as const] },
    ],
  );
}

/** Pieces that a board of a pattern gives, by size. */
export function entriesOfPattern({
  sizes,
  counts,
}: Column): readonly (readonly [size: number, count: number])[] {
  return sizes.map((size, place) => [size, counts[place] ?? 0] as const);
}

/** Boards cut by one pattern beyond which no more pieces that are asked for come out of it. */
export function mostOfPattern(model: CuttingModel, { stock, sizes, counts }: Column): number {
  const useful = sizes.reduce(
    (most, size, index) => Math.max(most, Math.ceil((model.sizes[size]?.demand ?? 0) / (counts[index] ?? 1))),
    0,
  );
  return Math.min(useful, model.stocks[stock]?.available ?? useful);
}

/**
 * Loads of a solution in whole boards. Pieces cut beyond those asked for are left out, of the last boards first, and every
 * board is chosen anew for what is left in it.
 */
export function loadsOfSolution(
  model: CuttingModel,
  patterns: readonly Column[],
  values: Float64Array,
): readonly Load[] | undefined {
  const left = model.sizes.map(({ demand }) => demand);
  const contents: number[][] = [];
  for (const [index, pattern] of patterns.entries()) {
    const times = Math.round(values[index] ?? 0);
    for (let time = 0; time < times; time += 1) {
      const kept: number[] = [];
      for (const size of sizesOfColumn(pattern)) {
        if ((left[size] ?? 0) === 0) continue;
        left[size] = (left[size] ?? 0) - 1;
        kept.push(size);
      }
      if (kept.length > 0) contents.push(kept);
    }
  }
  return left.some((count) => count > 0) ? undefined : selectStocks(model, contents);
}
