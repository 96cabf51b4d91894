import type { Left } from './column.ts';
import { needAlone, steepening, type CuttingModel, type Load } from './cutting-model.ts';
import { selectStocks } from './select-stocks.ts';

/** Boards being filled, side by side in arrays. */
type Filling = {
  readonly contents: number[][];
  /** Room left behind what is in the board. [1/16 in] */
  readonly left: Int32Array;
  /** Slants of the least and the most slanted piece in it. */
  readonly least: Int16Array;
  readonly most: Int16Array;
};

/**
 * Packs pieces, longest first, one after the other into boards: each into the first board that has room, or into the one
 * it fills best. Where none has room a board is opened: of the first stock in the order given that holds the piece and
 * that there still is. Every board is then swapped for the cheapest that still holds what is in it.
 * @param model - the problem.
 * @param left - pieces still to be packed, and boards that there still are.
 * @param order - stocks in the order in which boards are opened.
 * @param fit - which board takes a piece.
 * @returns loads that hold every piece once; undefined where boards run out.
 */
export function fitDecreasing(
  model: CuttingModel,
  left: Left,
  order: readonly number[],
  fit: 'first' | 'best',
): readonly Load[] | undefined {
  const pieces = left.demand.reduce((sum, count) => sum + count, 0);
  const filling: Filling = {
    contents: [],
    left: new Int32Array(pieces),
    least: new Int16Array(pieces),
    most: new Int16Array(pieces),
  };
  const supply = [...left.supply];
  const shortest = model.sizes.reduce(
    (least, size, index) => ((left.demand[index] ?? 0) > 0 ? Math.min(least, size.span) : least),
    Number.POSITIVE_INFINITY,
  );
  /** Boards that may still have room for the shortest piece, in the order in which they were opened. */
  let open: number[] = [];
  let full = 0;
  for (const size of model.sizes.keys()) {
    for (let piece = 0; piece < (left.demand[size] ?? 0); piece += 1) {
      let board =
        fit === 'first' ? firstWithRoom(model, filling, open, size) : tightest(model, filling, open, size);
      if (board === -1) {
        const stock = stockToOpen(model, order, supply, size);
        if (stock === undefined) return undefined;
        supply[stock] = (supply[stock] ?? 0) - 1;
        board = filling.contents.length;
        filling.contents.push([]);
        openBoard(model, filling, board, stock, size);
        open.push(board);
      }
      put(model, filling, board, size);
      if ((filling.left[board] ?? 0) >= shortest) continue;
      full += 1;
      if (full * 4 > open.length) {
        open = open.filter((candidate) => (filling.left[candidate] ?? 0) >= shortest);
        full = 0;
      }
    }
  }
  return selectStocks(model, filling.contents, left.supply);
}

function stockToOpen(
  model: CuttingModel,
  order: readonly number[],
  supply: readonly number[],
  size: number,
): number | undefined {
  const need = needAlone(model, size);
  return order.find((stock) => (supply[stock] ?? 0) > 0 && (model.stocks[stock]?.room ?? 0) >= need);
}

/** Opens a board for a piece, which is put into it next. */
function openBoard(model: CuttingModel, filling: Filling, board: number, stock: number, size: number): void {
  const slant = model.sizes[size]?.slant ?? 0;
  filling.left[board] = (model.stocks[stock]?.room ?? 0) - steepening(model, slant, slant);
  filling.least[board] = slant;
  filling.most[board] = slant;
}

function put(model: CuttingModel, filling: Filling, board: number, size: number): void {
  const slant = model.sizes[size]?.slant ?? 0;
  filling.left[board] = restWith(model, filling, board, size);
  filling.contents[board]?.push(size);
  filling.least[board] = Math.min(filling.least[board] ?? 0, slant);
  filling.most[board] = Math.max(filling.most[board] ?? 0, slant);
}

/** Room left in a board once a piece is in it; below zero where it does not fit. [1/16 in] */
function restWith(model: CuttingModel, filling: Filling, board: number, size: number): number {
  const { span = 0, slant = 0 } = model.sizes[size] ?? {};
  const rest = (filling.left[board] ?? 0) - span;
  const least = filling.least[board] ?? 0;
  const most = filling.most[board] ?? 0;
  if (rest < 0 || (slant >= least && slant <= most)) return rest;
  const now = steepening(model, least, most);
  return rest + now - steepening(model, Math.min(least, slant), Math.max(most, slant));
}

function firstWithRoom(model: CuttingModel, filling: Filling, open: readonly number[], size: number): number {
  const span = model.sizes[size]?.span ?? 0;
  for (const board of open)
    if ((filling.left[board] ?? 0) >= span && restWith(model, filling, board, size) >= 0) return board;
  return -1;
}

function tightest(model: CuttingModel, filling: Filling, open: readonly number[], size: number): number {
  const span = model.sizes[size]?.span ?? 0;
  let chosen = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const board of open) {
    const left = filling.left[board] ?? 0;
    if (left < span || left - span >= least) continue;
    const rest = restWith(model, filling, board, size);
    if (rest >= 0 && rest < least) {
      chosen = board;
      least = rest;
    }
  }
  return chosen;
}
