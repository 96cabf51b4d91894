import { Decimal } from 'decimal.js';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { CostLine } from '../pricing/estimate-types.ts';
import { itemIdOf } from '../pricing/history/material-basket.ts';
import { plainWords } from '../pricing/plain-words.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import { type DatedPrice, priceOn } from '../pricing/price-on.ts';
import { decimalText, sumUsd } from '../units/money.ts';
import { supplierName } from './supplier-words.ts';

/** What is bought of one thing, with the item and the price that it was reckoned from; neither of a delivery. */
export type PurchaseLine = {
  readonly line: Pick<CostLine, 'id' | 'description' | 'quantity' | 'unit' | 'unitCostUsd' | 'costUsd'>;
  readonly item: PriceItem | undefined;
  readonly price: DatedPrice | undefined;
};

/** What is asked of one supplier. */
export type SupplierPurchase = { readonly name: string; readonly lines: readonly PurchaseLine[] };

/** All material lines of an estimate, each once: at a supplier, on hand, or entered by hand. */
export type Purchases = {
  readonly suppliers: readonly SupplierPurchase[];
  readonly onHand: readonly PurchaseLine[];
  readonly entered: readonly PurchaseLine[];
};

/**
 * Sorts an estimate's material lines by who they are asked of. In the order of the price list the suppliers; of one, boards by
 * section and length, then sheets, edge and vents, then what gets used up (nails), and the delivery last.
 */
export function purchases(input: JobInput, { estimate, cutPlans }: JobResult): Purchases {
  const items = new Map(input.priceList.map((item) => [item.id, item]));
  const handIds = new Set(
    cutPlans.flatMap((plan) =>
      plan.boards
        .filter(({ onHand }) => onHand)
        .map(({ itemId }) => `lumber-${plan.group.replaceAll(' ', '-')}-${itemId}`),
    ),
  );
  const suppliers = new Map<string, { readonly name: string; readonly lines: PurchaseLine[] }>();
  const onHand: PurchaseLine[] = [];
  const entered: PurchaseLine[] = [];
  for (const line of estimate.lines) {
    if (line.kind !== 'material') continue;
    const item = items.get(itemIdOf(line) ?? '');
    const priced =
      item === undefined ? undefined : priceOn(item, input.asOf, input.settings.money.priceStaleDays);
    const of = { line, item, price: priced?.ok === true ? priced.value : undefined };
    if (handIds.has(line.id)) onHand.push(of);
    else if (item === undefined && line.supplier === '' && !line.id.startsWith('delivery-')) entered.push(of);
    else {
      const key = plainWords(line.supplier);
      const known = suppliers.get(key) ?? { name: headingOf(line.supplier), lines: [] };
      addTo(known.lines, of);
      suppliers.set(key, known);
    }
  }
  const order = [...new Set(input.priceList.map(({ supplier }) => plainWords(supplier)))];
  return {
    suppliers: [...suppliers]
      .toSorted(([a], [b]) => order.indexOf(a) - order.indexOf(b))
      .map(([, { name, lines }]) => ({ name, lines: lines.toSorted(inOrder) })),
    onHand,
    entered,
  };
}

/** The same item for the same price is one thing to ask for, whatever parts of the job it is for; its cost is their sum. */
function addTo(lines: PurchaseLine[], next: PurchaseLine): void {
  const at = lines.findIndex(
    ({ line, item }) =>
      item !== undefined &&
      item === next.item &&
      line.unit === next.line.unit &&
      line.unitCostUsd === next.line.unitCostUsd,
  );
  const same = lines[at];
  if (same === undefined) {
    lines.push(next);
    return;
  }
  lines[at] = {
    ...same,
    line: {
      ...same.line,
      quantity: decimalText(new Decimal(same.line.quantity).plus(next.line.quantity)),
      costUsd: sumUsd([same.line.costUsd, next.line.costUsd]),
    },
  };
}

/** A heading begins with a capital. */
function headingOf(supplier: string): string {
  const name = supplierName(supplier);
  return name.slice(0, 1).toUpperCase() + name.slice(1);
}

const ranks: Readonly<Record<PriceItem['category'], number>> = {
  lumber: 0,
  plank: 1,
  sheet: 2,
  edge: 3,
  other: 4,
  nails: 5,
};

function inOrder(a: PurchaseLine, b: PurchaseLine): number {
  const rank = ({ item }: PurchaseLine): number => (item === undefined ? 6 : ranks[item.category]);
  return (
    rank(a) - rank(b) ||
    (a.item?.section ?? '').localeCompare(b.item?.section ?? '', 'en', { numeric: true }) ||
    (a.item?.grade ?? '').localeCompare(b.item?.grade ?? '', 'en', { numeric: true }) ||
    (a.item?.lengthFt ?? 0) - (b.item?.lengthFt ?? 0)
  );
}
