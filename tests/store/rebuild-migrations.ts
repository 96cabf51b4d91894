import type { Migration } from '../../migrations/migration.ts';

/** A parent and its children, which go when it goes. */
export const twoTables: Migration = {
  version: 10,
  name: 'two tables',
  update: (db) =>
    db.exec(`
      CREATE TABLE parent (id INTEGER PRIMARY KEY, name TEXT NOT NULL);
      CREATE TABLE child (id INTEGER PRIMARY KEY, parent_id INTEGER NOT NULL REFERENCES parent (id) ON DELETE CASCADE);
    `),
};

/** The usual rebuild of a table: make the new one, copy, drop the old one, rename. */
export const rebuildParents: Migration = {
  version: 20,
  name: 'rebuild parents',
  update: (db) =>
    db.exec(`
      CREATE TABLE parent_new (id INTEGER PRIMARY KEY, name TEXT NOT NULL, note TEXT NOT NULL DEFAULT '');
      INSERT INTO parent_new (id, name) SELECT id, name FROM parent;
      DROP TABLE parent;
      ALTER TABLE parent_new RENAME TO parent;
    `),
};
