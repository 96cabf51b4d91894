import { longestRoom, type CuttingModel } from './cutting-model.ts';

/** The best content of a board of every stock at once. */
export type BestFill = {
  /** Largest value that fits a board of a stock, 0 or more. */
  valueOf(stock: number): number;
  /** How many of each size make up that value. */
  countsOf(stock: number): number[];
  /** Table cells computed, as a measure of the work done. */
  readonly cells: number;
};

/** Beyond any sum of values: no content ends here. */
const unreached = -1;

/**
 * Fills a board with the most value: the bounded knapsack, by dynamic programming over the room. Exact as long as values
 * are whole numbers below 2^53 in sum.
 *
 * Sizes go in slant by slant, so that after those of one slant it is known what the steepest piece in the board takes:
 * there the table is read, at a room that much shorter. What the kerf of the least slanted piece gives back is where its
 * class starts in the table.
 * @param model - spans, slants and rooms. [1/16 in]
 * @param most - how many of each size there are.
 * @param values - by size; sizes with no value above zero stay out.
 * @returns best value and counts for every stock; 4, 3 with values 5, 4 in a room of 10 -> 13 (one 4, two 3).
 */
export function bestFill(model: CuttingModel, most: readonly number[], values: ArrayLike<number>): BestFill {
  const highestCredit = model.slants.at(-1)?.moreKerf ?? 0;
  const length = longestRoom(model) + highestCredit;
  const best = new Float64Array(length + 1).fill(unreached);
  const before = new Float64Array(length + 1);
  const rows: Row[] = [];
  const found = model.stocks.map(() => ({ value: 0, rows: 0, place: 0 }));
  let cells = 0;
  for (const [slant, { over, moreKerf }] of model.slants.entries()) {
    for (let place = highestCredit - moreKerf; place <= length && best[place] === unreached; place += 1)
      best[place] = 0;
    for (const [size, { span, slant: itsSlant }] of model.sizes.entries()) {
      const value = values[size] ?? 0;
      const limit = Math.min(most[size] ?? 0, Math.floor(length / span));
      if (itsSlant !== slant || value <= 0 || limit === 0) continue;
      const row = { size, span, taken: new Uint16Array(length + 1) };
      cells += addSize(best, before, row, value, limit);
      rows.push(row);
    }
    for (const [stock, { room }] of model.stocks.entries()) {
      const place = room + highestCredit - over;
      const value = best[place] ?? 0;
      if (value > (found[stock]?.value ?? 0)) found[stock] = { value, rows: rows.length, place };
    }
  }
  return {
    cells,
    valueOf: (stock) => found[stock]?.value ?? 0,
    countsOf(stock) {
      const counts = model.sizes.map(() => 0);
      let { place, rows: index } = found[stock] ?? { place: 0, rows: 0 };
      for (index -= 1; index >= 0; index -= 1) {
        const row = rows[index];
        if (row === undefined) continue;
        const count = row.taken[place] ?? 0;
        counts[row.size] = count;
        place -= count * row.span;
      }
      return counts;
    },
  };
}

type Row = { readonly size: number; readonly span: number; readonly taken: Uint16Array };

/** Lets so many pieces of one size into the table; returns the cells computed. */
function addSize(
  best: Float64Array,
  before: Float64Array,
  { span, taken }: Row,
  value: number,
  limit: number,
): number {
  const last = best.length - 1;
  if (limit === 1) {
    for (let room = last; room >= span; room -= 1) {
      const rest = best[room - span] ?? unreached;
      if (rest >= 0 && rest + value > (best[room] ?? unreached)) {
        best[room] = rest + value;
        taken[room] = 1;
      }
    }
    return last - span;
  }
  if (limit === Math.floor(last / span)) {
    for (let room = span; room <= last; room += 1) {
      const rest = best[room - span] ?? unreached;
      if (rest >= 0 && rest + value > (best[room] ?? unreached)) {
        best[room] = rest + value;
        taken[room] = (taken[room - span] ?? 0) + 1;
      }
    }
    return last - span;
  }
  before.set(best);
  let cells = 0;
  for (let count = 1; count <= limit; count += 1) {
    const width = count * span;
    const worth = count * value;
    cells += last - width;
    for (let room = width; room <= last; room += 1) {
      const rest = before[room - width] ?? unreached;
      if (rest >= 0 && rest + worth > (best[room] ?? unreached)) {
        best[room] = rest + worth;
        taken[room] = count;
      }
    }
  }
  return cells;
}
