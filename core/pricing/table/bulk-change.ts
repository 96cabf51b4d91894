import { Decimal } from 'decimal.js';
import type { PriceChange } from '../price-changes.ts';
import type { PriceItem } from '../price-list.ts';
import { heldPrice, typedPrice } from './table-cells.ts';

/** To what a changed price is rounded, half up: to the places that it had (two at least), or to a coin. */
export const roundings = ['places', 'cent', 'five-cents', 'quarter', 'dollar'] as const;
export type Rounding = (typeof roundings)[number];

const steps: Readonly<Record<Exclude<Rounding, 'places'>, string>> = {
  cent: '0.01',
  'five-cents': '0.05',
  quarter: '0.25',
  dollar: '1',
};

/** By how much many prices change: `4.5` percent, or `-0.25` dollars. */
export type PriceRule = {
  readonly by: 'percent' | 'amount';
  readonly value: string;
  readonly rounding: Rounding;
};

export type BulkRow = {
  readonly itemId: string;
  readonly description: string;
  readonly unit: string;
  readonly fromUsd: string;
  readonly toUsd: string;
};

/** What a change of many prices does, before it is done. */
export type BulkChange = {
  readonly rows: readonly BulkRow[];
  /** Items that it leaves as they are, and why. */
  readonly left: readonly {
    readonly description: string;
    readonly why: 'no-price' | 'same' | 'below-zero' | 'too-high';
  }[];
  readonly changes: readonly PriceChange[];
};

const mostUsd = 1_000_000;

/**
 * Changes the prices of some items by a percentage or an amount; the new prices are seen today, on a list.
 * @returns rows old -> new, e.g. $10.00 by 4.5 % to the cent -> $10.45.
 */
export function bulkChange(items: readonly PriceItem[], rule: PriceRule, today: string): BulkChange {
  const rows: BulkRow[] = [];
  const left: BulkChange['left'][number][] = [];
  const changes: PriceChange[] = [];
  for (const item of items) {
    const { description } = item;
    const held = heldPrice(item, today);
    if (held === undefined) {
      left.push({ description, why: 'no-price' });
      continue;
    }
    const next = changedPrice(held.priceUsd, rule);
    if (next.isNegative() || next.gt(mostUsd)) {
      left.push({ description, why: next.isNegative() ? 'below-zero' : 'too-high' });
      continue;
    }
    if (next.eq(held.priceUsd)) {
      left.push({ description, why: 'same' });
      continue;
    }
    const toUsd = next.toFixed();
    rows.push({ itemId: item.id, description, unit: item.unit, fromUsd: held.priceUsd, toUsd });
    changes.push(typedPrice(item.id, toUsd, today));
  }
  return { rows, left, changes };
}

/**
 * One price changed by a rule.
 * @returns exact, then rounded half up by the rule, e.g. $0.0725 by 10 % to its own four places -> 0.0798. [$/unit]
 */
export function changedPrice(priceUsd: string, rule: PriceRule): Decimal {
  const price = new Decimal(priceUsd);
  const exact =
    rule.by === 'percent' ? price.times(new Decimal(100).plus(rule.value)).div(100) : price.plus(rule.value);
  if (rule.rounding === 'places')
    return exact.toDecimalPlaces(Math.max(2, price.decimalPlaces()), Decimal.ROUND_HALF_UP);
  const step = steps[rule.rounding];
  return exact.div(step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(step);
}
