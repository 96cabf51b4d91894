import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import readXlsxFile from 'read-excel-file/node';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.waitForURL(/#\/jobs\/./);
  await page.getByRole('link', { name: 'Price list' }).click();
  await page.getByRole('grid').getByRole('row').nth(3).waitFor();
});
afterEach(() => watched.mustBeQuiet());

const what = () => page.getByRole('region', { name: 'What comes in' });
const cellOf = (id: string, column: string) => page.locator(`[data-row="${id}"] .price-cell-${column}`);

async function choose(name: string, bytes: Buffer): Promise<void> {
  await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'text/csv', buffer: bytes });
}

async function pick(label: string, option: string): Promise<void> {
  await page.getByRole('button', { name: label }).click();
  await page.getByRole('option', { name: option, exact: true }).click();
}

/** As a yard across the sea might send it: semicolons, decimal commas, days first, Western letters, a line above. */
const yard = Buffer.from(
  [
    'Fernhollow Lumber;;;;;',
    'Size;Ft;Text;Per;Netto;Stand',
    '2x6;8;2x6 8 ft;EA;7,25;30.11.2025',
    '2x8;12;2x8 12 ft;EA;14,40;30.11.2025',
    ';;Eaves fußbrett;EA;3,10;01.02.2026',
  ].join('\r\n'),
  'latin1',
);

describe('a supplier’s file', () => {
  test('is read by what is known of it, and the rest is asked for beside its first rows', async () => {
    await choose('winter.csv', yard);
    await page.waitForURL(/#\/prices-import/);
    await page.getByText('Eaves fußbrett').first().waitFor();
    expect(await page.getByRole('button', { name: 'Size is read as' }).textContent()).toContain('Section');
    await pick('Ft is read as', 'Stock length');
    await pick('Text is read as', 'Description');
    await pick('Netto is read as', 'Price');
    await pick('Stand is read as', 'Day of the price');
    // The first cells of a column tell how prices and days are written.
    expect(await page.getByRole('button', { name: 'Decimal sign' }).textContent()).toContain('comma');
    expect(await page.getByRole('button', { name: 'Days' }).textContent()).toContain('day first');
    await pick('Days', 'month first: 4/30/2026');
    await what().getByText('cells cannot be read', { exact: false }).waitFor({ state: 'detached' });
    await page.getByText('What cannot be read').waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-import-faults');
  });

  test('says row and column of what it cannot read, and cannot come in until that is mended', async () => {
    const faults = page.getByRole('table', { name: 'Cells that cannot be read' });
    expect(await faults.getByRole('row').nth(1).textContent()).toContain('Day of the price');
    expect(await page.getByRole('button', { name: 'Take it in' }).isDisabled()).toBe(true);
    await pick('Days', 'day first: 30/4/2026');
    await page.getByRole('textbox', { name: 'Supplier', exact: true }).fill('Fernhollow Lumber');
    await page.getByRole('textbox', { name: 'Kind' }).fill('other');
    // Two boards are of a kind of their own on the list; as "other" they would be new.
    await page.getByText('3 new items', { exact: false }).waitFor();
    await page.getByRole('textbox', { name: 'Kind' }).fill('');
    await faults.getByText('Kind', { exact: true }).waitFor();
    await page.getByRole('textbox', { name: 'Kind' }).fill('lumber');
    await what().getByText('1 new item,', { exact: false }).waitFor();
  });

  test('shows how items were found, old prices and new, in the unit that the list has', async () => {
    await what().getByText('2 by section, length, grade and supplier', { exact: false }).waitFor();
    const rows = page.getByRole('table', { name: 'What the rows do' });
    expect(await rows.getByRole('row').nth(1).textContent()).toContain('$6.38$7.25each2025-11-30');
    // 2x8 of 12 ft is 16 board feet: $14.40 each is $900.00 a thousand.
    expect(await rows.getByRole('row').nth(2).textContent()).toContain('$905.00$900.00MBF');
    // 30.11.2025 says how 01.02.2026 is meant.
    expect(await page.getByText('can be read two ways', { exact: false }).count()).toBe(0);
    expect(await rows.getByRole('row').nth(3).textContent()).toContain('2026-02-01');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-import');
  });

  test('comes in whole, is remembered, and can be undone', async () => {
    await page.getByRole('textbox', { name: 'Remember this layout as' }).fill('Fernhollow Lumber');
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.waitForURL(/#\/prices$/);
    await page.getByText('winter.csv came in: 1 new and 0 changed items, 3 prices.').waitFor();
    await choose('again.csv', yard);
    await page
      .getByText('The columns are read as they were from Fernhollow Lumber last time', { exact: false })
      .waitFor();
    expect(await page.getByRole('button', { name: 'Netto is read as' }).textContent()).toContain('Price');
    await what().getByText('0 new items', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('button', { name: 'Undo import of winter.csv' }).click();
    await page.getByText('Undone: import of winter.csv.').waitFor();
    await page.getByRole('searchbox').fill('fußbrett');
    await page.getByText('No item fits.').waitFor();
    await page.getByRole('searchbox').fill('');
    expect(await cellOf('2x6-8', 'price').textContent()).toBe('$6.38');
  });

  test('that is no text is refused where it was chosen', async () => {
    await choose('list.csv', Buffer.from('PK\u0003\u0004 a workbook'));
    await page.getByText('list.csv: This is a workbook or a zip file, not text.', { exact: false }).waitFor();
    await page.locator('.banner').getByRole('button', { name: 'Put away' }).click();
    expect(await page.locator('.banner').count()).toBe(0);
  });

  test('goes out as a workbook whose prices are numbers', async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export workbook' }).click();
    const path = await (await download).path();
    const [sheet] = await readXlsxFile(readFileSync(path));
    const [header = [], ...rows] = sheet?.data ?? [];
    const prices = rows.filter(([id]) => id === '2x6-8').map((row) => row[header.indexOf('price_usd')]);
    expect(prices).toContain(6.38);
  });
});
