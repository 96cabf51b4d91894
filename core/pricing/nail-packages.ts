import { Decimal } from 'decimal.js';
import type { Usd } from '../units/money.ts';

/** A package of nails on offer: so many pounds, or so many nails, for so much. */
export type NailPackage = {
  readonly itemId: string;
  readonly packageLb: number | null;
  readonly packageCount: number | null;
  readonly priceUsd: Usd;
};

/** So many packages of one item. */
export type PackageChoice = { readonly itemId: string; readonly packages: number };

/** Steps that the exact search may take; a need of more steps is counted in coarser ones, never below the need. */
const mostSteps = 200_000n;

/**
 * Cheapest packages that hold the nails needed; of equally cheap ones the fewest packages, then the first on offer.
 * Found exactly by dynamic programming over the amount still to be covered. A package by the pound counts by weight,
 * one by the count by its nails; both meet in one unit through the need's own nails per pound.
 * @param count - nails needed, loss included. [nails]
 * @param pounds - their weight. [lb]
 * @param offers - packages on offer, each with pounds or count.
 * @returns packages in the order of the offers, e.g. 6 lb from 1 lb at $4 and 5 lb at $15 -> one of each; empty where
 * nothing is needed or nothing is on offer.
 */
export function cheapestPackages(
  count: number,
  pounds: Decimal.Value,
  offers: readonly NailPackage[],
): readonly PackageChoice[] {
  const weight = new Decimal(pounds);
  if (count <= 0 || !weight.isPositive() || weight.isZero()) return [];
  const usable = offers.filter((offer) => offer.packageLb !== null || offer.packageCount !== null);
  if (usable.length === 0) return [];

  // Amounts in nail-pounds, so that both kinds of package compare exactly: lb x count needed, nails x pounds needed.
  const scale = new Decimal(10).pow(
    Math.max(
      weight.decimalPlaces(),
      ...usable.map((offer) => new Decimal(offer.packageLb ?? 0).decimalPlaces()),
    ),
  );
  const whole = (amount: Decimal): bigint => BigInt(amount.times(scale).toFixed(0));
  const holds = usable.map((offer) =>
    offer.packageLb === null
      ? whole(weight.times(offer.packageCount ?? 0))
      : whole(new Decimal(offer.packageLb).times(count)),
  );
  const need = whole(weight.times(count));
  const common = holds.reduce(greatestCommonDivisor);
  const step = roundedUp(need, common) <= mostSteps ? common : roundedUp(need, mostSteps);

  const chosen = cover(
    Number(roundedUp(need, step)),
    holds.map((amount) => Number(amount / step)),
    usable.map((offer) => new Decimal(offer.priceUsd).times(100).toNumber()),
  );
  return usable.flatMap((offer, index) => {
    const packages = chosen[index] ?? 0;
    return packages === 0 ? [] : [{ itemId: offer.itemId, packages }];
  });
}

/** Packages of each kind for the fewest cents, then the fewest packages, whose steps sum to the need or more. */
function cover(need: number, steps: readonly number[], cents: readonly number[]): readonly number[] {
  const costs = new Float64Array(need + 1);
  const packages = new Float64Array(need + 1);
  const last = new Int32Array(need + 1).fill(-1);
  for (let amount = 1; amount <= need; amount += 1) {
    let bestCost = Number.POSITIVE_INFINITY;
    let bestPackages = Number.POSITIVE_INFINITY;
    for (let kind = 0; kind < steps.length; kind += 1) {
      const held = steps[kind] ?? 0;
      if (held <= 0) continue;
      const rest = Math.max(0, amount - held);
      const cost = (costs[rest] ?? 0) + (cents[kind] ?? 0);
      const number = (packages[rest] ?? 0) + 1;
      if (cost < bestCost || (cost === bestCost && number < bestPackages)) {
        bestCost = cost;
        bestPackages = number;
        last[amount] = kind;
      }
    }
    costs[amount] = bestCost;
    packages[amount] = bestPackages;
  }
  const chosen = steps.map(() => 0);
  let rest = need;
  while (rest > 0) {
    const kind = last[rest] ?? -1;
    if (kind < 0) return steps.map(() => 0);
    chosen[kind] = (chosen[kind] ?? 0) + 1;
    rest = Math.max(0, rest - (steps[kind] ?? 0));
  }
  return chosen;
}

function roundedUp(amount: bigint, by: bigint): bigint {
  return (amount + by - 1n) / by;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}
