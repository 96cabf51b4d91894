import { isBetter } from './better-loads.ts';
import type { Left } from './column.ts';
import { fitDecreasing } from './fit-decreasing.ts';
import { patternGreedy } from './pattern-greedy.ts';
import { longestRoom, type CuttingModel, type Load } from './cutting-model.ts';
import type { WorkBudget } from './relaxation.ts';

/** How much long pieces are favoured in the pattern-greedy runs. [-] */
const favours = [0, 0.25, 1];

/**
 * The best of the quick ways: first-fit and best-fit decreasing started on every length, and filling board by board.
 * @param model - the problem.
 * @param left - pieces still to be packed, and boards that there still are.
 * @param budget - work that may be done; filling board by board is left out where it would cost too much of it.
 * @param ways - `fits` leaves out filling board by board.
 * @returns undefined where boards run out in every way tried.
 */
export function greedyLoads(
  model: CuttingModel,
  left: Left,
  budget: WorkBudget,
  ways: 'all' | 'fits' = 'all',
): readonly Load[] | undefined {
  let best: readonly Load[] | undefined;
  const offer = (loads: readonly Load[] | undefined): void => {
    if (loads !== undefined && (best === undefined || isBetter(model, loads, best))) best = loads;
  };
  for (const order of openingOrders(model)) {
    offer(fitDecreasing(model, left, order, 'first'));
    offer(fitDecreasing(model, left, order, 'best'));
  }
  const kinds = left.demand.filter((count) => count > 0).length;
  const cells = kinds * kinds * longestRoom(model) * favours.length;
  if (ways === 'all' && cells <= budget.cells / 4) {
    budget.cells -= cells;
    for (const favour of favours) offer(patternGreedy(model, left, favour));
  }
  return best;
}

/**
 * Orders in which boards are opened: each length first, then those to buy from the shortest up; and, where there are only
 * so many of some, each length behind all the scarce ones, cheapest by the foot first.
 */
export function openingOrders(model: CuttingModel): readonly (readonly number[])[] {
  const all = [...model.stocks.keys()];
  const bought = all.filter((stock) => model.stocks[stock]?.available === Number.POSITIVE_INFINITY);
  const scarce = all
    .filter((stock) => !bought.includes(stock))
    .sort((a, b) => centsPerRoom(model, a) - centsPerRoom(model, b) || b - a);
  const first = all.map((stock) => distinct([stock, ...bought, ...scarce]));
  if (scarce.length === 0) return first;
  const shortestFirst = scarce.toSorted((a, b) => a - b);
  const behind = bought.map((stock) => distinct([...scarce, stock, ...bought]));
  return [
    ...first,
    ...behind,
    distinct([...shortestFirst, ...bought]),
    distinct([...shortestFirst.toReversed(), ...bought]),
  ];
}

function centsPerRoom(model: CuttingModel, stock: number): number {
  const { cents = 0, room = 1 } = model.stocks[stock] ?? {};
  return cents / room;
}

function distinct(order: readonly number[]): readonly number[] {
  return [...new Set(order)];
}
