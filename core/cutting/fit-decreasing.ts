import type { Left } from './column.ts';
import { needAlone, steepening, type CuttingModel, type Load } from './cutting-model.ts';
import { selectStocks } from './select-stocks.ts';

/** Boards being filled, side by side in arrays. */
type Filling = {
  readonly contents: number[][];
  readonly stock: number[];
  readonly spans: number[];
  readonly least: number[];
  readonly most: number[];
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
  const filling: Filling = { contents: [], stock: [], spans: [], least: [], most: [] };
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
        filling.stock.push(stock);
        filling.spans.push(0);
        filling.least.push(Number.POSITIVE_INFINITY);
        filling.most.push(0);
        open.push(board);
      }
      put(model, filling, board, size);
      if (restOf(model, filling, board) >= shortest) continue;
      full += 1;
      if (full * 4 > open.length) {
        open = open.filter((candidate) => restOf(model, filling, candidate) >= shortest);
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

function put(model: CuttingModel, filling: Filling, board: number, size: number): void {
  const { span = 0, slant = 0 } = model.sizes[size] ?? {};
  filling.contents[board]?.push(size);
  filling.spans[board] = (filling.spans[board] ?? 0) + span;
  filling.least[board] = Math.min(filling.least[board] ?? 0, slant);
  filling.most[board] = Math.max(filling.most[board] ?? 0, slant);
}

/** Room left in a board if nothing in it gets steeper. [1/16 in] */
function restOf(model: CuttingModel, filling: Filling, board: number): number {
  const room = model.stocks[filling.stock[board] ?? 0]?.room ?? 0;
  const steeper = steepening(model, filling.least[board] ?? 0, filling.most[board] ?? 0);
  return room - (filling.spans[board] ?? 0) - steeper;
}

/** Room left in a board once a piece is in it; below zero where it does not fit. [1/16 in] */
function restWith(model: CuttingModel, filling: Filling, board: number, size: number): number {
  const { span = 0, slant = 0 } = model.sizes[size] ?? {};
  const room = model.stocks[filling.stock[board] ?? 0]?.room ?? 0;
  const least = Math.min(filling.least[board] ?? 0, slant);
  const most = Math.max(filling.most[board] ?? 0, slant);
  return room - (filling.spans[board] ?? 0) - span - steepening(model, least, most);
}

function firstWithRoom(model: CuttingModel, filling: Filling, open: readonly number[], size: number): number {
  for (const board of open) if (restWith(model, filling, board, size) >= 0) return board;
  return -1;
}

function tightest(model: CuttingModel, filling: Filling, open: readonly number[], size: number): number {
  let chosen = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const board of open) {
    const rest = restWith(model, filling, board, size);
    if (rest >= 0 && rest < least) {
      chosen = board;
      least = rest;
    }
  }
  return chosen;
}
