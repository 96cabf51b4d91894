import { cheapestStock, type CuttingModel, type Load } from './cutting-model.ts';

/**
 * Packs pieces, longest first, one after the other into boards of one stock: each into the first board that has room, or into the one
 * it fills best. A piece that this stock cannot hold opens the cheapest board that can.
 * Every board is then swapped for the cheapest that still holds what is in it.
 * @param model - the problem.
 * @param demand - pieces still to be packed, by size.
 * @param stock - index of the stock that boards are opened in.
 * @param fit - which board takes a piece.
 * @returns loads that hold every piece once.
 */
export function fitDecreasing(
  model: CuttingModel,
  demand: readonly number[],
  stock: number,
  fit: 'first' | 'best',
): readonly Load[] {
  const room = model.stocks[stock]?.room ?? 0;
  const total = demand.reduce((sum, count) => sum + count, 0);
  const left = new Int32Array(total);
  const boards: number[][] = [];
  const shortest = model.sizes.reduce(
    (least, size, index) => ((demand[index] ?? 0) > 0 ? Math.min(least, size.span) : least),
    Number.POSITIVE_INFINITY,
  );
  /** Boards that still have room for the shortest piece, in the order in which they were opened. */
  let open: number[] = [];
  let full = 0;
  for (const [size, { span }] of model.sizes.entries()) {
    for (let piece = 0; piece < (demand[size] ?? 0); piece += 1) {
      let board = fit === 'first' ? firstWithRoom(open, left, span) : tightestWithRoom(open, left, span);
      if (board === -1) {
        board = boards.length;
        left[board] = room >= span ? room : (model.stocks[cheapestStock(model, span)]?.room ?? 0);
        boards.push([]);
        open.push(board);
      }
      boards[board]?.push(size);
      const rest = (left[board] ?? 0) - span;
      left[board] = rest;
      if (rest >= shortest) continue;
      full += 1;
      if (full * 4 > open.length) {
        open = open.filter((candidate) => (left[candidate] ?? 0) >= shortest);
        full = 0;
      }
    }
  }
  return boards.map((sizes) => cheapestLoad(model, sizes));
}

/** A load on the cheapest stock that holds it, longest piece first. */
export function cheapestLoad(model: CuttingModel, sizes: readonly number[]): Load {
  const span = sizes.reduce((sum, size) => sum + (model.sizes[size]?.span ?? 0), 0);
  return { stock: cheapestStock(model, span), sizes: sizes.toSorted((a, b) => a - b) };
}

function firstWithRoom(open: readonly number[], left: Int32Array, span: number): number {
  for (const board of open) if ((left[board] ?? 0) >= span) return board;
  return -1;
}

function tightestWithRoom(open: readonly number[], left: Int32Array, span: number): number {
  let chosen = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const board of open) {
    const here = left[board] ?? 0;
    if (here >= span && here < least) {
      chosen = board;
      least = here;
    }
  }
  return chosen;
}
