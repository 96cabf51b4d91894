import { cheapestStock, type CuttingModel, type Load } from './cutting-model.ts';

/**
 * Packs pieces one after the other into boards of one stock: each into the first board that has room, or into the one
 * it fills best. A piece that this stock cannot hold opens the cheapest board that can.
 * Every board is then swapped for the cheapest that still holds what is in it.
 * @param model - the problem.
 * @param demand - pieces still to be packed, by size.
 * @param stock - index of the stock that boards are opened in.
 * @param fit - which board takes a piece.
 * @param order - sizes in the order in which they are packed; longest first where left out.
 * @returns loads that hold every piece once.
 */
export function fitDecreasing(
  model: CuttingModel,
  demand: readonly number[],
  stock: number,
  fit: 'first' | 'best',
  order?: readonly number[],
): readonly Load[] {
  const room = model.stocks[stock]?.room ?? 0;
  const total = demand.reduce((sum, count) => sum + count, 0);
  const left = new Int32Array(total);
  const boards: number[][] = [];
  for (const size of order ?? model.sizes.keys()) {
    const span = model.sizes[size]?.span ?? 0;
    let from = 0;
    for (let piece = 0; piece < (demand[size] ?? 0); piece += 1) {
      let chosen = -1;
      if (fit === 'first') {
        while (from < boards.length && (left[from] ?? 0) < span) from += 1;
        if (from < boards.length) chosen = from;
      } else {
        let leastLeft = Number.POSITIVE_INFINITY;
        for (let board = 0; board < boards.length; board += 1) {
          const here = left[board] ?? 0;
          if (here >= span && here < leastLeft) [chosen, leastLeft] = [board, here];
        }
      }
      if (chosen === -1) {
        const opened = room >= span ? room : (model.stocks[cheapestStock(model, span)]?.room ?? 0);
        left[boards.length] = opened - span;
        boards.push([size]);
      } else {
        left[chosen] = (left[chosen] ?? 0) - span;
        boards[chosen]?.push(size);
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
