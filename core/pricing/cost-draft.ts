import { Decimal } from 'decimal.js';
import type { Problem } from '../problems/problem.ts';
import type { TakeoffLine } from '../takeoff/takeoff-types.ts';
import type { TracePart } from '../trace/trace.ts';
import { decimalText, formatUsd, usd } from '../units/money.ts';
import type { CostLine } from './estimate-types.ts';
import type { PriceItem, PriceObservation, UnitOfSale } from './price-list.ts';
import type { DatedPrice } from './price-on.ts';
import { inWholePacks } from './whole-packs.ts';

/** A cost line before its share of the price is known. */
export type CostDraft = {
  readonly line: Omit<CostLine, 'priceUsd'>;
  /** The price it was bought at; null for what is not on the price list. */
  readonly price: PriceObservation | null;
};

/** Lines made from some of the takeoff, and what of it could not be priced. */
export type Costed = { readonly drafts: readonly CostDraft[]; readonly lacks: readonly Problem[] };

/** Nothing priced, nothing lacking. */
export const nothingCosted: Costed = { drafts: [], lacks: [] };

/** What a material line says about the item that it buys. */
export type Bought = {
  readonly id: string;
  readonly line: TakeoffLine;
  readonly item: PriceItem;
  readonly price: DatedPrice;
  readonly description: string;
  readonly quantity: Decimal.Value;
  readonly unit: string;
  /** Dollars for one of the unit. [$/unit] */
  readonly unitCostUsd: Decimal.Value;
  readonly parts: readonly TracePart[];
};

/**
 * A cost line for something bought: quantity x unit cost, rounded to cents half up. What is sold in packs is bought in
 * whole ones. It is taxable where both the takeoff line and the price item are.
 */
export function boughtDraft(bought: Bought): CostDraft {
  const { item, line, price } = bought;
  const quantity = inWholePacks(bought.quantity, item.minimumPack);
  const draft = {
    id: bought.id,
    takeoffLineId: line.id,
    kind: 'material',
    phase: line.phase,
    description: bought.description,
    clientWording: line.clientWording,
    quantity: decimalText(quantity),
    unit: bought.unit,
    unitCostUsd: decimalText(bought.unitCostUsd),
    costUsd: usd(quantity.times(bought.unitCostUsd)),
    taxable: line.taxable && item.taxable,
    supplier: item.supplier,
    stalePriceOf: price.stale ? price.observation.observedOn : null,
    rateMark: null,
    madeOf: [...bought.parts, ...packTrace(bought), priceTrace(item, price)],
  } satisfies CostDraft['line'];
  return { line: draft, price: price.observation };
}

/** The step from what is needed to the whole packs that hold it; none where units are sold singly. */
function packTrace({ item, quantity, unit }: Bought): readonly TracePart[] {
  if (item.minimumPack === 1) return [];
  return [
    {
      label: `Sold in packs of ${item.minimumPack}`,
      value: `${decimalText(quantity)} ${unit} needed, ${decimalText(inWholePacks(quantity, item.minimumPack))} bought`,
      ref: `price/${item.id}`,
    },
  ];
}

/** The step from a line to the price that it uses. */
export function priceTrace(item: PriceItem, price: DatedPrice): TracePart {
  return {
    label: `Price of ${item.description} on ${price.observation.observedOn}`,
    value: `${formatRate(price.observation.priceUsd)} ${perUnit(item.unit)}`,
    ref: `price/${item.id}`,
  };
}

/** The step from a cost line to the takeoff line it serves. */
export function lineTrace(line: TakeoffLine): TracePart {
  return {
    label: line.description,
    value: `${line.quantity} ${line.unit}`,
    ref: `line/${line.id}`,
  };
}

/** Writes a unit price with all its decimals, at least cents: `$0.855`, `$12.50`. */
export function formatRate(amount: string): string {
  const value = new Decimal(amount);
  return value.decimalPlaces() <= 2 ? formatUsd(usd(value)) : `$${value.toFixed()}`;
}

/** Says what a unit of sale is a price for: `each`, `a foot`. */
export function perUnit(unit: UnitOfSale): string {
  return unitWords[unit];
}

const unitWords: Readonly<Record<UnitOfSale, string>> = {
  each: 'each',
  LF: 'a foot',
  BF: 'a board foot',
  MBF: 'a thousand board feet',
  lb: 'a pound',
  box: 'a box',
  sheet: 'a sheet',
  SF: 'a square foot',
  roll: 'a roll',
};
