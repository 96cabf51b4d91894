import { afterEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.waitForURL(/#\/jobs\/./);
  await page.getByRole('link', { name: 'Price list' }).click();
  await grid().getByRole('row').nth(3).waitFor();
});
afterEach(() => watched.mustBeQuiet());

const grid = () => page.getByRole('grid', { name: 'Items of the price list' });
const rowOf = (id: string) => page.locator(`[data-row="${id}"]`);
const cellOf = (id: string, column: string) => rowOf(id).locator(`.price-cell-${column}`);
const saved = (words: string) => page.getByRole('status').getByText(`Saved: ${words}`).first().waitFor();

/** What stands in a cell of the row of an item. */
async function textOf(id: string, column: string): Promise<string> {
  return (await cellOf(id, column).textContent()) ?? '';
}

async function paste(text: string): Promise<void> {
  await grid().evaluate((element, block) => {
    const data = new DataTransfer();
    data.setData('text/plain', block);
    element.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, text);
}

describe('the table of prices', () => {
  test('is typed into with keys alone: arrows, a figure, Enter, Tab, Escape', async () => {
    await cellOf('2x6-8', 'price').click();
    await page.keyboard.type('6.75');
    await page.keyboard.press('Enter');
    await saved('price of 2x6 No.2 spruce-pine-fir, 8 ft');
    expect(await textOf('2x6-8', 'price')).toBe('$6.75');
    // The next row down, with its text in the field, then the unit beside it, left as it was.
    await page.keyboard.press('F2');
    const price = grid().getByRole('textbox', { name: 'Price of 2x6 No.2 spruce-pine-fir, 10 ft' });
    expect(await price.inputValue()).toBe('8.40');
    await price.fill('$8.95');
    await page.keyboard.press('Tab');
    const unit = grid().getByRole('combobox', { name: 'for of 2x6 No.2 spruce-pine-fir, 10 ft' });
    await unit.fill('MBF');
    await page.keyboard.press('Escape');
    await expect.poll(() => textOf('2x6-10', 'price')).toBe('$8.95');
    expect(await textOf('2x6-10', 'unit')).toBe('each');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('End');
    await page.keyboard.type('keep dry');
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf('2x6-12', 'notes')).toBe('keep dry');
  });

  test('says at the cell what it cannot read, keeps what was typed, and saves nothing', async () => {
    await cellOf('2x6-14', 'price').click();
    await page.keyboard.press('Enter');
    const field = grid().getByRole('textbox', { name: 'Price of 2x6 No.2 spruce-pine-fir, 14 ft' });
    await field.fill('a dozen');
    await page.keyboard.press('Enter');
    await grid().getByRole('alert').getByText('"a dozen" is not an amount.', { exact: false }).waitFor();
    expect(await field.inputValue()).toBe('a dozen');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-cell-problem');
    await page.keyboard.press('Escape');
    expect(await textOf('2x6-14', 'price')).toBe('$12.52');
  });

  test('takes every change back and makes it again', async () => {
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf('2x6-12', 'notes')).toBe('');
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf('2x6-10', 'price')).toBe('$8.40');
    await page.getByRole('button', { name: 'Undo price of 2x6 No.2 spruce-pine-fir, 8 ft' }).click();
    await expect.poll(() => textOf('2x6-8', 'price')).toBe('$6.38');
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => textOf('2x6-8', 'price')).toBe('$6.75');
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf('2x6-8', 'price')).toBe('$6.38');
  });

  test('shows what a pasted block changes before anything is written, and refuses one with a bad cell whole', async () => {
    await cellOf('2x6-8', 'price').click();
    await paste('7.10\teach\ncheap\teach\n');
    const dialog = page.getByRole('dialog', { name: 'Paste into the price list' });
    await dialog
      .getByText('One cell of the block cannot be read, so nothing is changed.', { exact: false })
      .waitFor();
    expect(await dialog.getByRole('row').nth(1).textContent()).toContain('cheap');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-paste-problem');
    await dialog.getByRole('button', { name: 'Close', exact: true }).last().click();
    expect(await textOf('2x6-8', 'price')).toBe('$6.38');
    await paste('7.10\teach\n9.20\tLF\n');
    await dialog.getByText('3 cells of 2 items change.', { exact: false }).waitFor();
    await takePictures(page, 'prices-paste');
    await dialog.getByRole('button', { name: 'Change 3 cells' }).click();
    await expect.poll(() => textOf('2x6-10', 'unit')).toBe('LF');
    expect([await textOf('2x6-8', 'price'), await textOf('2x6-10', 'price')]).toEqual(['$7.10', '$9.20']);
    await saved('paste of 3 cells');
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf('2x6-10', 'unit')).toBe('each');
    expect(await textOf('2x6-10', 'price')).toBe('$8.40');
  });

  test('changes the prices of what is chosen, or else of what the filters show, by a stated rule', async () => {
    await rowOf('2x6-8').getByRole('checkbox').check();
    await cellOf('2x6-10', 'open').click({ position: { x: 2, y: 2 } });
    await grid().focus();
    await page.keyboard.press(' ');
    await page.getByRole('button', { name: 'Change prices' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('heading', { name: 'Change 2 prices' }).waitFor();
    await dialog.getByRole('textbox', { name: /Percent/ }).fill('7');
    await dialog.getByText('2 prices change.').waitFor();
    expect(await dialog.getByRole('row').nth(1).textContent()).toContain('$6.38$6.83');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-bulk');
    await dialog.getByRole('button', { name: 'Change 2 prices' }).click();
    await expect.poll(() => textOf('2x6-8', 'price')).toBe('$6.83');
    expect(await textOf('2x6-10', 'price')).toBe('$8.99');
    await page.getByRole('button', { name: 'Undo 2 prices by 7 %' }).click();
    await expect.poll(() => textOf('2x6-8', 'price')).toBe('$6.38');
    await page.getByRole('button', { name: 'Choose none' }).click();
  });

  test('narrows to a supplier, to old prices and to what has none', async () => {
    const all = await grid().getAttribute('aria-rowcount');
    await page.getByRole('button', { name: /Supplier of the items/ }).click();
    await page.getByRole('option', { name: 'Brindle Hardware' }).click();
    await expect.poll(() => grid().getAttribute('aria-rowcount')).not.toBe(all);
    expect(await grid().getByText('Fernhollow Lumber').count()).toBe(0);
    await page.getByRole('button', { name: /Age of prices/ }).click();
    await page.getByRole('option', { name: 'No price' }).click();
    await page.getByText('No item fits.').waitFor();
    await page.getByRole('button', { name: /Age of prices/ }).click();
    await page.getByRole('option', { name: 'Old and new prices' }).click();
    await page.getByRole('button', { name: /Supplier of the items/ }).click();
    await page.getByRole('option', { name: 'Every supplier' }).click();
    await expect.poll(() => grid().getAttribute('aria-rowcount')).toBe(all);
  });

  test('shows the same thing at its suppliers, at prices for one unit', async () => {
    await page.getByRole('button', { name: 'New item' }).click();
    await page.getByRole('textbox', { name: 'Description' }).fill('2x8 from the other yard');
    await page.getByRole('button', { name: 'Add the item' }).click();
    await page.waitForURL(/#\/prices\/2x8-from-the-other-yard/);
    await page.getByRole('link', { name: 'Prices', exact: true }).click();
    const id = '2x8-from-the-other-yard';
    await grid().focus();
    await page.keyboard.press('Control+End');
    await cellOf(id, 'price').click();
    // Price, unit, (observed on), supplier, (kind as it is), section, grade, species, length.
    await paste('10.00\teach\t\tBrindle Hardware\tLumber\t2x8\tNo.2\t\t12');
    await page.getByRole('button', { name: /^Change \d cells$/ }).click();
    await saved('paste of');
    await cellOf(id, 'open').getByRole('link').click();
    const offers = page.getByRole('table', { name: 'The same thing at its suppliers' });
    await offers.waitFor();
    expect(await offers.getByRole('row').count()).toBe(3);
    expect(await offers.getByText('least').count()).toBe(1);
    await takePictures(page, 'prices-suppliers');
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'prices-dark');
    await page.emulateMedia({ colorScheme: 'light' });
  });

  test('draws only the rows in sight of a list of twenty thousand, and comes to its end by a key', async () => {
    const lines = ['code,description,kind,unit,price,supplier'];
    for (let at = 0; at < 19_900; at += 1)
      lines.push(`n${at},Item number ${at},other,each,${at % 97}.5,Yard ${at % 5}`);
    await page.locator('input[type=file]').setInputFiles({
      name: 'long.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(lines.join('\n')),
    });
    await page.waitForURL(/#\/prices-import/);
    await page.getByText('19,900 new items', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.waitForURL(/#\/prices$/);
    await expect.poll(async () => Number(await grid().getAttribute('aria-rowcount'))).toBeGreaterThan(19_900);
    expect(await grid().getByRole('row').count()).toBeLessThan(80);
    await grid().focus();
    await page.keyboard.press('Control+End');
    await rowOf('n19899').waitFor();
    await cellOf('n19899', 'price').click();
    await page.keyboard.type('3.25');
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf('n19899', 'price')).toBe('$3.25');
    await saved('price of Item number 19899');
    await page.keyboard.press('Control+z');
    await page.getByText('Undone: price of Item number 19899.').waitFor();
    await expect.poll(() => textOf('n19899', 'price')).not.toBe('$3.25');
    await takePictures(page, 'prices-long');
  });
});
