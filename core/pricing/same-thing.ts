import type { PriceEntries } from './price-changes.ts';

/**
 * Says of two items whether they are the same thing, which two suppliers may sell: lumber and planks of one section,
 * length, grade and species; nails of one kind and package; else one description. The unit of sale does not matter: a price
 * can be turned from one into another.
 */
export function thingKey(item: PriceEntries): string {
  switch (item.category) {
    case 'lumber':
    case 'plank':
      if (item.section !== '')
        return `${item.category} ${words(item.section)} ${item.lengthFt ?? ''} ${words(item.grade)} ${words(item.species)}`;
      break;
    case 'nails':
      if (item.nail !== '')
        return `nails ${words(item.nail)} ${item.packageLb ?? ''} ${item.packageCount ?? ''}`;
      break;
    case 'sheet':
    case 'edge':
    case 'other':
      break;
    default:
      return item.category satisfies never;
  }
  return `${item.category} ${words(item.description)}`;
}

function words(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}
