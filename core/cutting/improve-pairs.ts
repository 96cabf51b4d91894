import { loadKey } from './better-loads.ts';
import { cheapestLoad } from './fit-decreasing.ts';
import type { CuttingModel, Load } from './cutting-model.ts';
import type { WorkBudget } from './relaxation.ts';

/**
 * Divides the pieces of two boards anew between two cheaper ones, or moves them into one, for every pair of boards,
 * until no pair gets cheaper. Exact for each pair: a table of the sums that their pieces can make.
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
  let current = [...loads];
  const tried = new Set<string>();
  for (let improved = true; improved && budget.cells > 0; ) {
    improved = false;
    for (let one = 0; one < current.length && budget.cells > 0; one += 1) {
      for (let other = one + 1; other < current.length && budget.cells > 0; other += 1) {
        const [a, b] = [current[one], current[other]];
        if (a === undefined || b === undefined) continue;
        const key = `${loadKey(a)}|${loadKey(b)}`;
        budget.cells -= 8;
        if (tried.has(key)) continue;
        tried.add(key);
        const divided = divideAnew(model, a, b, budget);
        if (divided === undefined) continue;
        current = [...current.filter((_, index) => index !== one && index !== other), ...divided];
        improved = true;
        other = one;
      }
    }
  }
  return current;
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
