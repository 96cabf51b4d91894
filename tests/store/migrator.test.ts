import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { migrate, newestVersion } from '../../electron/store/migrator.ts';
import { openShop, shopFileName } from '../../electron/store/open-shop.ts';
import { migrations } from '../../migrations/migrations.ts';
import { runChild } from './child.ts';
import { rebuildParents, twoTables } from './rebuild-migrations.ts';
import { temporaryFolder } from './temporary-folder.ts';

const noBackup = (): void => undefined;

test('rebuilding a table keeps the rows that hang on it', () => {
  const database = new BetterSqlite3(':memory:');
  migrate(database, [twoTables], noBackup);
  database.exec("INSERT INTO parent VALUES (1, 'a'); INSERT INTO child VALUES (1, 1), (2, 1)");
  let backedUpFrom = 0;
  migrate(database, [twoTables, rebuildParents], (from) => {
    backedUpFrom = from;
  });
  expect(database.prepare('SELECT count(*) FROM child').pluck().get()).toBe(2);
  expect(database.prepare('SELECT id, name, note FROM parent').all()).toEqual([
    { id: 1, name: 'a', note: '' },
  ]);
  expect(backedUpFrom).toBe(10);
  expect(database.pragma('foreign_keys', { simple: true })).toBe(1);
});

test('the same rebuild with foreign keys on would have deleted them, which is why they go off first', () => {
  const database = new BetterSqlite3(':memory:');
  migrate(database, [twoTables], noBackup);
  database.exec("INSERT INTO parent VALUES (1, 'a'); INSERT INTO child VALUES (1, 1), (2, 1)");
  database.transaction(() => rebuildParents.update({ exec: (sql) => void database.exec(sql) }))();
  expect(database.prepare('SELECT count(*) FROM child').pluck().get()).toBe(0);
});

test('a migration that would leave rows without their parent changes nothing', () => {
  const database = new BetterSqlite3(':memory:');
  migrate(database, [twoTables], noBackup);
  database.exec("INSERT INTO parent VALUES (1, 'a'); INSERT INTO child VALUES (1, 1)");
  const careless = {
    version: 20,
    name: 'careless',
    update: (db: { exec(sql: string): void }) => db.exec('DELETE FROM parent'),
  };
  expect(() => migrate(database, [twoTables, careless], noBackup)).toThrow('without their parent');
  expect(database.prepare('SELECT count(*) FROM parent').pluck().get()).toBe(1);
  expect(database.pragma('user_version', { simple: true })).toBe(10);
});

test('migrations out of order are a bug that shows at once', () => {
  const database = new BetterSqlite3(':memory:');
  expect(() => migrate(database, [rebuildParents, twoTables], noBackup)).toThrow('out of order');
  expect(() => migrate(database, [{ ...twoTables, version: 15 }], noBackup)).toThrow('out of order');
});

test('before an update of the file there is a copy of it that checks', () => {
  const folder = temporaryFolder();
  const first = openShop(folder, [twoTables]);
  expect(first.ok && first.value.close()).toBe(undefined);
  const second = openShop(folder, [twoTables, rebuildParents]);
  expect(second.ok && second.value.close()).toBe(undefined);
  expect(readdirSync(join(folder, 'backups'))).toEqual(['before-update-from-10.eavewright']);
  const copy = new BetterSqlite3(join(folder, 'backups', 'before-update-from-10.eavewright'));
  expect(copy.pragma('user_version', { simple: true })).toBe(10);
  expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
  copy.close();
});

test('killed in the middle of an update, the file is wholly the old or wholly the new', async () => {
  const seen: number[] = [];
  for (const afterMs of [0, 2, 5, 9, 14, 20]) {
    const folder = temporaryFolder();
    const path = join(folder, 'x.db');
    const database = new BetterSqlite3(path);
    migrate(database, [twoTables], noBackup);
    database.exec(`
      WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 20000)
      INSERT INTO parent SELECT i, 'p' || i FROM n;
      INSERT INTO child SELECT id, id FROM parent;
    `);
    database.close();
    const child = runChild([fileURLToPath(new URL('run-migration.ts', import.meta.url)), path]);
    await child.line((line) => line === 'begin');
    await new Promise((resolve) => setTimeout(resolve, afterMs));
    child.process.kill('SIGKILL');
    await child.exited;
    const after = new BetterSqlite3(path);
    const version = Number(after.pragma('user_version', { simple: true }));
    const columns = after.prepare("SELECT name FROM pragma_table_info('parent')").pluck().all();
    expect(columns).toEqual(version === 20 ? ['id', 'name', 'note'] : ['id', 'name']);
    expect(after.prepare('SELECT count(*) FROM child').pluck().get()).toBe(20000);
    expect(after.pragma('integrity_check', { simple: true })).toBe('ok');
    after.close();
    seen.push(version);
  }
  expect(seen.every((version) => [10, 20, 30].includes(version))).toBe(true);
});

test('the shop file has the tables that schema.sql shows, and every amount of money is text', async () => {
  const folder = temporaryFolder();
  const shop = openShop(folder);
  expect(shop.ok && shop.value.close()).toBe(undefined);
  const database = new BetterSqlite3(join(folder, shopFileName), { readonly: true });
  const statements = database
    .prepare('SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type DESC, name')
    .pluck()
    .all() as string[];
  const text = `-- The shop file's tables. Written again by: vitest run tests/store -u\n-- version ${newestVersion(migrations)}\n\n${statements.map((sql) => `${sql.replace(/\n {6}/g, '\n')};`).join('\n\n')}\n`;
  await expect(text).toMatchFileSnapshot('schema.sql');
  const money = database
    .prepare(
      "SELECT m.name || '.' || c.name || ' ' || c.type FROM sqlite_schema m, pragma_table_info(m.name) c WHERE c.name LIKE '%usd%'",
    )
    .pluck()
    .all();
  expect(money).toContain('invoices.total_usd TEXT');
  expect(money.filter((column) => !String(column).endsWith(' TEXT'))).toEqual([]);
  database.close();
});
