import type { Phase } from '../eave/phases.ts';
import type { Problem } from '../problems/problem.ts';
import type { TracePart } from '../trace/trace.ts';
import type { RateMark } from './shop-settings.ts';
import type { DecimalText, Usd } from '../units/money.ts';

/** One thing that costs money: bought or worked. */
export type CostLine = {
  readonly id: string;
  /** Takeoff line it serves. */
  readonly takeoffLineId: string;
  readonly kind: 'material' | 'labour' | 'equipment' | 'sub' | 'permit' | 'disposal' | 'allowance';
  readonly phase: Phase;
  readonly description: string;
  readonly clientWording: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly unitCostUsd: DecimalText;
  /** quantity x unit cost, rounded to cents half up. [$] */
  readonly costUsd: Usd;
  /** This line's share of the price before tax charged to the client; shares add up to it. [$] */
  readonly priceUsd: Usd;
  readonly taxable: boolean;
  readonly supplier: string;
  /** Set where the price is older than the shop's limit. */
  readonly stalePriceOf: string | null;
  /** What stands behind the hours of a labour line: the shop's own rate or a placeholder; null on all other lines. */
  readonly rateMark: RateMark | null;
  readonly madeOf: readonly TracePart[];
};

/** A step of the price build-up, printed in this order. Every amount is rounded to cents. */
export type EstimateTotal = {
  readonly key:
    | 'materials'
    | 'labour'
    | 'other'
    | 'materials-tax'
    | 'direct'
    | 'contingency'
    | 'overhead'
    | 'profit'
    | 'rounding'
    | 'price'
    | 'client-tax'
    | 'total';
  readonly label: string;
  readonly amountUsd: Usd;
  readonly madeOf: readonly TracePart[];
};

/** Cost and price of the job. The total is the sum of the rounded lines. */
export type Estimate = {
  readonly asOf: string;
  readonly lines: readonly CostLine[];
  readonly totals: readonly EstimateTotal[];
  readonly directCostUsd: Usd;
  readonly priceUsd: Usd;
  readonly totalUsd: Usd;
  /** Both ways of saying the same profit, over direct cost and contingency and overhead. [%] */
  readonly profitMarkupPercent: DecimalText;
  readonly profitMarginPercent: DecimalText;
  /** (price - direct cost) over price, and over direct cost. [%] */
  readonly grossMarginPercent: DecimalText;
  readonly grossMarkupPercent: DecimalText;
  /** What is not in the sum, by name. While this is not empty, the total is not the price of the job. */
  readonly lacks: readonly Problem[];
  /** What is worth knowing and leaves the sum whole, such as a length that the cut plan goes without. */
  readonly notes: readonly Problem[];
  readonly validUntil: string;
};
