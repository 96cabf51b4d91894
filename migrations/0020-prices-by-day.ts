import type { Migration } from './migration.ts';

/** The price of a day is looked up by item and day, so that it takes no longer with ten years of prices than with one. */
export const pricesByDay: Migration = {
  version: 20,
  name: 'prices by day',
  update(db) {
    db.exec(`
      CREATE INDEX prices_by_day ON prices (item_id, observed_on, sequence);
      DROP INDEX prices_by_item;
    `);
  },
};
