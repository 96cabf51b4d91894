import { loadKey } from './better-loads.ts';
import { cheapestLoad } from './fit-decreasing.ts';
import { spanOf, type CuttingModel, type Load } from './cutting-model.ts';
import type { WorkBudget } from './relaxation.ts';

/** Boards that pairs are made of, those with the most left over first; more would take more time than they save. */
const mostBoards = 120;

/**
 * Divides the pieces of two boards anew between two cheaper ones, or moves them into one, for every pair of the boards
 * with the most left over, until no pair gets cheaper. Exact for each pair: a table of the sums that their pieces make.
 * @param model - the problem.
 * @param loads - a plan.
 * @param budget - work that may be done.
 * @returns loads with the same pieces that cost no more.
 */
export function improvePairs(
  model: CuttingModel,
  loads: readonly Load[],
  budget: WorkBudget,
): readonly Load[] {
  const wasteful = loads
    .map((load) => ({ load, key: loadKey(load), left: leftOver(model, load) }))
    .sort((a, b) => b.left - a.left || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  const untouched = wasteful.slice(mostBoards).map(({ load }) => load);
  let current: readonly Keyed[] = wasteful.slice(0, mostBoards);
  const tried = new Set<string>();
  for (let better = true; better && budget.cells > 0; ) {
    const next = firstBetterPair(model, current, tried, budget);
    better = next !== undefined;
    if (next !== undefined) current = next;
  }
  return [...current.map(({ load }) => load), ...untouched];
}

type Keyed = { readonly load: Load; readonly key: string };

/** Boards with the first pair that gets cheaper divided anew; pairs tried before are passed over. */
function firstBetterPair(
  model: CuttingModel,
  boards: readonly Keyed[],
  tried: Set<string>,
  budget: WorkBudget,
): readonly Keyed[] | undefined {
  for (const [place, one] of boards.entries()) {
    for (const other of boards.slice(place + 1)) {
      if (budget.cells <= 0) return undefined;
      const key = `${one.key}|${other.key}`;
      if (tried.has(key)) continue;
      tried.add(key);
      const divided = divideAnew(model, one.load, other.load, budget);
      if (divided === undefined) continue;
      const kept = boards.filter((board) => board !== one && board !== other);
      return [...kept, ...divided.map((load) => ({ load, key: loadKey(load) }))];
    }
  }
  return undefined;
}

/** Length left in a board. [1/16 in] */
function leftOver(model: CuttingModel, load: Load): number {
  return (model.stocks[load.stock]?.room ?? 0) - spanOf(model, load.sizes);
}

function divideAnew(
  model: CuttingModel,
  one: Load,
  other: Load,
  budget: WorkBudget,
): readonly Load[] | undefined {
  const pieces = [...one.sizes, ...other.sizes].toSorted((a, b) => a - b);
  const spans = pieces.map((size) => model.sizes[size]?.span ?? 0);
  const total = spans.reduce((sum, span) => sum + span, 0);
  const longest = model.stocks.at(-1)?.room ?? 0;
  const half = Math.min(Math.floor(total / 2), longest);
  const now = (model.stocks[one.stock]?.cents ?? 0) + (model.stocks[other.stock]?.cents ?? 0);
  budget.cells -= (half + 1) * pieces.length;
  /** Piece by which each sum was first reached; -1 for not at all. */
  const lastPiece = new Int16Array(half + 1).fill(-1);
  lastPiece[0] = pieces.length;
  for (const [index, span] of spans.entries()) {
    for (let sum = half; sum >= span; sum -= 1) {
      const before = lastPiece[sum - span] ?? -1;
      if (lastPiece[sum] === -1 && before !== -1 && before !== index) lastPiece[sum] = index;
    }
  }
  let best = -1;
  let least = now;
  for (let sum = 0; sum <= half; sum += 1) {
    if (lastPiece[sum] === -1 || total - sum > longest) continue;
    const cents = (model.centsForSpan[sum] ?? 0) + (model.centsForSpan[total - sum] ?? 0);
    if (cents < least) [best, least] = [sum, cents];
  }
  if (best === -1) return undefined;
  const first: number[] = [];
  const inFirst = new Set<number>();
  for (let sum = best; sum > 0; ) {
    const piece = lastPiece[sum] ?? 0;
    inFirst.add(piece);
    first.push(pieces[piece] ?? 0);
    sum -= spans[piece] ?? sum;
  }
  const second = pieces.filter((_, index) => !inFirst.has(index));
  return [first, second].filter((sizes) => sizes.length > 0).map((sizes) => cheapestLoad(model, sizes));
}
