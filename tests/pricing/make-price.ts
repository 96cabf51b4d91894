import { priceItemSchema, type PriceItem } from '../../core/pricing/price-list.ts';

/** A price item with what matters to a test; the rest by default. */
export function priceItem(entries: {
  readonly id?: string;
  readonly category?: PriceItem['category'];
  readonly unit: PriceItem['unit'];
  readonly [entry: string]: unknown;
}): PriceItem {
  return priceItemSchema.parse({ id: 'item', category: 'lumber', description: 'An item', ...entries });
}
