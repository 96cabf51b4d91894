import { Decimal } from 'decimal.js';
import type { Problem } from '../../problems/problem.ts';
import { ok, type Result } from '../../result.ts';
import { edgePieceIn } from '../../takeoff/drip-edge.ts';
import { sumUsd, usd, type Usd } from '../../units/money.ts';
import type { CostLine, Estimate } from '../estimate-types.ts';
import type { PriceItem } from '../price-list.ts';
import { edgeUsd, footUsd, nailPackageUsd, pieceUsd, sheetUsd, ventUsd } from '../unit-conversion.ts';
import { priceSteps, type PriceStep, stepOn } from './price-steps.ts';
import type { CostStep } from './price-risk.ts';

/** One material of a job as it is planned today: so many of an item of the price list. */
export type BasketLine = {
  readonly lineId: string;
  readonly description: string;
  readonly itemId: string;
  readonly quantity: string;
  readonly unit: string;
  /** What it costs in the estimate. [$] */
  readonly costUsd: Usd;
};

/** The materials of a job: what is bought from the price list, and what has no history, such as deliveries. */
export type MaterialBasket = {
  readonly lines: readonly BasketLine[];
  /** Of what is not on the price list: it counts alike on every day. [$] */
  readonly fixedUsd: Usd;
  readonly fixed: readonly string[];
};

/** What a line would have cost on a day; `null` where its item had no usable price then. */
export type BasketLineOn = BasketLine & {
  readonly thenUsd: Usd | null;
  /** Day of the price that held. */
  readonly priceOf: string | null;
};

/** What a basket would have cost on a day; the total is null while a line has no price. */
export type BasketOn = {
  readonly day: string;
  readonly lines: readonly BasketLineOn[];
  readonly totalUsd: Usd | null;
};

/**
 * Takes the materials out of an estimate. The same boards as planned today: on another day another plan might have been the
 * cheapest, but then it would be no comparison of prices.
 */
export function materialBasket(estimate: Pick<Estimate, 'lines'>): MaterialBasket {
  const materials = estimate.lines.filter(({ kind }) => kind === 'material');
  const lines = materials.flatMap((line): readonly BasketLine[] => {
    const itemId = itemIdOf(line);
    return itemId === undefined
      ? []
      : [
          {
            lineId: line.id,
            description: line.description,
            itemId,
            quantity: line.quantity,
            unit: line.unit,
            costUsd: line.costUsd,
          },
        ];
  });
  const fixed = materials.filter((line) => itemIdOf(line) === undefined);
  return {
    lines,
    fixedUsd: sumUsd(fixed.map(({ costUsd }) => costUsd)),
    fixed: fixed.map(({ description }) => description),
  };
}

/** The price item that a cost line was bought from, as its trace names it; undefined for what is not on the list. */
export function itemIdOf(line: Pick<CostLine, 'madeOf'>): string | undefined {
  return line.madeOf.findLast(({ ref }) => ref?.startsWith('price/') === true)?.ref?.slice('price/'.length);
}

/**
 * What a basket would have cost on a day: quantities as they are, each at the price that held then, rounded to cents half up a
 * line.
 * @param basket - the materials.
 * @param items - their price items with every price.
 * @param day - a civil day.
 * @returns on the day of the estimate, just what its material lines cost.
 */
export function basketOn(basket: MaterialBasket, items: readonly PriceItem[], day: string): BasketOn {
  return reckonOn(basket, pathsOf(basket, items), day);
}

/**
 * How the cost of a basket went: a step on each day on which one of its prices changed, from the first day on which every
 * item had a price.
 * @returns earliest first; none where an item has no usable price at all. [$]
 */
export function basketSteps(basket: MaterialBasket, items: readonly PriceItem[]): readonly CostStep[] {
  const paths = pathsOf(basket, items);
  const days = [...new Set([...paths.values()].flatMap(({ steps }) => steps.map(({ from }) => from)))];
  return days.toSorted().flatMap((day): readonly CostStep[] => {
    const { totalUsd } = reckonOn(basket, paths, day);
    return totalUsd === null ? [] : [{ from: day, costUsd: totalUsd }];
  });
}

type Path = { readonly item: PriceItem; readonly steps: readonly PriceStep[] };

function pathsOf(basket: MaterialBasket, items: readonly PriceItem[]): ReadonlyMap<string, Path> {
  const wanted = new Set(basket.lines.map(({ itemId }) => itemId));
  return new Map(
    items
      .filter(({ id }) => wanted.has(id))
      .map((item) => [item.id, { item, steps: priceSteps(item) }] as const),
  );
}

function reckonOn(basket: MaterialBasket, paths: ReadonlyMap<string, Path>, day: string): BasketOn {
  const lines = basket.lines.map((line): BasketLineOn => {
    const path = paths.get(line.itemId);
    const step = path === undefined ? undefined : stepOn(path.steps, day);
    if (path === undefined || step === undefined) return { ...line, thenUsd: null, priceOf: null };
    const each = unitCost(line, path.item, step.observation.priceUsd);
    return {
      ...line,
      thenUsd: each.ok ? usd(new Decimal(line.quantity).times(each.value)) : null,
      priceOf: step.from,
    };
  });
  const known = lines.flatMap(({ thenUsd }) => thenUsd ?? []);
  return {
    day,
    lines,
    totalUsd: known.length < lines.length ? null : sumUsd([...known, basket.fixedUsd]),
  };
}

/** Dollars for one of a line's unit, by the conversion that the estimate uses for it. [$/unit] */
function unitCost(
  line: Pick<BasketLine, 'unit'>,
  item: PriceItem,
  priceUsd: string,
): Result<Decimal.Value, Problem> {
  const isLumber = item.category === 'lumber' || item.category === 'plank';
  switch (line.unit) {
    case 'sheet':
      return sheetUsd(item, priceUsd);
    case 'package':
      return nailPackageUsd(item, priceUsd);
    case 'piece':
    case 'roll':
      return edgeUsd(item, priceUsd, edgePieceIn(item));
    case 'LF':
      return isLumber ? footUsd(item, priceUsd) : ventUsd(item, priceUsd);
    case 'each':
      return isLumber ? pieceUsd(item, priceUsd) : ventUsd(item, priceUsd);
    default:
      return ok(priceUsd);
  }
}
