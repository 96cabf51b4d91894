import { z } from 'zod';
import { priceItemSchema, priceObservationSchema, type PriceItem } from './price-list.ts';

/** An item of the price list without its prices. */
export const priceEntriesSchema = priceItemSchema.omit({ prices: true });
export type PriceEntries = Omit<PriceItem, 'prices'>;
const { shape } = priceEntriesSchema;

/** Some entries of an item, as a cell or a row gives them; what is left out is not spoken of, and has no default. */
export const someEntriesSchema = z.strictObject({
  category: shape.category.exactOptional(),
  description: shape.description.exactOptional(),
  unit: shape.unit.exactOptional(),
  supplier: shape.supplier.unwrap().exactOptional(),
  taxable: shape.taxable.unwrap().exactOptional(),
  retired: shape.retired.unwrap().exactOptional(),
  section: shape.section.unwrap().exactOptional(),
  grade: shape.grade.unwrap().exactOptional(),
  lengthFt: shape.lengthFt.unwrap().exactOptional(),
  nail: shape.nail.unwrap().exactOptional(),
  packageLb: shape.packageLb.unwrap().exactOptional(),
  packageCount: shape.packageCount.unwrap().exactOptional(),
  widthIn: shape.widthIn.unwrap().exactOptional(),
  lengthIn: shape.lengthIn.unwrap().exactOptional(),
  thicknessIn: shape.thicknessIn.unwrap().exactOptional(),
  species: shape.species.unwrap().exactOptional(),
  minimumPack: shape.minimumPack.unwrap().exactOptional(),
  notes: shape.notes.unwrap().exactOptional(),
});
export type SomeEntries = z.infer<typeof someEntriesSchema>;

/** An entry of an item that a cell can give. */
export type EntryName = keyof SomeEntries;
export const entryNames: readonly EntryName[] = someEntriesSchema.keyof().options;

const itemId = z.string().min(1).max(60);

/**
 * One step of a change to the price list. A new price stands beside the earlier ones. Changed entries name what they were:
 * what differs between the two is changed, and only where it still is what it was, so that nothing that came from
 * elsewhere in between is written over.
 */
export const priceChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('add-item'), item: priceEntriesSchema }),
  z.strictObject({ kind: z.literal('entries'), from: priceEntriesSchema, to: priceEntriesSchema }),
  z.strictObject({ kind: z.literal('note-price'), itemId, price: priceObservationSchema }),
  z.strictObject({ kind: z.literal('take-back'), itemId, price: priceObservationSchema }),
]);
export type PriceChange = z.infer<typeof priceChangeSchema>;

/** Most steps of one change from the table: every item with its price and its entries. */
export const mostChanges = 40_000;

/** Most items that a price list may have; a job file takes no more either. */
export const mostItems = 20_000;

/** An item without its prices. */
export function entriesOf(item: PriceItem): PriceEntries {
  const { prices: _prices, ...entries } = item;
  return entries;
}

/** The entries in which two versions of an item differ. */
export function changedEntries(from: PriceEntries, to: PriceEntries): readonly EntryName[] {
  return entryNames.filter((name) => from[name] !== to[name]);
}
