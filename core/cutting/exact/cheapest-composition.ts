import type { CuttingModel } from '../cutting-model.ts';
import { keepsCut, type CompositionCut } from './composition-cuts.ts';

/** How many boards of each stock, by stock. */
export type Composition = { readonly boards: readonly number[]; readonly cents: number };

/** Answer of a search: `none` within the limit; `gave-up` where it took too many steps. */
export type CompositionAnswer = Composition | 'none' | 'gave-up';

/** A range is widened by this before it is rounded inwards, so that rounding errors never leave a composition out. */
const safety = 1e-7;

/**
 * Finds the cheapest numbers of boards that keep every cut, by trying the numbers of one stock after the other, each only in
 * the range that the cuts leave it with the money that is left.
 * @param model - stocks.
 * @param cuts - what the boards must hold together.
 * @param from - no composition is cheaper than this. [cents]
 * @param limit - nothing dearer is wanted. [cents]
 * @param mostSteps - steps of the search, at most.
 */
export function cheapestComposition(
  model: CuttingModel,
  cuts: readonly CompositionCut[],
  from: number,
  limit: number,
  mostSteps: number,
): CompositionAnswer {
  const budget = { steps: mostSteps };
  // A search with little money to spare is short: the limit is moved up until something is found.
  for (let spare = 16; ; spare *= 4) {
    const most = Math.min(limit, from + spare);
    const found = searchWithin(model, cuts, most, budget);
    if (found !== undefined) return found;
    if (budget.steps <= 0) return 'gave-up';
    if (most === limit) return 'none';
  }
}

function searchWithin(
  model: CuttingModel,
  cuts: readonly CompositionCut[],
  most: number,
  budget: { steps: number },
): Composition | undefined {
  const order = searchOrder(model);
  const shares = bestShares(model, cuts, order);
  const boards = model.stocks.map(() => 0);
  let best: Composition | undefined;
  let limit = most;
  const walk = (place: number, spent: number, missing: Float64Array): void => {
    budget.steps -= 1;
    if (budget.steps <= 0) return;
    const stock = order[place];
    if (stock === undefined) {
      // What was rounded on the way is decided in whole numbers.
      if (!cuts.every((cut) => keepsCut(cut, boards))) return;
      best = { boards: [...boards], cents: spent };
      limit = spent - 1;
      return;
    }
    const { cents = 0, available = 0 } = model.stocks[stock] ?? {};
    const [least, highest] = rangeOf(cuts, shares[place + 1], missing, stock, cents, limit - spent);
    for (let count = least; count <= Math.min(highest, available); count += 1) {
      if (spent + count * cents > limit) break;
      boards[stock] = count;
      const still = missing.map((amount, index) => amount - count * (cuts[index]?.perBoard[stock] ?? 0));
      walk(place + 1, spent + count * cents, still);
    }
    boards[stock] = 0;
  };
  walk(0, 0, Float64Array.from(cuts, ({ needed }) => needed));
  return best;
}

/** Boards for nothing first, all of which are best used; then the dearest. */
function searchOrder(model: CuttingModel): readonly number[] {
  return [...model.stocks.keys()].sort((a, b) => {
    const [one, other] = [model.stocks[a]?.cents ?? 0, model.stocks[b]?.cents ?? 0];
    if (one === 0 || other === 0) return one - other;
    return other - one;
  });
}

/** Most that a cent can add to each cut, by place in the order: with the stocks from there on. */
function bestShares(
  model: CuttingModel,
  cuts: readonly CompositionCut[],
  order: readonly number[],
): readonly Float64Array[] {
  const shares: Float64Array[] = [new Float64Array(cuts.length)];
  for (const stock of order.toReversed()) {
    const behind = shares[0] ?? new Float64Array(cuts.length);
    const cents = model.stocks[stock]?.cents ?? 0;
    shares.unshift(
      Float64Array.from(cuts, ({ perBoard }, index) => {
        const each = perBoard[stock] ?? 0;
        return Math.max(behind[index] ?? 0, each === 0 ? 0 : each / cents);
      }),
    );
  }
  return shares;
}

/**
 * How many boards of a stock the cuts leave possible, if all money left behind them goes where it does most for each cut.
 */
function rangeOf(
  cuts: readonly CompositionCut[],
  sharesBehind: Float64Array | undefined,
  missing: Float64Array,
  stock: number,
  cents: number,
  money: number,
): readonly [least: number, most: number] {
  let least = 0;
  let most = cents === 0 ? Number.POSITIVE_INFINITY : Math.floor(money / cents);
  for (const [index, { perBoard }] of cuts.entries()) {
    const share = sharesBehind?.[index] ?? 0;
    const lacking = (missing[index] ?? 0) - money * share;
    const gain = (perBoard[stock] ?? 0) - cents * share;
    const slack = safety * (1 + Math.abs(missing[index] ?? 0) + money * share);
    if (gain > 0) least = Math.max(least, Math.ceil((lacking - slack) / gain));
    else if (gain < 0) most = Math.min(most, Math.floor((lacking - slack) / gain));
    else if (lacking > slack) return [1, 0];
  }
  return [least, most];
}
