import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { programAndBrowser } from './program-in-browser.ts';
import { startProgram } from './running-program.ts';
import { accessFaults, openPage, takePictures } from './watched-page.ts';

const both = programAndBrowser();

async function openData(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Settings' }).click();
  await page
    .getByRole('navigation', { name: 'Parts of the settings' })
    .getByRole('link', { name: 'Data' })
    .click();
  await page.getByRole('table', { name: 'Backups of the shop file' }).waitFor();
}

test('backups are made, restored and undone; all tables and the report are saved; half a folder is answered', async () => {
  const watched = await openPage(both.browser, both.program.address);
  const { page } = watched;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('heading', { name: /Quillfeather/ }).waitFor();
  await page.getByRole('link', { name: 'Jobs' }).click();
  await page.getByRole('link', { name: /Quillfeather/ }).waitFor();
  await openData(page);
  const rows = page.getByRole('table', { name: 'Backups of the shop file' }).getByRole('row');
  // The first start of the day made one, before the sample job was opened.
  await expect.poll(() => rows.count()).toBe(2);
  await page.getByRole('button', { name: 'Back up now' }).click();
  await page.getByText(/is made and checked/).waitFor();
  await expect.poll(() => rows.count()).toBe(3);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'settings-data');

  const [tables] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export all tables' }).click(),
  ]);
  const files = unzipSync(readFileSync(await tables.path()));
  expect(Object.keys(files)).toContain('jobs.csv');
  const [report] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the report' }).click(),
  ]);
  expect(readFileSync(await report.path(), 'utf8')).not.toContain('Quillfeather');

  await page.getByRole('textbox', { name: 'Move it to this folder' }).fill('my folder');
  await page.getByRole('button', { name: 'Move the shop file' }).click();
  await page.getByText(/give the whole path of a folder/).waitFor();

  await page
    .getByRole('row', { name: /^Daily/ })
    .getByRole('button', { name: 'Restore…' })
    .click();
  await page.getByRole('button', { name: 'Restore it' }).click();
  await page.getByRole('heading', { name: 'The backup is restored' }).waitFor();
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Jobs' }).click();
  await page.getByRole('button', { name: 'Open the sample job' }).waitFor();
  watched.mustBeQuiet();
  await watched.close();
});

test('a shop file that was damaged opens on its backups, and one of them mends it', async () => {
  const { folder } = both.program;
  await both.program.kill();
  const path = join(folder, shopFileName);
  // What a killed program left in the log goes into the file first, so that the damage is not written over.
  const database = new BetterSqlite3(path);
  database.pragma('wal_checkpoint(TRUNCATE)');
  database.close();
  const bytes = readFileSync(path);
  bytes.fill(0xa5, 4096, 3 * 4096);
  writeFileSync(path, bytes);
  both.goOnWith(await startProgram(folder));
  const watched = await openPage(both.browser, both.program.address);
  const { page } = watched;
  await page.getByRole('heading', { name: 'The shop file needs a backup' }).waitFor();
  expect(await page.getByRole('alert').innerText()).toContain('damaged');
  await takePictures(page, 'rescue');
  await page
    .getByRole('row', { name: /^By hand/ })
    .getByRole('button', { name: 'Restore…' })
    .click();
  await page.getByRole('button', { name: 'Restore it' }).click();
  await page.getByText(/shop-damaged-/).waitFor();
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('link', { name: /Quillfeather/ }).waitFor();
  await watched.close();
});
