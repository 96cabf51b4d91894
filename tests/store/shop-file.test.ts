import { copyFileSync, existsSync, openSync, readdirSync, readSync, writeFileSync, closeSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { ok, fail } from '../../core/result.ts';
import { storeProblem } from '../../electron/store/classify.ts';
import { openShop, shopFileName, type Store } from '../../electron/store/open-shop.ts';
import { setPragmas } from '../../electron/store/pragmas.ts';
import { putPriceItem, hasPriceItem } from '../../electron/store/prices.ts';
import { priceItemSchema } from '../../core/pricing/price-list.ts';
import { runChild } from './child.ts';
import { hashOf, temporaryFolder } from './temporary-folder.ts';

const holder = fileURLToPath(new URL('hold-shop.ts', import.meta.url));

function opened(folder: string): Store {
  const shop = openShop(folder);
  if (!shop.ok) throw new Error(shop.problem.code);
  return shop.value;
}

function item(id: string) {
  return priceItemSchema.parse({ id, category: 'lumber', description: '2x6 x 12', unit: 'each' });
}

test('a shop file at rest stands alone, and comes back with what was in it', () => {
  const folder = temporaryFolder();
  const shop = opened(folder);
  expect(shop.write((db) => ok(putPriceItem(db, item('a'))))).toEqual(ok(undefined));
  shop.close();
  expect(readdirSync(folder).filter((name) => name !== `${shopFileName}-lock`)).toEqual([shopFileName]);
  const again = opened(folder);
  expect(again.read((db) => hasPriceItem(db, 'a'))).toBe(true);
  again.close();
});

test('an open shop file writes ahead into a log, and a closed one is in one piece again', () => {
  const folder = temporaryFolder();
  const path = join(folder, shopFileName);
  const shop = opened(folder);
  expect(journalByte(path)).toBe(2);
  shop.close();
  expect(journalByte(path)).toBe(1);
});

/** Byte 18 of a SQLite file: 2 = write-ahead log, 1 = rollback journal. Source: sqlite.org/fileformat2.html, 1.3.3. */
function journalByte(path: string): number | undefined {
  const file = openSync(path, 'r');
  const bytes = Buffer.alloc(19);
  readSync(file, bytes, 0, 19, 0);
  closeSync(file);
  return bytes[18];
}

test('saves wait for the disk in the second session too, where the library would not', () => {
  const path = join(temporaryFolder(), 'x.db');
  const asFound: unknown[] = [];
  for (let session = 1; session <= 2; session += 1) {
    const database = new BetterSqlite3(path);
    const read = (name: string): unknown => database.pragma(name, { simple: true });
    asFound.push(read('synchronous'));
    setPragmas(database);
    expect(['synchronous', 'foreign_keys', 'trusted_schema', 'cell_size_check'].map(read)).toEqual([
      2, 1, 0, 1,
    ]);
    expect(read('journal_mode')).toBe('wal');
    database.exec('CREATE TABLE IF NOT EXISTS t (x)');
    database.close();
  }
  // 2 waits for the disk at each save, 1 does not. Source: sqlite.org/pragma.html, synchronous.
  expect(asFound).toEqual([2, 1]);
});

test('a pragma that does not take is noticed', () => {
  const database = new BetterSqlite3(':memory:');
  expect(() => setPragmas(database)).toThrow('journal_mode is memory');
});

test('a refused write leaves nothing behind, and neither does a thrown bug', () => {
  const shop = opened(temporaryFolder());
  const refused = shop.write((db) => {
    putPriceItem(db, item('half'));
    return fail({ code: 'not-found', what: 'job' });
  });
  expect(refused).toEqual(fail({ code: 'not-found', what: 'job' }));
  expect(() =>
    shop.write((db) => {
      putPriceItem(db, item('half'));
      throw new Error('bug');
    }),
  ).toThrow('bug');
  expect(shop.read((db) => hasPriceItem(db, 'half'))).toBe(false);
  shop.close();
});

const newer = (path: string): void => {
  opened(join(path, '..')).close();
  const database = new BetterSqlite3(path);
  database.pragma('user_version = 100000');
  database.close();
};

const refusals: readonly (readonly [string, string, (path: string) => void])[] = [
  ['an empty file', 'shop-file-not-ours', (path) => writeFileSync(path, '')],
  ['a text file', 'shop-file-not-ours', (path) => writeFileSync(path, 'eaves and rafters\n'.repeat(500))],
  [
    'a SQLite file of another program',
    'shop-file-not-ours',
    (path) => {
      const database = new BetterSqlite3(path);
      database.exec('CREATE TABLE t (x)');
      database.close();
    },
  ],
  ['a file of a newer program', 'shop-file-newer', newer],
  [
    'a file that lost its end',
    'shop-file-damaged',
    (path) => {
      opened(join(path, '..')).close();
      const whole = new BetterSqlite3(path, { readonly: true }).serialize();
      writeFileSync(path, whole.subarray(0, 3 * 4096));
    },
  ],
  [
    'a file with a page of noise in it',
    'shop-file-damaged',
    (path) => {
      opened(join(path, '..')).close();
      const whole = new BetterSqlite3(path, { readonly: true }).serialize();
      whole.fill(0xa5, 2 * 4096, 3 * 4096);
      writeFileSync(path, whole);
    },
  ],
];

test.each(refusals)('%s is refused and left as it was', (_name, code, make) => {
  const folder = temporaryFolder();
  const path = join(folder, shopFileName);
  make(path);
  const before = hashOf(path);
  const shop = openShop(folder);
  expect(shop).toEqual(fail({ code }));
  expect(hashOf(path)).toBe(before);
  // The refusal let go of the lock: mending the file needs no restart.
  expect(openShop(folder)).toEqual(fail({ code }));
});

test('a file of a newer program with a log beside it is refused and both are left as they were', () => {
  const folder = temporaryFolder();
  const from = temporaryFolder();
  const path = join(folder, shopFileName);
  opened(from).close();
  const live = new BetterSqlite3(join(from, shopFileName));
  live.pragma('journal_mode = WAL');
  live.pragma('user_version = 100000');
  for (const ending of ['', '-wal']) copyFileSync(join(from, `${shopFileName}${ending}`), `${path}${ending}`);
  live.close();
  const before = [hashOf(path), hashOf(`${path}-wal`)];
  expect(openShop(folder)).toEqual(fail({ code: 'shop-file-newer' }));
  expect([hashOf(path), hashOf(`${path}-wal`)]).toEqual(before);
});

test('a shop file half made when the program died is made again', () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, `${shopFileName}.unfinished`), 'half');
  opened(folder).close();
  expect(existsSync(join(folder, `${shopFileName}.unfinished`))).toBe(false);
});

test('a second program is refused within a second, and may come in once the first is killed', async () => {
  const folder = temporaryFolder();
  const first = runChild([holder, folder]);
  expect(await first.line(() => true)).toBe('open');
  const asked = performance.now();
  expect(openShop(folder)).toEqual(fail({ code: 'shop-file-in-use' }));
  expect(performance.now() - asked).toBeLessThan(1000);
  first.process.kill('SIGKILL');
  await first.exited;
  opened(folder).close();
});

test('a folder that is a file cannot hold a shop file', () => {
  const path = join(temporaryFolder(), 'file');
  writeFileSync(path, '');
  expect(openShop(path)).toEqual(fail({ code: 'shop-file-read-only' }));
});

test('a full disk is told as that, what was saved before stands, and the next save goes on', () => {
  const path = join(temporaryFolder(), 'x.db');
  const database = new BetterSqlite3(path);
  setPragmas(database);
  database.exec('CREATE TABLE t (x TEXT); INSERT INTO t VALUES (zeroblob(100))');
  database.pragma('max_page_count = 4');
  let thrown: unknown;
  try {
    database.prepare('INSERT INTO t VALUES (zeroblob(100000))').run();
  } catch (error) {
    thrown = error;
  }
  expect(storeProblem(thrown)).toEqual({ code: 'disk-full' });
  expect(database.prepare('SELECT count(*) FROM t').pluck().get()).toBe(1);
  database.pragma('max_page_count = 1000');
  database.prepare('INSERT INTO t VALUES (zeroblob(100000))').run();
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
  database.close();
});

test.each([
  ['SQLITE_FULL', 'disk-full'],
  ['ENOSPC', 'disk-full'],
  ['SQLITE_READONLY', 'shop-file-read-only'],
  ['SQLITE_READONLY_DIRECTORY', 'shop-file-read-only'],
  ['EROFS', 'shop-file-read-only'],
  ['SQLITE_NOTADB', 'shop-file-not-ours'],
  ['SQLITE_CORRUPT', 'shop-file-damaged'],
  ['SQLITE_CORRUPT_INDEX', 'shop-file-damaged'],
  ['SQLITE_BUSY', 'shop-file-in-use'],
  ['SQLITE_BUSY_SNAPSHOT', 'shop-file-in-use'],
])('%s is told as %s, by its code and never by its message', (code, problem) => {
  expect(storeProblem(Object.assign(new Error('any words'), { code }))).toEqual({ code: problem });
});

test.each([new Error('database disk image is malformed'), 'SQLITE_FULL', null, { code: 7 }])(
  'what has no code of a known kind is a bug',
  (thrown) => {
    expect(storeProblem(thrown)).toBeUndefined();
  },
);

test('a reading handle cannot write, by its type and when the type is cast away', async () => {
  const { query } = await import('../../electron/store/query.ts');
  const shop = opened(temporaryFolder());
  const insert = query.insertInto('counters').values({ name: 'x', last: 1 });
  expect(() =>
    // @ts-expect-error -- a query that writes is no SelectQuery
    shop.read((db) => db.rows(insert)),
  ).toThrow('given a query that writes');
  shop.close();
});
