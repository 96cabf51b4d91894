import { Decimal } from 'decimal.js';
import type { CutPlan } from '../cutting/cut-plan-types.ts';
import { deliveryOf, suppliersUsed } from '../pricing/deliveries.ts';
import { itemsOfStock } from '../pricing/stock-lengths.ts';
import { sumUsd, type Usd } from '../units/money.ts';
import type { LumberSum } from './cutting-choices.ts';
import type { JobInput } from './job-file.ts';

/** A way to buy a job's lumber: at these suppliers. */
export type SupplierWay = { readonly suppliers: readonly string[] };

/** What a way comes to. */
export type SupplierCost = SupplierWay & {
  readonly lumberUsd: Usd;
  readonly deliveryUsd: Usd;
  readonly totalUsd: Usd;
  /** Pieces that these suppliers have no board for; no way to buy the job while there are any. */
  readonly unplanned: number;
};

/** With more suppliers than this, only each alone, each two, and all together are tried: all sets would be too many. */
const mostInAllSets = 5;

/**
 * The suppliers that sell lumber of a job, in the order of the price list. Blank stands for items without a supplier.
 * @param input - the job.
 * @param cutPlans - its plans, which tell what lumber it needs.
 */
export function suppliersOf(
  { priceList }: Pick<JobInput, 'priceList'>,
  cutPlans: readonly Pick<CutPlan, 'stock'>[],
): readonly string[] {
  const items = new Set(cutPlans.flatMap(({ stock }) => itemsOfStock(priceList, stock)));
  return [...new Set(priceList.filter((item) => items.has(item)).map(({ supplier }) => supplier))];
}

/**
 * The ways to buy at some of the suppliers: each alone first, then every two, and so on to all of them. Any purchase at
 * all is one at just some set of suppliers, so the cheapest of all sets is the cheapest purchase, deliveries counted.
 * @returns at most 31 sets of five suppliers; of more, each alone, each two and all.
 */
export function supplierWays(suppliers: readonly string[]): readonly SupplierWay[] {
  if (suppliers.length > mostInAllSets)
    return [
      ...suppliers.map((one) => ({ suppliers: [one] })),
      ...suppliers.flatMap((one, index) =>
        suppliers.slice(index + 1).map((other) => ({ suppliers: [one, other] })),
      ),
      { suppliers: [...suppliers] },
    ];
  return Array.from({ length: 2 ** suppliers.length - 1 }, (_, index) => ({
    suppliers: suppliers.filter((__, at) => ((index + 1) & (1 << at)) !== 0),
  })).toSorted((a, b) => a.suppliers.length - b.suppliers.length);
}

/**
 * What a way costs, the delivery of each supplier that something is bought from counted once.
 * @param input - price list, and settings with what each supplier charges to deliver.
 * @param way - the suppliers that may be bought from.
 * @param sum - the lumber planned with their items alone.
 */
export function supplierCost(
  input: Pick<JobInput, 'priceList' | 'settings'>,
  way: SupplierWay,
  sum: Pick<LumberSum, 'costUsd' | 'unplanned' | 'cutPlans'>,
): SupplierCost {
  const deliveryUsd = sumUsd(suppliersUsed(input, sum.cutPlans).map((name) => deliveryOf(input, name)));
  return {
    suppliers: way.suppliers,
    lumberUsd: sum.costUsd,
    deliveryUsd,
    totalUsd: sumUsd([sum.costUsd, deliveryUsd]),
    unplanned: sum.unplanned,
  };
}

/** The cheapest of the ways that have a board for every piece; of equals, that with fewer suppliers. */
export function cheapestWay(costs: readonly SupplierCost[]): SupplierCost | null {
  return costs
    .filter(({ unplanned }) => unplanned === 0)
    .reduce<SupplierCost | null>(
      (best, cost) =>
        best === null ||
        new Decimal(cost.totalUsd).lt(best.totalUsd) ||
        (cost.totalUsd === best.totalUsd && cost.suppliers.length < best.suppliers.length)
          ? cost
          : best,
      null,
    );
}

/** The ways that are worth showing: each supplier alone, and the cheapest of those that split the purchase. */
export function comparedWays(costs: readonly SupplierCost[]): readonly SupplierCost[] {
  const split = cheapestWay(costs.filter(({ suppliers }) => suppliers.length > 1));
  return [...costs.filter(({ suppliers }) => suppliers.length === 1), ...(split === null ? [] : [split])];
}
