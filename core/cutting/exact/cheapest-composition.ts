import { keepsCut, type CompositionCut } from '../composition-cut.ts';
import type { CuttingModel } from '../cutting-model.ts';

/** How many boards of each stock, by stock. */
export type Composition = { readonly boards: readonly number[]; readonly cents: number };

/** Answer of a search: `none` within the limit; `gave-up` where it took too many steps. */
export type CompositionAnswer = Composition | 'none' | 'gave-up';

/** What compositions are held against. */
export type CompositionRules = {
  readonly cuts: readonly CompositionCut[];
  /** Numbers of boards to buy that are known not to do, nor any fewer of each; scarce boards do not count. */
  readonly excluded: readonly (readonly number[])[];
  /** Nothing cheaper or dearer is wanted. [cents] */
  readonly least: number;
  readonly most: number;
  readonly mostBoards: number;
};

/** A composition is left out only where it misses a cut by more than this share, so that rounding errors leave none out. */
const safety = 1e-9;

/**
 * Finds the cheapest numbers of boards that keep every cut, by trying the numbers of one stock after the other, each only as
 * far as the money left behind them can still meet every cut.
 * @param model - stocks.
 * @param rules - what the boards must hold together, what is excluded, and what they may count for.
 * @param mostSteps - steps of the search, at most.
 */
export function cheapestComposition(
  model: CuttingModel,
  rules: CompositionRules,
  mostSteps: number,
): CompositionAnswer {
  const budget = { steps: mostSteps };
  // A search with little money to spare is short: the limit is moved up until something is found.
  for (let spare = 16; ; spare *= 4) {
    const most = Math.min(rules.most, rules.least + spare);
    const found = most < 0 ? undefined : searchWithin(model, rules, most, budget);
    if (budget.steps <= 0) return 'gave-up';
    if (found !== undefined) return found;
    if (most === rules.most) return 'none';
  }
}

function searchWithin(
  model: CuttingModel,
  { cuts, excluded, least: leastCents, mostBoards }: CompositionRules,
  most: number,
  budget: { steps: number },
): Composition | undefined {
  const order = searchOrder(model);
  const gains = order.map((_, place) => cuts.map((cut) => mostGain(model, cut, order.slice(place + 1))));
  const boards = model.stocks.map(() => 0);
  const pieces = model.sizes.reduce((sum, { demand }) => sum + demand, 0);
  let best: Composition | undefined;
  let limit = most;
  const walk = (place: number, spent: number, used: number, missing: readonly number[]): void => {
    const stock = order[place];
    if (stock === undefined) {
      // What was rounded on the way is decided in whole numbers.
      if (spent < leastCents || isExcluded(model, excluded, boards)) return;
      if (!cuts.every((cut) => keepsCut(cut, boards))) return;
      best = { boards: [...boards], cents: spent };
      limit = spent - 1;
      return;
    }
    const { cents = 0, available = 0 } = model.stocks[stock] ?? {};
    const highest = Math.min(
      available,
      pieces,
      mostBoards - used,
      cents === 0 ? pieces : Math.floor((limit - spent) / cents),
    );
    // Boards for nothing are best all used, where fewer are not asked for.
    const least = cents === 0 && mostBoards === Number.POSITIVE_INFINITY ? highest : 0;
    let wasPossible = false;
    for (let count = highest; count >= least; count -= 1) {
      budget.steps -= 1;
      if (budget.steps <= 0) return;
      const money = limit - spent - count * cents;
      if (money < 0) continue;
      const still = missing.map((amount, index) => amount - count * (cuts[index]?.perBoard[stock] ?? 0));
      const possible = still.every(
        (amount, index) =>
          amount <= (gains[place]?.[index]?.(money) ?? 0) + safety * Math.abs(cuts[index]?.needed ?? 0),
      );
      // What the money can do falls ever faster on either side of the best number, so the possible ones stand together.
      if (!possible && wasPossible) break;
      wasPossible ||= possible;
      if (possible) {
        boards[stock] = count;
        walk(place + 1, spent + count * cents, used + count, still);
      }
    }
    boards[stock] = 0;
  };
  walk(
    0,
    0,
    0,
    cuts.map(({ needed }) => needed),
  );
  return best;
}

/** Boards to buy first, the dearest of them first; scarce ones behind, the dearest by the foot first. */
function searchOrder(model: CuttingModel): readonly number[] {
  const scarce = (stock: number): boolean => model.stocks[stock]?.available !== Number.POSITIVE_INFINITY;
  const cents = (stock: number): number => model.stocks[stock]?.cents ?? 0;
  const perRoom = (stock: number): number => cents(stock) / (model.stocks[stock]?.room ?? 1);
  return [...model.stocks.keys()].sort((a, b) => {
    if (scarce(a) !== scarce(b)) return scarce(a) ? 1 : -1;
    return scarce(a) ? perRoom(b) - perRoom(a) : cents(b) - cents(a);
  });
}

/** The most that money can add to a cut with some stocks, in fractions of boards: those that do most for a cent first. */
function mostGain(
  model: CuttingModel,
  { perBoard }: CompositionCut,
  stocks: readonly number[],
): (money: number) => number {
  let free = 0;
  const steps: { readonly money: number; readonly share: number }[] = [];
  const paid = stocks
    .map((stock) => ({
      cents: model.stocks[stock]?.cents ?? 0,
      each: perBoard[stock] ?? 0,
      available: model.stocks[stock]?.available ?? 0,
    }))
    .filter(({ each }) => each > 0);
  for (const { cents, each, available } of paid) if (cents === 0) free += each * available;
  const sorted = paid.filter(({ cents }) => cents > 0).sort((a, b) => b.each / b.cents - a.each / a.cents);
  for (const { cents, each, available } of sorted) {
    steps.push({ money: available * cents, share: each / cents });
    if (available === Number.POSITIVE_INFINITY) break;
  }
  return (money) => {
    let left = money;
    let gain = free;
    for (const step of steps) {
      const spent = Math.min(left, step.money);
      gain += spent * step.share;
      left -= spent;
      if (left <= 0) break;
    }
    return gain;
  };
}

function isExcluded(
  model: CuttingModel,
  excluded: CompositionRules['excluded'],
  boards: readonly number[],
): boolean {
  return excluded.some((known) =>
    model.stocks.every(
      ({ available }, stock) =>
        available !== Number.POSITIVE_INFINITY || (boards[stock] ?? 0) <= (known[stock] ?? 0),
    ),
  );
}
