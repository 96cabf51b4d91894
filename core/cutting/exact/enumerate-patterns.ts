import { steepening, type CuttingModel } from '../cutting-model.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { cheapestBought } from '../select-stocks.ts';
import { partsOfCent, type Column } from '../column.ts';

/** Patterns found, and whether they are all there are. */
export type Enumerated = { readonly columns: readonly Column[]; readonly complete: boolean };

/** How patterns are looked for. */
export type EnumerationLimits = {
  /** What a plan may count for over the bound before it was rounded. [parts of a cent] */
  readonly slack: number;
  readonly mostColumns: number;
  /** Steps of the search, at most. */
  readonly mostSteps: number;
  /** `any`: also boards that are not full, or longer than need be. */
  readonly which?: 'any' | 'full';
  readonly stopped: () => boolean;
};

/**
 * Finds every way to cut a board that a plan within the slack can use. A plan counts for the bound plus, board by board,
 * what the board's price and tax exceed the worth of what is in it, so no board of it exceeds the slack alone. Only full
 * boards are listed: a plan may cut more pieces than are asked for, and leave them out afterwards. All in whole numbers.
 * @param model - the problem.
 * @param bound - worths in whole parts of a cent.
 * @param limits - slack, and when to give up.
 */
export function enumeratePatterns(
  model: CuttingModel,
  bound: ProvenBound,
  limits: EnumerationLimits,
): Enumerated {
  const columns: Column[] = [];
  let steps = 0;
  let complete = true;
  // Slant by slant, so that the steepest piece so far is known; of one slant, longest first.
  const order = [...model.sizes.keys()].sort(
    (a, b) => (model.sizes[a]?.slant ?? 0) - (model.sizes[b]?.slant ?? 0) || a - b,
  );
  const spans = order.map((size) => model.sizes[size]?.span ?? 1);
  const slants = order.map((size) => model.sizes[size]?.slant ?? 0);
  const most = order.map((size) => model.sizes[size]?.demand ?? 0);
  const worths = order.map((size) => bound.worth[size] ?? 0);
  const best = worthOfRest(model, spans, most, worths);
  const counts = order.map(() => 0);
  const search = { model, order, spans, slants, most, counts };

  for (const [stock, { room, cents, available }] of model.stocks.entries()) {
    const least = cents * partsOfCent + (bound.tax[stock] ?? 0) - limits.slack;
    const walk = (place: number, rest: number, worth: number, first: number, last: number): void => {
      if (!complete) return;
      steps += 1;
      if (steps > limits.mostSteps || (steps % 4096 === 0 && limits.stopped())) {
        complete = false;
        return;
      }
      if (worth + (best[place]?.[Math.max(0, rest)] ?? 0) < least) return;
      if (place === order.length) {
        if (first === -1) return;
        if (limits.which !== 'any' && !isWorthListing(search, stock, available, rest, first, last)) return;
        if (columns.length >= limits.mostColumns) complete = false;
        else columns.push(columnOf(search, stock, cents));
        return;
      }
      const span = spans[place] ?? 1;
      const slant = slants[place] ?? 0;
      const value = worths[place] ?? 0;
      const begins = first === -1;
      // Room left if a piece of this slant joins: the kerf of the first one comes back, the steeper slant is taken.
      const joined = begins
        ? rest - steepening(model, slant, slant)
        : rest - ((model.slants[slant]?.over ?? 0) - (model.slants[last]?.over ?? 0));
      const fitting = Math.min(most[place] ?? 0, Math.floor(joined / span));
      for (let count = fitting; count >= 1; count -= 1) {
        counts[place] = count;
        walk(place + 1, joined - count * span, worth + count * value, begins ? slant : first, slant);
      }
      counts[place] = 0;
      walk(place + 1, rest, worth, first, last);
    };
    walk(0, room, 0, -1, -1);
    if (!complete) break;
  }
  return { columns, complete };
}

type Search = {
  readonly model: CuttingModel;
  readonly order: readonly number[];
  readonly spans: readonly number[];
  readonly slants: readonly number[];
  readonly most: readonly number[];
  readonly counts: readonly number[];
};

/** Most worth that the sizes from each place on can add to a room, slants not counted. [parts of a cent] */
function worthOfRest(
  model: CuttingModel,
  spans: readonly number[],
  most: readonly number[],
  worths: readonly number[],
): readonly Float64Array[] {
  const credit = model.slants.at(-1)?.moreKerf ?? 0;
  const length = (model.stocks.at(-1)?.room ?? 0) + credit;
  const tables: Float64Array[] = [new Float64Array(length + 1)];
  for (let place = spans.length - 1; place >= 0; place -= 1) {
    const behind = tables[0] ?? new Float64Array(length + 1);
    const table = Float64Array.from(behind);
    const span = spans[place] ?? 1;
    const worth = worths[place] ?? 0;
    const limit = worth === 0 ? 0 : (most[place] ?? 0);
    for (let room = span; room <= length; room += 1) {
      const fitting = Math.min(limit, Math.floor(room / span));
      for (let count = 1; count <= fitting; count += 1) {
        const value = (behind[room - count * span] ?? 0) + count * worth;
        if (value > (table[room] ?? 0)) table[room] = value;
      }
    }
    tables.unshift(table);
  }
  return tables;
}

/** Whether a board is full, and no cheaper one to buy holds as much. */
function isWorthListing(
  { model, spans, slants, most, counts }: Search,
  stock: number,
  available: number,
  rest: number,
  first: number,
  last: number,
): boolean {
  const need = (model.stocks[stock]?.room ?? 0) - rest;
  const cheapest = cheapestBought(model, need);
  if (cheapest !== -1 && cheapest !== stock) {
    const cheaper = model.stocks[cheapest]?.cents ?? 0;
    const price = model.stocks[stock]?.cents ?? 0;
    if (available === Number.POSITIVE_INFINITY || cheaper <= price) return false;
  }
  const now = steepening(model, first, last);
  for (const [place, span] of spans.entries()) {
    if ((counts[place] ?? 0) >= (most[place] ?? 0) || span > rest) continue;
    const slant = slants[place] ?? 0;
    const then = steepening(model, Math.min(first, slant), Math.max(last, slant));
    if (span + then - now <= rest) return false;
  }
  return true;
}

function columnOf({ order, counts }: Search, stock: number, cents: number): Column {
  const cut = [...order.keys()]
    .filter((place) => (counts[place] ?? 0) > 0)
    .map((place) => ({ size: order[place] ?? 0, count: counts[place] ?? 0 }))
    .sort((a, b) => a.size - b.size);
  return {
    stock,
    cents,
    sizes: cut.map(({ size }) => size),
    counts: cut.map(({ count }) => count),
  };
}
