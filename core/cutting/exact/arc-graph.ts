import { partsOfCent } from '../column.ts';
import { longestRoom, type CuttingModel } from '../cutting-model.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { cheapestBought } from '../select-stocks.ts';

/** Boards are filled along arcs: so many pieces of one size, from what is in the board before to what is in it then. */
export type Arc =
  | { readonly kind: 'start'; readonly to: number }
  | {
      readonly kind: 'cut';
      readonly from: number;
      readonly to: number;
      readonly size: number;
      readonly count: number;
    }
  | { readonly kind: 'end'; readonly from: number; readonly stock: number };

/** All ways to fill boards that a plan within the slack can use, folded together. */
export type ArcGraph = { readonly nodes: number; readonly arcs: readonly Arc[] };

/** No filling comes here. */
const unreached = Number.NEGATIVE_INFINITY;

/**
 * Folds the ways to fill a board together: a node is a place in the order of the sizes and the room used up to there, and
 * an arc cuts so many pieces of the next size. An arc is kept only where the best filling through it exceeds the board's
 * price and tax by no more than the slack, in whole numbers, as for patterns; where there are too many patterns to list,
 * arcs may still be few.
 * @param model - the problem.
 * @param bound - worths in whole parts of a cent.
 * @param slack - what a plan may count for over the bound before it was rounded. [parts of a cent]
 * @param mostArcs - arcs, at most.
 * @returns undefined where there are too many arcs.
 */
export function arcGraph(
  model: CuttingModel,
  bound: ProvenBound,
  slack: number,
  mostArcs: number,
): ArcGraph | undefined {
  const order = [...model.sizes.keys()].sort(
    (a, b) => (model.sizes[a]?.slant ?? 0) - (model.sizes[b]?.slant ?? 0) || a - b,
  );
  const layers = { model, bound, order, ...roomOf(model) };
  const gains = gainBehind(layers);
  const worths = worthBefore(layers);
  const numbers = new Map<number, number>();
  const arcs: Arc[] = [];
  const node = (place: number, used: number): number => {
    const key = place * (layers.length + 1) + used;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, numbers.size);
    return numbers.size - 1;
  };
  const within = (value: number): boolean => value >= -slack;
  for (const [place, used] of startsOf(layers))
    if (within(gains[place]?.[used] ?? unreached)) arcs.push({ kind: 'start', to: node(place, used) });
  for (let place = 0; place <= order.length; place += 1) {
    for (let used = 0; used <= layers.length; used += 1) {
      const before = worths[place]?.[used] ?? unreached;
      if (before === unreached || !within(before + (gains[place]?.[used] ?? unreached))) continue;
      const from = node(place, used);
      for (const stock of endsOf(layers, place, used))
        if (within(before - priceParts(layers, stock))) arcs.push({ kind: 'end', from, stock });
      const size = order[place];
      if (size === undefined) continue;
      const { span = 1, demand = 0 } = model.sizes[size] ?? {};
      const worth = bound.worth[size] ?? 0;
      for (let count = 0; count <= demand && used + count * span <= layers.length; count += 1) {
        const behind = gains[place + 1]?.[used + count * span] ?? unreached;
        if (!within(before + count * worth + behind)) continue;
        arcs.push({ kind: 'cut', from, to: node(place + 1, used + count * span), size, count });
      }
      if (arcs.length > mostArcs) return undefined;
    }
  }
  return { nodes: numbers.size, arcs };
}

type Layers = {
  readonly model: CuttingModel;
  readonly bound: ProvenBound;
  /** Sizes slant by slant. */
  readonly order: readonly number[];
  /** What the kerf of the least slanted piece gives back at most. */
  readonly highestCredit: number;
  readonly length: number;
};

function roomOf(model: CuttingModel): { readonly highestCredit: number; readonly length: number } {
  const highestCredit = model.slants.at(-1)?.moreKerf ?? 0;
  return { highestCredit, length: longestRoom(model) + highestCredit };
}

/** Where fillings begin: before the sizes of each slant, its kerf given back. */
function startsOf({
  model,
  order,
  highestCredit,
}: Layers): readonly (readonly [place: number, used: number])[] {
  return model.slants.map(({ moreKerf }, slant) => {
    const place = order.findIndex((size) => model.sizes[size]?.slant === slant);
    return [place, highestCredit - moreKerf] as const;
  });
}

/** Stocks that a filling can end in: behind the sizes of a slant, the cheapest to buy that has room, and scarce ones. */
function endsOf({ model, order, highestCredit }: Layers, place: number, used: number): readonly number[] {
  const last = model.sizes[order[place - 1] ?? -1]?.slant;
  if (last === undefined || last === model.sizes[order[place] ?? -1]?.slant) return [];
  const need = used - highestCredit + (model.slants[last]?.over ?? 0);
  if (need <= 0) return [];
  const bought = cheapestBought(model, need);
  return [...model.stocks.keys()].filter(
    (stock) =>
      stock === bought ||
      (model.stocks[stock]?.available !== Number.POSITIVE_INFINITY &&
        (model.stocks[stock]?.room ?? 0) >= need),
  );
}

function priceParts({ model, bound }: Layers, stock: number): number {
  return (model.stocks[stock]?.cents ?? 0) * partsOfCent + (bound.tax[stock] ?? 0);
}

/** Most that what follows is worth, less price and tax of the board that it ends in; by place and room used. */
function gainBehind(layers: Layers): readonly Float64Array[] {
  const { model, bound, order, length } = layers;
  const gains: Float64Array[] = [];
  for (let place = order.length; place >= 0; place -= 1) {
    const behind = gains[0];
    const table = new Float64Array(length + 1).fill(unreached);
    const size = order[place] ?? -1;
    const { span = 1, demand = 0 } = model.sizes[size] ?? {};
    const worth = bound.worth[size] ?? 0;
    for (let used = 0; used <= length; used += 1) {
      let best = endsOf(layers, place, used).reduce(
        (most, stock) => Math.max(most, -priceParts(layers, stock)),
        unreached,
      );
      if (behind !== undefined)
        for (let count = 0; count <= demand && used + count * span <= length; count += 1)
          best = Math.max(best, (behind[used + count * span] ?? unreached) + count * worth);
      table[used] = best;
    }
    gains.unshift(table);
  }
  return gains;
}

/** Most that what is in the board up to there is worth; by place and room used. */
function worthBefore(layers: Layers): readonly Float64Array[] {
  const { model, bound, order, length } = layers;
  const tables = Array.from({ length: order.length + 1 }, () => new Float64Array(length + 1).fill(unreached));
  const reach = (place: number, used: number, value: number): void => {
    const table = tables[place];
    if (table !== undefined && value > (table[used] ?? unreached)) table[used] = value;
  };
  const starts = startsOf(layers);
  for (const [place, size] of order.entries()) {
    for (const [startPlace, used] of starts) if (startPlace === place) reach(place, used, 0);
    const { span = 1, demand = 0 } = model.sizes[size] ?? {};
    const worth = bound.worth[size] ?? 0;
    for (let used = 0; used <= length; used += 1) {
      const value = tables[place]?.[used] ?? unreached;
      if (value === unreached) continue;
      for (let count = 0; count <= demand && used + count * span <= length; count += 1)
        reach(place + 1, used + count * span, value + count * worth);
    }
  }
  return tables;
}
