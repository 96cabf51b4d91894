import type { Migration } from './migration.ts';

/**
 * The price of a day is looked up by item and day, so that it takes no longer with ten years of prices than with one.
 * Quotes with their revisions and where each stands. What was sent is frozen with its hash.
 */
export const quotesAndPricesByDay: Migration = {
  version: 20,
  name: 'quotes and prices by day',
  update(db) {
    db.exec(`
      CREATE INDEX prices_by_day ON prices (item_id, observed_on, sequence);
      DROP INDEX prices_by_item;

      CREATE TABLE quotes (
        id TEXT PRIMARY KEY NOT NULL,
        job_id TEXT NOT NULL REFERENCES jobs (id),
        number INTEGER NOT NULL,
        revision INTEGER NOT NULL CHECK (revision >= 1),
        state TEXT NOT NULL CHECK (state IN ('draft', 'sent', 'accepted', 'declined')),
        made_on TEXT NOT NULL,
        sent_on TEXT,
        valid_until TEXT NOT NULL,
        decided_on TEXT,
        total_usd TEXT NOT NULL,
        lacks INTEGER NOT NULL,
        note TEXT NOT NULL,
        json TEXT NOT NULL,
        sha256 TEXT NOT NULL,
        UNIQUE (number, revision)
      ) STRICT;
      CREATE INDEX quotes_by_job ON quotes (job_id, number, revision);
    `);
  },
};
