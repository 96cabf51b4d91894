import type { Column } from '../column.ts';
import { cutOfWorths, keepsCut, type CompositionCut } from '../composition-cut.ts';
import type { CuttingModel } from '../cutting-model.ts';
import { relax } from '../relaxation.ts';

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
