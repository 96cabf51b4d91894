import { loadKey } from './better-loads.ts';
import { longestRoom, needOf, steepening, type CuttingModel, type Load } from './cutting-model.ts';
import { cheapestBought, selectStocks } from './select-stocks.ts';
import type { WorkBudget } from './relaxation.ts';

/** Boards that pairs are made of, those with the most left over first; more would take more time than they save. */
const mostBoards = 120;

/**
 * Divides the pieces of two boards anew between two cheaper ones to buy, or moves them into one, for every pair of the
 * boards with the most left over, until no pair gets cheaper; then chooses all boards anew for what is in them. Exact for
 * each pair of one slant: a table of the sums that their pieces make.
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
  const centsByNeed = boughtCentsByNeed(model);
  for (let better = true; better && budget.cells > 0; ) {
    const next = firstBetterPair(model, centsByNeed, current, tried, budget);
    better = next !== undefined;
    if (next !== undefined) current = next;
  }
  const improved = [...current.map(({ load }) => load), ...untouched];
  if (!model.limited) return improved;
  return (
    selectStocks(
      model,
      improved.map(({ sizes }) => sizes),
    ) ?? improved
  );
}

type Keyed = { readonly load: Load; readonly key: string };

/** Price of the cheapest board to buy that has room for a need, by need; 0 for nothing, infinite for none. [cents] */
function boughtCentsByNeed(model: CuttingModel): Float64Array {
  return Float64Array.from({ length: longestRoom(model) + 1 }, (_, need) =>
    need === 0 ? 0 : (model.stocks[cheapestBought(model, need)]?.cents ?? Number.POSITIVE_INFINITY),
  );
}

/** Boards with the first pair that gets cheaper divided anew; pairs tried before are passed over. */
function firstBetterPair(
  model: CuttingModel,
  centsByNeed: Float64Array,
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
      const divided = divideAnew(model, centsByNeed, one.load, other.load, budget);
      if (divided === undefined) continue;
      const kept = boards.filter((board) => board !== one && board !== other);
      return [...kept, ...divided.map((load) => ({ load, key: loadKey(load) }))];
    }
  }
  return undefined;
}

/** Length left in a board. [1/16 in] */
function leftOver(model: CuttingModel, load: Load): number {
  return (model.stocks[load.stock]?.room ?? 0) - needOf(model, load.sizes);
}

function divideAnew(
  model: CuttingModel,
  centsByNeed: Float64Array,
  one: Load,
  other: Load,
  budget: WorkBudget,
): readonly Load[] | undefined {
  const pieces = [...one.sizes, ...other.sizes].toSorted((a, b) => a - b);
  const spans = pieces.map((size) => model.sizes[size]?.span ?? 0);
  const total = spans.reduce((sum, span) => sum + span, 0);
  const slants = pieces.map((size) => model.sizes[size]?.slant ?? 0);
  // Either part is reckoned as if the steepest piece were in it.
  const steeper = steepening(model, Math.min(...slants), Math.max(...slants));
  const longest = longestRoom(model) - steeper;
  const half = Math.min(Math.floor(total / 2), longest);
  const now = (model.stocks[one.stock]?.cents ?? 0) + (model.stocks[other.stock]?.cents ?? 0);
  if (half < 0) return undefined;
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
    const first = sum === 0 ? 0 : (centsByNeed[sum + steeper] ?? Number.POSITIVE_INFINITY);
    const cents = first + (centsByNeed[total - sum + steeper] ?? Number.POSITIVE_INFINITY);
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
  return [first, second]
    .filter((sizes) => sizes.length > 0)
    .map((sizes) => ({
      stock: cheapestBought(model, needOf(model, sizes)),
      sizes: sizes.toSorted((a, b) => a - b),
    }));
}
