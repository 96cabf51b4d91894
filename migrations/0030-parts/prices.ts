/**
 * What an item is besides: species, least pack, a note. How each supplier lays out his list. Index series to hold prices
 * against: one value a month.
 */
export const priceTables = `
  ALTER TABLE price_items ADD COLUMN species TEXT NOT NULL DEFAULT '';
  ALTER TABLE price_items ADD COLUMN minimum_pack INTEGER NOT NULL DEFAULT 1;
  ALTER TABLE price_items ADD COLUMN notes TEXT NOT NULL DEFAULT '';

  CREATE TABLE price_layouts (
    name TEXT PRIMARY KEY NOT NULL,
    used_on TEXT NOT NULL,
    record TEXT NOT NULL
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE index_values (
    series TEXT NOT NULL,
    month TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (series, month)
  ) STRICT, WITHOUT ROWID;
`;
