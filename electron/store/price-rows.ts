import { priceEntriesSchema, type PriceEntries } from '../../core/pricing/price-changes.ts';
import type { PriceObservation } from '../../core/pricing/price-list.ts';
import type { Schema } from './schema.ts';

/** An item as it is stored, read. */
export function priceEntriesOf(row: Schema['price_items']): PriceEntries {
  return priceEntriesSchema.parse(itemOf(row));
}

/** A price as it is stored, read. */
export function priceObservationOf(row: Schema['prices']): PriceObservation {
  return {
    priceUsd: row.price_usd,
    observedOn: row.observed_on,
    source: row.source as PriceObservation['source'],
    validUntil: row.valid_until,
  };
}

/** An item as it is stored, not checked yet. */
export function itemOf(row: Schema['price_items']): Record<keyof PriceEntries, unknown> {
  return {
    id: row.id,
    category: row.category,
    description: row.description,
    unit: row.unit,
    supplier: row.supplier,
    taxable: row.taxable === 1,
    retired: row.retired === 1,
    section: row.section,
    grade: row.grade,
    lengthFt: row.length_ft,
    nail: row.nail,
    packageLb: row.package_lb,
    packageCount: row.package_count,
    widthIn: row.width_in,
    lengthIn: row.length_in,
    thicknessIn: row.thickness_in,
    species: row.species,
    minimumPack: row.minimum_pack,
    notes: row.notes,
  };
}

/** An item as it is stored. */
export function priceRow(item: PriceEntries): Omit<Schema['price_items'], 'id' | 'sequence'> {
  return {
    category: item.category,
    description: item.description,
    unit: item.unit,
    supplier: item.supplier,
    taxable: item.taxable ? 1 : 0,
    retired: item.retired ? 1 : 0,
    section: item.section,
    grade: item.grade,
    length_ft: item.lengthFt,
    nail: item.nail,
    package_lb: item.packageLb,
    package_count: item.packageCount,
    width_in: item.widthIn,
    length_in: item.lengthIn,
    thickness_in: item.thicknessIn,
    species: item.species,
    minimum_pack: item.minimumPack,
    notes: item.notes,
  };
}
