import { Decimal } from 'decimal.js';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import { decimalText, usd, type DecimalText, type Usd } from '../units/money.ts';

/** A line of one estimate beside the same line of another; a side is null where the line is not there. */
export type LineChange = {
  readonly id: string;
  readonly description: string;
  readonly unit: string;
  readonly before: SideOfLine | null;
  readonly after: SideOfLine | null;
  /** After less before. [$] */
  readonly costDifferenceUsd: Usd;
};

type SideOfLine = {
  readonly quantity: DecimalText;
  readonly unitCostUsd: DecimalText;
  readonly costUsd: Usd;
};

/** What changed between two estimates, and what it does to the money where the client's price stays as it was. */
export type EstimateChange = {
  /** Lines that differ, the largest difference of cost first. */
  readonly lines: readonly LineChange[];
  readonly directBeforeUsd: Usd;
  readonly directAfterUsd: Usd;
  readonly totalBeforeUsd: Usd;
  readonly totalAfterUsd: Usd;
  /** (price - direct cost) / price of the first estimate, and of its price over the second's direct cost. [%] */
  readonly marginBeforePercent: DecimalText;
  readonly marginIfPriceStaysPercent: DecimalText;
};

/**
 * Holds two estimates of a job against each other, line by line.
 * @param before - what was quoted.
 * @param after - the job as it stands, or a later quote.
 * @returns lines whose quantity, unit cost or cost differ; margins rounded to a tenth of a percent, half up. Worked: price
 * 1,000 over direct cost 700 is a margin of 30 %; with direct cost 750 and the same price 25 %.
 */
export function compareEstimates(before: Estimate, after: Estimate): EstimateChange {
  const byId = new Map(after.lines.map((line) => [line.id, line]));
  const known = new Set(before.lines.map(({ id }) => id));
  const pairs: readonly (readonly [CostLine | undefined, CostLine | undefined])[] = [
    ...before.lines.map((line) => [line, byId.get(line.id)] as const),
    ...after.lines.filter(({ id }) => !known.has(id)).map((line) => [undefined, line] as const),
  ];
  const lines = pairs
    .flatMap(([old, now]) => changeOf(old, now))
    .toSorted((a, b) =>
      new Decimal(b.costDifferenceUsd).abs().comparedTo(new Decimal(a.costDifferenceUsd).abs()),
    );
  return {
    lines,
    directBeforeUsd: before.directCostUsd,
    directAfterUsd: after.directCostUsd,
    totalBeforeUsd: before.totalUsd,
    totalAfterUsd: after.totalUsd,
    marginBeforePercent: margin(before.priceUsd, before.directCostUsd),
    marginIfPriceStaysPercent: margin(before.priceUsd, after.directCostUsd),
  };
}

function changeOf(old: CostLine | undefined, now: CostLine | undefined): readonly LineChange[] {
  const line = now ?? old;
  if (line === undefined) return [];
  const before = sideOf(old);
  const after = sideOf(now);
  const same =
    before !== null &&
    after !== null &&
    before.quantity === after.quantity &&
    before.unitCostUsd === after.unitCostUsd &&
    before.costUsd === after.costUsd;
  if (same) return [];
  return [
    {
      id: line.id,
      description: line.description,
      unit: line.unit,
      before,
      after,
      costDifferenceUsd: usd(new Decimal(after?.costUsd ?? 0).minus(before?.costUsd ?? 0)),
    },
  ];
}

function sideOf(line: CostLine | undefined): SideOfLine | null {
  if (line === undefined) return null;
  const { quantity, unitCostUsd, costUsd } = line;
  return { quantity, unitCostUsd, costUsd };
}

function margin(priceUsd: Usd, directUsd: Usd): DecimalText {
  const price = new Decimal(priceUsd);
  if (price.isZero()) return decimalText(0);
  return decimalText(price.minus(directUsd).div(price).times(100).toDecimalPlaces(1, Decimal.ROUND_HALF_UP));
}
