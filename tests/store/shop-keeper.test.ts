import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { priceItemSchema } from '../../core/pricing/price-list.ts';
import { fail, ok } from '../../core/result.ts';
import { listBackups } from '../../electron/store/backup-files.ts';
import { followSign } from '../../electron/store/moved-folder.ts';
import { openShop, shopFileName } from '../../electron/store/open-shop.ts';
import { hasPriceItem, putPriceItem } from '../../electron/store/prices.ts';
import { keepShop, ShopClosed, type ShopKeeper } from '../../electron/store/shop-keeper.ts';
import { hashOf, temporaryFolder } from './temporary-folder.ts';

const day = '2026-04-30';

function kept(folder: string): ShopKeeper {
  const keeper = keepShop(folder);
  if (!keeper.ok) throw new Error(keeper.problem.code);
  return keeper.value;
}

function put(keeper: ShopKeeper, id: string): void {
  const item = priceItemSchema.parse({ id, category: 'lumber', description: '2x6 x 12', unit: 'each' });
  expect(keeper.store.write((db) => ok(putPriceItem(db, item)))).toEqual(ok(undefined));
}

function has(keeper: ShopKeeper, id: string): boolean {
  return keeper.store.read((db) => hasPriceItem(db, id));
}

/** A folder whose shop file was backed up and then damaged in the middle. */
async function damaged(): Promise<string> {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'before');
  await keeper.backUpDaily(day);
  put(keeper, 'after');
  keeper.close();
  const path = join(folder, shopFileName);
  const bytes = readFileSync(path);
  bytes.fill(0xa5, 2 * 4096, 3 * 4096);
  writeFileSync(path, bytes);
  return folder;
}

test('a day has one daily backup, checked and whole, and a file of its own', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'a');
  await keeper.backUpDaily(day);
  await keeper.backUpDaily(day);
  put(keeper, 'b');
  expect(keeper.backups()).toMatchObject([{ kind: 'daily', day, fileName: `daily-${day}.eavewright` }]);
  const copy = new BetterSqlite3(join(folder, 'backups', `daily-${day}.eavewright`), { readonly: true });
  expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(copy.prepare('SELECT id FROM price_items').pluck().all()).toEqual(['a']);
  copy.close();
  expect(keeper.backupProblem()).toBeUndefined();
  expect(readdirSync(join(folder, 'backups'))).toEqual([`daily-${day}.eavewright`]);
  keeper.close();
});

test('what is saved while a backup is being made is saved, and the copy is whole', async () => {
  const keeper = kept(temporaryFolder());
  const making = keeper.backUp('by-hand', day);
  for (let number = 0; number < 50; number += 1) put(keeper, `while-${number}`);
  expect(await making).toEqual(ok(`by-hand-${day}.eavewright`));
  expect(has(keeper, 'while-49')).toBe(true);
  expect(await keeper.backUp('by-hand', day)).toEqual(ok(`by-hand-${day}-2.eavewright`));
  keeper.close();
});

test('daily backups that the rotation does not keep are removed; those by hand stay', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  await keeper.backUp('by-hand', '2020-01-01');
  for (let number = 1; number <= 20; number += 1)
    await keeper.backUpDaily(`2026-04-${String(number).padStart(2, '0')}`);
  const days = listBackups(folder).map((one) => `${one.kind} ${one.day}`);
  expect(days).toEqual([
    ...[20, 19, 18, 17, 16, 15, 14].map((number) => `daily 2026-04-${number}`),
    // Sundays end the weeks before.
    'daily 2026-04-12',
    'daily 2026-04-05',
    'by-hand 2020-01-01',
  ]);
  keeper.close();
});

test('a restored backup brings back what was, and keeps what it replaced', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'old');
  await keeper.backUpDaily(day);
  put(keeper, 'new');
  const restored = await keeper.restore(`daily-${day}.eavewright`, day);
  expect(restored).toEqual(ok(join('backups', `before-restore-${day}.eavewright`)));
  expect([has(keeper, 'old'), has(keeper, 'new')]).toEqual([true, false]);
  put(keeper, 'goes-on');
  // And the restoring itself can be taken back.
  await keeper.restore(`before-restore-${day}.eavewright`, day);
  expect([has(keeper, 'new'), has(keeper, 'goes-on')]).toEqual([true, false]);
  keeper.close();
});

test('a damaged shop file answers with that, is mended by a backup, and is kept aside byte for byte', async () => {
  const folder = await damaged();
  const before = hashOf(join(folder, shopFileName));
  const keeper = kept(folder);
  expect(keeper.problem()).toEqual({ code: 'shop-file-damaged' });
  expect(() => has(keeper, 'before')).toThrow(ShopClosed);
  expect(await keeper.backUp('by-hand', day)).toEqual(fail({ code: 'shop-file-damaged' }));
  expect(await keeper.restore(`daily-${day}.eavewright`, day)).toEqual(ok(`shop-damaged-${day}.eavewright`));
  expect(keeper.problem()).toBeUndefined();
  expect([has(keeper, 'before'), has(keeper, 'after')]).toEqual([true, false]);
  expect(hashOf(join(folder, `shop-damaged-${day}.eavewright`))).toBe(before);
  keeper.close();
});

test('a damaged shop file without a backup is refused, for there is nothing to offer', () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, shopFileName), 'rafters\n'.repeat(200));
  expect(keepShop(folder)).toEqual(fail({ code: 'shop-file-not-ours' }));
});

test('a backup that is damaged itself is refused, and the shop file stands as it was', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'a');
  await keeper.backUpDaily(day);
  const path = join(folder, 'backups', `daily-${day}.eavewright`);
  const bytes = readFileSync(path);
  bytes.fill(0xa5, 4096, 2 * 4096);
  writeFileSync(path, bytes);
  expect(await keeper.restore(`daily-${day}.eavewright`, day)).toEqual(fail({ code: 'shop-file-damaged' }));
  expect(has(keeper, 'a')).toBe(true);
  keeper.close();
});

test.each([
  '../shop.eavewright',
  '/etc/passwd',
  'daily-1999-01-01.eavewright',
  '',
  '..\\x',
  'daily-\0.eavewright',
])('only a backup of the list is restored, not "%s"', async (fileName) => {
  const keeper = kept(temporaryFolder());
  await keeper.backUpDaily(day);
  expect(await keeper.restore(fileName, day)).toEqual(fail({ code: 'not-found', what: 'backup' }));
  keeper.close();
});

test('a moved shop file is found in its new folder, and a copy is left under another name', async () => {
  const folder = temporaryFolder();
  const target = join(temporaryFolder(), 'on the', 'other disk');
  const keeper = kept(folder);
  put(keeper, 'a');
  expect(await keeper.moveTo(target)).toEqual(ok(target));
  put(keeper, 'b');
  expect([has(keeper, 'a'), keeper.folder()]).toEqual([true, target]);
  keeper.close();
  expect(followSign(folder)).toBe(target);
  expect(existsSync(join(folder, shopFileName))).toBe(false);
  expect(existsSync(join(folder, 'shop-before-moving.eavewright'))).toBe(true);
  const again = kept(followSign(folder));
  expect([has(again, 'a'), has(again, 'b')]).toEqual([true, true]);
  again.close();
});

test('photos and PDFs of receipts go along when the shop file is moved', async () => {
  const folder = temporaryFolder();
  const target = join(temporaryFolder(), 'elsewhere');
  mkdirSync(join(folder, 'attachments'));
  writeFileSync(join(folder, 'attachments', 'receipt.png'), 'bytes');
  const keeper = kept(folder);
  expect(await keeper.moveTo(target)).toEqual(ok(target));
  keeper.close();
  expect(readFileSync(join(target, 'attachments', 'receipt.png'), 'utf8')).toBe('bytes');
});

test('a shop file is not moved over another, nor to where it is, nor to half a path', async () => {
  const taken = temporaryFolder();
  const other = openShop(taken);
  expect(other.ok && other.value.close()).toBe(undefined);
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'a');
  for (const wanted of [taken, folder, 'shop', '../up', `${folder}/x\0y`])
    expect(await keeper.moveTo(wanted)).toMatchObject({ ok: false, problem: { field: 'folder' } });
  expect(has(keeper, 'a')).toBe(true);
  keeper.close();
});

test('a folder that cannot be written leaves the shop file open where it was', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  put(keeper, 'a');
  const file = join(temporaryFolder(), 'file');
  writeFileSync(file, '');
  expect(await keeper.moveTo(join(file, 'below'))).toEqual(fail({ code: 'shop-file-read-only' }));
  expect(has(keeper, 'a')).toBe(true);
  expect(followSign(folder)).toBe(folder);
  keeper.close();
});

test('a backup that cannot be made is told, and the program goes on', async () => {
  const folder = temporaryFolder();
  const keeper = kept(folder);
  writeFileSync(join(folder, 'backups'), 'a file where the folder should be');
  await keeper.backUpDaily(day);
  expect(keeper.backupProblem()).toEqual({ code: 'shop-file-read-only' });
  put(keeper, 'a');
  expect(has(keeper, 'a')).toBe(true);
  keeper.close();
});

test('a sign that names no whole path is not followed', () => {
  const folder = temporaryFolder();
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'moved-to.txt'), 'somewhere');
  expect(followSign(folder)).toBe(folder);
});
