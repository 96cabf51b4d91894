import { sizesOfColumn, type Column } from '../column.ts';
import type { CuttingModel, Load } from '../cutting-model.ts';
import { selectStocks } from '../select-stocks.ts';
import type { LinearModel } from './linear-programs.ts';

/**
 * The cutting problem over listed patterns: how many boards of each, so that at least the pieces asked for are cut, no more
 * scarce boards are used than there are, and the least is paid.
 *
 * Beside each pattern's boards stand, as columns of their own, the boards of each stock and all boards. They say nothing
 * new, but they bear the cost, and a search that may part cases by them (five 16-footers or fewer, six or more) closes
 * many times sooner than one that can only part cases by single patterns.
 * @param model - the problem.
 * @param patterns - ways to cut a board.
 * @returns columns: patterns, then stocks, then the number of boards; rows: sizes, then stocks, then the number of boards.
 */
export function patternProgram(model: CuttingModel, patterns: readonly Column[]): LinearModel {
  const sizes = model.sizes.length;
  const stocks = model.stocks.length;
  const starts: number[] = [0];
  const rows: number[] = [];
  const values: number[] = [];
  const entry = (row: number, value: number): void => {
    rows.push(row);
    values.push(value);
  };
  for (const pattern of patterns) {
    for (const [place, size] of pattern.sizes.entries()) entry(size, pattern.counts[place] ?? 0);
    entry(sizes + pattern.stock, 1);
    starts.push(rows.length);
  }
  for (const stock of model.stocks.keys()) {
    entry(sizes + stock, -1);
    entry(sizes + stocks, 1);
    starts.push(rows.length);
  }
  entry(sizes + stocks, -1);
  starts.push(rows.length);
  const pieces = model.sizes.reduce((sum, { demand }) => sum + demand, 0);
  const columns = patterns.length + stocks + 1;
  return {
    columnCost: Float64Array.from([...patterns.map(() => 0), ...model.stocks.map(({ cents }) => cents), 0]),
    columnLower: new Float64Array(columns),
    columnUpper: Float64Array.from([
      ...patterns.map((pattern) => mostBoards(model, pattern)),
      ...model.stocks.map(({ available }) => Math.min(available, pieces)),
      pieces,
    ]),
    columnWhole: new Uint8Array(columns).fill(1),
    rowLower: Float64Array.from([
      ...model.sizes.map(({ demand }) => demand),
      ...model.stocks.map(() => 0),
      0,
    ]),
    rowUpper: Float64Array.from([
      ...model.sizes.map(() => Number.POSITIVE_INFINITY),
      ...model.stocks.map(() => 0),
      0,
    ]),
    starts: Int32Array.from(starts),
    rows: Int32Array.from(rows),
    values: Float64Array.from(values),
  };
}

/** Boards cut by one pattern beyond which no more pieces that are asked for come out of it. */
function mostBoards(model: CuttingModel, { stock, sizes, counts }: Column): number {
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
