import { afterEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

let page: Page;
const watched = programInBrowser((opened) => {
  page = opened;
});
afterEach(() => watched.mustBeQuiet());

const items = () => page.getByRole('grid', { name: 'Items of the price list' });
const saved = () => page.getByRole('complementary').getByRole('status').getByText('Saved', { exact: true });

describe('the price list', () => {
  test('is empty on a fresh machine and says how to fill it', async () => {
    await page.getByRole('link', { name: 'Price list' }).click();
    await page.getByText('The price list is empty.').waitFor();
    expect(await page.title()).toBe('Price list - Eavewright');
    expect(await accessFaults(page)).toEqual([]);
  });

  test('takes a new item, its sizes and its first price', async () => {
    await page.getByRole('button', { name: 'New item' }).click();
    await page.getByRole('textbox', { name: 'Description' }).fill('2x6 No.2 larch, 12 ft');
    await page.getByRole('button', { name: 'Add the item' }).click();
    await page.waitForURL(/#\/prices\/2x6-no-2-larch-12-ft/);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest('aside')?.ariaLabel))
      .toBe('Item 2x6 No.2 larch, 12 ft');
    await page.getByText('No price yet.', { exact: false }).waitFor();
    await page.getByRole('button', { name: /Section/ }).click();
    await page.getByRole('option', { name: '2x6' }).click();
    await page.getByRole('textbox', { name: 'Stock length' }).fill('12');
    await saved().waitFor();
    await page.getByRole('textbox', { name: 'Price', exact: true }).fill('11.4');
    await page.getByRole('button', { name: 'Add the price' }).click();
    await items().getByText('$11.40').waitFor();
    expect(await items().getByRole('link').count()).toBe(1);
  });

  test.each([0, 12, 35, 70, 140])('keeps every letter of a supplier typed at %i ms a key', async (delay) => {
    const supplier = page.getByRole('textbox', { name: 'Supplier', exact: true });
    for (const name of ['Hollins Yard N', 'Fernhollow Lumber']) {
      await supplier.fill('');
      await supplier.pressSequentially(name, { delay });
      expect(await supplier.inputValue()).toBe(name);
      await saved().waitFor();
      await expect.poll(() => items().getByText(name).count()).toBe(1);
      expect(await supplier.inputValue()).toBe(name);
    }
  });

  test('shows the focus of a choice by one frame alone', async () => {
    await page.getByRole('textbox', { name: 'Description' }).focus();
    await page.keyboard.press('Tab');
    const frames = await page.evaluate(() => {
      const button = document.activeElement;
      const around = [button, ...(button === null ? [] : [button.closest('.select')])];
      return around.map((element) => (element === null ? 'none' : getComputedStyle(element).outlineStyle));
    });
    expect(frames).toEqual(['none', 'none']);
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('select-button');
  });

  test('reads a stock length as it stands on a tape', async () => {
    const length = page.getByRole('textbox', { name: 'Stock length' });
    await length.fill("12'");
    await page.keyboard.press('Tab');
    expect(await length.inputValue()).toBe('12');
    await length.fill('14 ft');
    await page.keyboard.press('Tab');
    expect(await length.inputValue()).toBe('14');
    await length.fill('12');
    await saved().waitFor();
  });

  test('keeps earlier prices and shows by how much the price changed', async () => {
    await page.getByRole('textbox', { name: 'Price', exact: true }).fill('$12.54');
    await page.getByRole('button', { name: 'Add the price' }).click();
    const history = page.getByRole('table', { name: 'Prices of 2x6 No.2 larch, 12 ft' });
    await history.getByText('+10.0 %').waitFor();
    expect(await history.getByRole('row').count()).toBe(3);
    await items().getByText('$12.54').waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-item');
  });

  test('takes a mistyped price back, once it is told to', async () => {
    await page.getByRole('textbox', { name: 'Price', exact: true }).fill('1254');
    await page.getByRole('button', { name: 'Add the price' }).click();
    await items().getByText('$1,254.00').waitFor();
    const takeBack = page.getByRole('button', { name: /^Take back \$1,254\.00 of / });
    await takeBack.click();
    await page.getByRole('button', { name: 'Keep it' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Keep it');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-take-back');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
    await items().getByText('$1,254.00').waitFor();
    await takeBack.click();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await items().getByText('$12.54').waitFor();
    await expect.poll(() => takeBack.count()).toBe(0);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.ariaLabel))
      .toMatch(/^Take back \$12\.54/);
  });

  test('says at the field what is no amount, and adds nothing', async () => {
    const price = page.getByRole('textbox', { name: 'Price', exact: true });
    await price.fill('twelve');
    await page.getByText('"twelve" is not an amount. Write dollars and cents, like 12.50.').waitFor();
    await page.getByRole('button', { name: 'Add the price' }).click();
    expect(await price.inputValue()).toBe('twelve');
    expect(
      await page
        .getByRole('table', { name: /Prices of/ })
        .getByRole('row')
        .count(),
    ).toBe(3);
    await price.fill('');
  });

  test('keeps a length that does not read as it was typed, through a walk to another screen and a reload', async () => {
    const length = page.getByRole('textbox', { name: 'Stock length' });
    await length.fill('twelve');
    await page.getByText(/"twelve" is not a number/).waitFor();
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.goBack();
    expect(await length.inputValue()).toBe('twelve');
    await page.reload();
    await length.waitFor();
    expect(await length.inputValue()).toBe('twelve');
    await length.fill('14');
    await saved().waitFor();
    await page.reload();
    await length.waitFor();
    expect(await length.inputValue()).toBe('14');
  });

  test('asks what the columns are of a file that is laid out otherwise, and nothing comes in before', async () => {
    await page.locator('input[type=file]').setInputFiles({
      name: 'yard.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('what,cost\n2x4,3.98\n'),
    });
    await page.waitForURL(/#\/prices-import/);
    await page.getByText('No column is named as Description.', { exact: false }).waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-import-problem');
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.waitForURL(/#\/prices$/);
    expect(await items().getByRole('link').count()).toBe(1);
  });

  test('imports nothing where one row of a file is wrong, and names the row', async () => {
    await page.locator('input[type=file]').setInputFiles({
      name: 'yard.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'id,category,description,unit,price_usd,observed_on\na,other,A,each,1.00,2026-01-02\nb,other,B,each,cheap,2026-01-02\n',
      ),
    });
    await page.getByText(/yard\.csv: Row 3, column "price_usd"/).waitFor();
    expect(await items().getByRole('link').count()).toBe(1);
    await page.getByRole('button', { name: 'Put away' }).click();
  });

  test('reads days as a spreadsheet writes them, and says how', async () => {
    await page.locator('input[type=file]').setInputFiles({
      name: 'yard.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'id,category,description,unit,price_usd,observed_on\nshim,other,Shims,box,6.20,4/5/2026\n',
      ),
    });
    await page
      .getByText(
        '1 item with 1 new price came in. Days with strokes were read month first: 4/5/2026 as 2026-04-05.',
      )
      .waitFor();
    expect(await items().getByText('2026-04-05').count()).toBe(1);
  });

  test('reads back the file that it writes', async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export CSV' }).click();
    await page.locator('input[type=file]').setInputFiles(await (await download).path());
    await page.getByText('2 items with 0 new prices came in.').waitFor();
    expect(await items().getByRole('link').count()).toBe(2);
  });

  test('lists the prices that the sample job brings, flags old ones, and narrows by kind and words', async () => {
    await page.getByRole('link', { name: 'Jobs' }).click();
    await page.getByRole('button', { name: 'Open the sample job' }).click();
    await page.waitForURL(/#\/jobs\/./);
    await page.getByRole('link', { name: 'Price list' }).click();
    await expect.poll(() => items().getByRole('link').count()).toBeGreaterThan(20);
    await takePictures(page, 'prices');
    const all = await items().getByRole('link').count();
    await page.getByRole('searchbox').fill('larch');
    await expect.poll(() => items().getByRole('link').count()).toBe(1);
    await page.getByRole('searchbox').fill('');
    await page.getByRole('button', { name: /Kind of item/ }).click();
    await page.getByRole('option', { name: 'Nails' }).click();
    await expect.poll(() => items().getByRole('link').count()).toBeLessThan(all);
    expect(await accessFaults(page)).toEqual([]);
  });

  test('opens the item that a walk back from an estimate ends at', async () => {
    await page.getByRole('link', { name: 'Jobs' }).click();
    await page.getByRole('table', { name: 'Jobs' }).getByRole('link').first().click();
    await page
      .getByRole('navigation', { name: 'Sections of the job' })
      .getByRole('link', { name: /Cut plan/ })
      .click();
    await page.getByText('Figures follow from what is typed.').waitFor();
    await page.evaluate(() => document.querySelector<HTMLElement>('[data-ref^="board/"]')?.click());
    await page.locator('.walk [data-ref^="price/"]').first().click();
    await page.getByRole('button', { name: 'Go to the item' }).click();
    await page.waitForURL(/#\/prices\/./);
    await page.getByRole('complementary', { name: /^Item / }).waitFor();
    expect(await page.locator('.price-grid-item[data-state="chosen"]').count()).toBe(1);
  });
});
