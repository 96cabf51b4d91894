import type { ExpressionBuilder, SelectQueryBuilder } from 'kysely';
import {
  priceItemSchema,
  type PriceItem,
  type PriceList,
  type PriceObservation,
} from '../../core/pricing/price-list.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { itemOf, priceObservationOf, priceRow } from './price-rows.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

/** The whole price list, items in the order they came, each with its prices in the order they were noted. */
export function listPrices(db: ReadableDb): PriceList {
  const prices = new Map<string, PriceObservation[]>();
  for (const row of db.rows(query.selectFrom('prices').selectAll().orderBy('sequence'))) {
    const observation = priceObservationOf(row);
    const ofItem = prices.get(row.item_id);
    if (ofItem === undefined) prices.set(row.item_id, [observation]);
    else ofItem.push(observation);
  }
  return items(db).map((row) => priceItemSchema.parse({ ...itemOf(row), prices: prices.get(row.id) ?? [] }));
}

/**
 * The price list of a day: every item with the one price that holds on it, the newest on or before that day; an item
 * that has later prices alone comes with the first of them, so that it can be told when its prices begin.
 * @param day - a civil day.
 */
export function listPricesOn(db: ReadableDb, day: string): PriceList {
  const held = pricesById(db, (eb) => newestOf(eb).where('observed_on', '<=', day));
  const later = pricesById(db, (eb) =>
    eb
      .selectFrom('prices')
      .select('sequence')
      .whereRef('prices.item_id', '=', 'price_items.id')
      .orderBy('observed_on')
      .orderBy('sequence')
      .limit(1),
  );
  return items(db).map((row) => {
    const price = held.get(row.id) ?? later.get(row.id);
    return priceItemSchema.parse({ ...itemOf(row), prices: price === undefined ? [] : [price] });
  });
}

/** One item with all of its prices; undefined where there is none of that id. */
export function getPriceItem(db: ReadableDb, id: string): PriceItem | undefined {
  const row = db.row(query.selectFrom('price_items').selectAll().where('id', '=', id));
  if (row === undefined) return undefined;
  const prices = db.rows(
    query.selectFrom('prices').selectAll().where('item_id', '=', id).orderBy('sequence'),
  );
  return priceItemSchema.parse({ ...itemOf(row), prices: prices.map(priceObservationOf) });
}

type OneSequence = SelectQueryBuilder<Schema, 'price_items' | 'prices', { sequence: number }>;

function newestOf(eb: ExpressionBuilder<Schema, 'price_items'>): OneSequence {
  return eb
    .selectFrom('prices')
    .select('sequence')
    .whereRef('prices.item_id', '=', 'price_items.id')
    .orderBy('observed_on', 'desc')
    .orderBy('sequence', 'desc')
    .limit(1);
}

/** The one price of each item that a subquery picks; one look into the index an item, however long its history is. */
function pricesById(
  db: ReadableDb,
  pick: (eb: ExpressionBuilder<Schema, 'price_items'>) => OneSequence,
): ReadonlyMap<string, PriceObservation> {
  const rows = db.rows(
    query
      .selectFrom('price_items')
      .innerJoin('prices as chosen', (join) => join.on((eb) => eb('chosen.sequence', '=', pick(eb as never))))
      .select([
        'price_items.id as item_id',
        'chosen.sequence',
        'chosen.price_usd',
        'chosen.observed_on',
        'chosen.source',
        'chosen.valid_until',
      ]),
  );
  return new Map(rows.map((row) => [row.item_id, priceObservationOf(row)]));
}

function items(db: ReadableDb): Schema['price_items'][] {
  return db.rows(query.selectFrom('price_items').selectAll().orderBy('sequence'));
}

/** True where the list has an item of that id. */
export function hasPriceItem(db: ReadableDb, id: string): boolean {
  return db.row(query.selectFrom('price_items').select('id').where('id', '=', id)) !== undefined;
}

/** Adds an item, or changes the one of its id; its prices are left as they are. */
export function putPriceItem(db: WritableDb, item: Omit<PriceItem, 'prices'>): void {
  const row = priceRow(item);
  db.run(
    hasPriceItem(db, item.id)
      ? query.updateTable('price_items').set(row).where('id', '=', item.id)
      : query
          .insertInto('price_items')
          .values({ ...row, id: item.id, sequence: takeNumber(db, 'price-item') }),
  );
}

/**
 * Notes prices of an item, each once: a list that the item's prices of that day already end with changes nothing.
 * Only the latest price of a day counts, so one that comes back after another of the same day is noted again.
 * @returns how many were new.
 */
export function addPrices(db: WritableDb, itemId: string, observations: readonly PriceObservation[]): number {
  let added = 0;
  for (const [day, given] of byDay(observations)) {
    const stored = pricesOfDay(db, itemId, day);
    const tail = stored.slice(-given.length);
    if (tail.length === given.length && tail.every((price, index) => isSame(price, given[index]))) continue;
    let latest = stored.at(-1);
    for (const observation of given) {
      if (isSame(observation, latest)) continue;
      addPrice(db, itemId, observation);
      latest = observation;
      added += 1;
    }
  }
  return added;
}

/** Takes back the latest of an item's prices that say this; answers whether there was one. */
export function removePrice(db: WritableDb, itemId: string, observation: PriceObservation): boolean {
  const row = db
    .rows(
      query
        .selectFrom('prices')
        .selectAll()
        .where('item_id', '=', itemId)
        .where('observed_on', '=', observation.observedOn)
        .orderBy('sequence', 'desc'),
    )
    .find((one) => isSame(priceObservationOf(one), observation));
  return row !== undefined && db.run(query.deleteFrom('prices').where('sequence', '=', row.sequence)) === 1;
}

function byDay(observations: readonly PriceObservation[]): ReadonlyMap<string, PriceObservation[]> {
  const days = new Map<string, PriceObservation[]>();
  for (const observation of observations) {
    const ofDay = days.get(observation.observedOn);
    if (ofDay === undefined) days.set(observation.observedOn, [observation]);
    else ofDay.push(observation);
  }
  return days;
}

function pricesOfDay(db: ReadableDb, itemId: string, day: string): PriceObservation[] {
  return db
    .rows(
      query
        .selectFrom('prices')
        .selectAll()
        .where('item_id', '=', itemId)
        .where('observed_on', '=', day)
        .orderBy('sequence'),
    )
    .map(priceObservationOf);
}

function isSame(a: PriceObservation, b: PriceObservation | undefined): boolean {
  return (
    b !== undefined && a.priceUsd === b.priceUsd && a.source === b.source && a.validUntil === b.validUntil
  );
}

function addPrice(db: WritableDb, itemId: string, observation: PriceObservation): void {
  db.run(
    query.insertInto('prices').values({
      sequence: takeNumber(db, 'price'),
      item_id: itemId,
      price_usd: observation.priceUsd,
      observed_on: observation.observedOn,
      source: observation.source,
      valid_until: observation.validUntil,
    }),
  );
}
