import {
  priceItemSchema,
  type PriceItem,
  type PriceList,
  type PriceObservation,
} from '../../core/pricing/price-list.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

/** The whole price list, items in the order they came, each with its prices in the order they were noted. */
export function listPrices(db: ReadableDb): PriceList {
  const prices = new Map<string, PriceObservation[]>();
  for (const row of db.rows(query.selectFrom('prices').selectAll().orderBy('sequence'))) {
    const observation = {
      priceUsd: row.price_usd,
      observedOn: row.observed_on,
      source: row.source as PriceObservation['source'],
      validUntil: row.valid_until,
    };
    const ofItem = prices.get(row.item_id);
    if (ofItem === undefined) prices.set(row.item_id, [observation]);
    else ofItem.push(observation);
  }
  return db
    .rows(query.selectFrom('price_items').selectAll().orderBy('sequence'))
    .map((row) => priceItemSchema.parse({ ...itemOf(row), prices: prices.get(row.id) ?? [] }));
}

/** True where the list has an item of that id. */
export function hasPriceItem(db: ReadableDb, id: string): boolean {
  return db.row(query.selectFrom('price_items').select('id').where('id', '=', id)) !== undefined;
}

/** Adds an item, or changes the one of its id; its prices are left as they are. */
export function putPriceItem(db: WritableDb, item: Omit<PriceItem, 'prices'>): void {
  const row = rowOf(item);
  db.run(
    hasPriceItem(db, item.id)
      ? query.updateTable('price_items').set(row).where('id', '=', item.id)
      : query
          .insertInto('price_items')
          .values({ ...row, id: item.id, sequence: takeNumber(db, 'price-item') }),
  );
}

/** Notes a price of an item, once: the same price of the same day and source again changes nothing. */
export function addPrice(db: WritableDb, itemId: string, observation: PriceObservation): boolean {
  const values = {
    item_id: itemId,
    price_usd: observation.priceUsd,
    observed_on: observation.observedOn,
    source: observation.source,
    valid_until: observation.validUntil,
  };
  // Only the latest of that day counts, so a price that comes back after another of the same day is noted again.
  const latest = db.row(
    query
      .selectFrom('prices')
      .selectAll()
      .where('item_id', '=', itemId)
      .where('observed_on', '=', observation.observedOn)
      .orderBy('sequence', 'desc')
      .limit(1),
  );
  if (
    latest !== undefined &&
    latest.price_usd === values.price_usd &&
    latest.source === values.source &&
    latest.valid_until === values.valid_until
  ) {
    return false;
  }
  db.run(query.insertInto('prices').values({ ...values, sequence: takeNumber(db, 'price') }));
  return true;
}

function itemOf(row: Schema['price_items']): Record<keyof Omit<PriceItem, 'prices'>, unknown> {
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
  };
}

function rowOf(item: Omit<PriceItem, 'prices'>): Omit<Schema['price_items'], 'id' | 'sequence'> {
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
  };
}
