import { createItemIds } from '../../../core/pricing/new-item-id.ts';
import type { PriceItem, PriceObservation, UnitOfSale } from '../../../core/pricing/price-list.ts';

export type Category = PriceItem['category'];

/** What the kinds of item are called, in the order in which the list offers them. */
export const categoryChoices = [
  { id: 'lumber', label: 'Lumber' },
  { id: 'plank', label: 'Planks' },
  { id: 'sheet', label: 'Sheet goods' },
  { id: 'nails', label: 'Nails' },
  { id: 'edge', label: 'Edge metal' },
  { id: 'other', label: 'Other' },
] as const satisfies readonly { id: Category; label: string }[];

/** What the units of sale are called. */
export const unitChoices = [
  { id: 'each', label: 'each' },
  { id: 'LF', label: 'LF (linear foot)' },
  { id: 'BF', label: 'BF (board foot)' },
  { id: 'MBF', label: 'MBF (thousand board feet)' },
  { id: 'lb', label: 'lb (pound)' },
  { id: 'box', label: 'box' },
  { id: 'sheet', label: 'sheet' },
  { id: 'SF', label: 'SF (square foot)' },
  { id: 'roll', label: 'roll' },
] as const satisfies readonly { id: UnitOfSale; label: string }[];

/** Where a price is known from. */
export const sourceChoices = [
  { id: 'list', label: 'Price list' },
  { id: 'quote', label: 'Quote' },
  { id: 'receipt', label: 'Receipt' },
] as const satisfies readonly { id: PriceObservation['source']; label: string }[];

/** The unit that a new item of a kind is most often sold by. */
export const usualUnit: Readonly<Record<Category, UnitOfSale>> = {
  lumber: 'each',
  plank: 'LF',
  sheet: 'sheet',
  nails: 'lb',
  edge: 'each',
  other: 'each',
};

/** The name of a choice. */
export function labelOf<K extends string>(
  choices: readonly { readonly id: K; readonly label: string }[],
  id: K,
): string {
  return choices.find((choice) => choice.id === id)?.label ?? id;
}

/**
 * Makes the key of a new item from its description, as price files name it.
 * @param description - what the item is called, e.g. `2x6 DF #2, 12 ft`.
 * @param taken - keys in use.
 * @returns e.g. `2x6-df-2-12-ft`, with a number after it where that is taken.
 */
export function newItemId(description: string, taken: ReadonlySet<string>): string {
  return createItemIds(taken)(description);
}

/**
 * Holds an item against what was typed into the search: every word must stand somewhere in it.
 * @param item - the item.
 * @param search - words in any order.
 */
export function isWanted(item: PriceItem, search: string): boolean {
  const text =
    `${item.description} ${item.section} ${item.grade} ${item.species} ${item.supplier} ${item.nail} ${item.notes} ${item.id}`.toLowerCase();
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
