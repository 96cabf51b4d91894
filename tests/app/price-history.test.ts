import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { openSample } from './job-hands.ts';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await openSample(page);
});
afterEach(() => watched.mustBeQuiet());

describe('prices over time', () => {
  test('are reached from the price list, and begin with the first item', async () => {
    await page.getByRole('link', { name: 'Price list' }).click();
    await page.getByRole('link', { name: 'Over time' }).click();
    await page.getByRole('slider', { name: /What .*cost/ }).waitFor();
    expect(await accessFaults(page)).toEqual([]);
  });

  test('of an item stand in a chart that is read with the arrow keys, with a table beside it', async () => {
    await page.getByRole('searchbox', { name: 'Find an item' }).fill('2x6 No.2 12');
    await page
      .getByRole('button', { name: /2x6.*12 ft/ })
      .first()
      .click();
    const chart = page.getByRole('slider', { name: /What 2x6.*cost/ });
    await chart.focus();
    await page.keyboard.press('Home');
    // The sample's prices of a 2x6 of 12 ft: $9.62, $9.80, $9.94.
    expect(await chart.getAttribute('aria-valuetext')).toContain('2026-02-09: ');
    expect(await chart.getAttribute('aria-valuetext')).toContain('$9.62 for each');
    await page.keyboard.press('ArrowRight');
    expect(await chart.getAttribute('aria-valuetext')).toContain('$9.80 for each');
    const table = page.getByRole('table', { name: /Prices of 2x6.*over time/ });
    // 9.94 / 9.80 - 1 = 1.43 %, by hand.
    await table.getByText('+1.4 %').waitFor();
    await takePictures(page, 'price-history-item');
    expect(await accessFaults(page)).toEqual([]);
  });

  test('tell the price of any day', async () => {
    const day = page.getByLabel('Price as of');
    await day.fill('2026-03-15');
    const held = page.locator('.as-of');
    await expect.poll(() => held.textContent()).toContain('$9.62 for each');
    await day.fill('2025-12-31');
    await expect.poll(() => held.textContent()).toBe('It had no price yet on that day.');
    await day.fill('2026-04-20');
  });

  test('take an index in and stand beside it from the first common month on', async () => {
    await page.getByRole('textbox', { name: 'Name of the series' }).fill('Made-up lumber index');
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring in a series' }).click();
    await (await chooser).setFiles({
      name: 'index.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('month,value\n2026-01,200\n2026-02,210\n2026-03,220\n2026-04,231\n'),
    });
    await page.getByText('4 months, 2026-01 to 2026-04').waitFor();
    await page.getByRole('button', { name: /Beside an index/ }).click();
    await page.getByRole('option', { name: 'Made-up lumber index' }).click();
    const chart = page.getByRole('slider', { name: /both 100 in 2026-02/ });
    await chart.focus();
    await page.keyboard.press('End');
    expect(await chart.getAttribute('aria-valuetext')).toContain('Made-up lumber index nothing known');
    for (const _ of ['2026-04-13', '2026-04-01']) await page.keyboard.press('ArrowLeft');
    // 231 / 210 = 1.10 by hand.
    expect(await chart.getAttribute('aria-valuetext')).toContain('Made-up lumber index 110.00');
    await takePictures(page, 'price-history-index');
  });

  test('list what changed since a day, those that rose most first', async () => {
    await page.getByRole('textbox', { name: 'Since' }).fill('2026-02-10');
    const table = page.getByRole('table', { name: 'Prices changed since 2026-02-10' });
    await table.waitFor();
    const percents = await table.getByRole('row').locator('td:nth-child(6)').allTextContents();
    const values = percents.map((text) => Number.parseFloat(text.replace('+', '')));
    expect(values.length).toBeGreaterThan(5);
    expect(values).toEqual(values.toSorted((a, b) => b - a));
    await takePictures(page, 'price-history-changes');
  });
});

describe('the boards of the shop', () => {
  test('are noted on the rack', async () => {
    await page.getByRole('link', { name: 'Boards on hand' }).click();
    await page.getByRole('button', { name: 'Add the first board' }).click();
    await page.getByRole('textbox', { name: 'Length' }).fill("7' 6");
    await page.getByRole('spinbutton', { name: 'How many' }).or(page.getByLabel('How many')).fill('2');
    await page.getByRole('button', { name: 'Add to the rack' }).click();
    await page.getByRole('table', { name: 'Boards of the shop' }).getByText('7\' 6"').first().waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'stock');
  });

  test('are set aside for a job that takes them, cut up by it, and what is left over comes back', async () => {
    await page.getByRole('link', { name: 'Jobs', exact: true }).click();
    await page.getByRole('link', { name: /Quillfeather/ }).click();
    await page.getByRole('link', { name: 'Cut plan' }).click();
    await page.getByRole('button', { name: 'From the shop’s boards…' }).click();
    await page.getByText('1: 2x6', { exact: false }).click();
    await page.getByRole('button', { name: 'Take 1 board' }).click();
    await page.getByText('Board 1 of the shop: 2x6', { exact: false }).waitFor();
    await page.getByText('1 board of the shop will be used up.', { exact: false }).waitFor();
    await takePictures(page, 'cut-plan-stock');
    expect(await accessFaults(page)).toEqual([]);
    await expect
      .poll(async () => page.getByRole('status').getByText('Saved', { exact: true }).count())
      .toBeGreaterThan(0);
    await page.getByRole('button', { name: 'The job is cut: onto the rack' }).click();
    await page.getByText('This job is cut', { exact: false }).waitFor();
    await page.getByRole('link', { name: 'Price list' }).click();
    await page.getByRole('link', { name: 'Boards on hand' }).click();
    await page.getByText('Show used and thrown out').click();
    await page.getByText('used for', { exact: false }).waitFor();
    await takePictures(page, 'stock-after');
  });
});

describe('the materials of a job', () => {
  test('are priced on past days in the estimate', async () => {
    await page.getByRole('link', { name: 'Jobs', exact: true }).click();
    await page.getByRole('link', { name: /Quillfeather/ }).click();
    await page.getByRole('link', { name: 'Estimate' }).click();
    await page.getByText('The materials over time').click();
    const chart = page.getByRole('slider', { name: 'What the materials of this job would have cost' });
    await chart.waitFor();
    await page.getByLabel('Bought on').fill('2026-03-20');
    await page.getByText('less than', { exact: false }).waitFor();
    await chart.scrollIntoViewIfNeeded();
    await takePictures(page, 'materials-over-time');
    expect(await accessFaults(page)).toEqual([]);
  });

  test('tell by the quote how far they move while it is open', async () => {
    await page.getByRole('link', { name: 'Quote' }).click();
    const panel = page.getByRole('region', { name: 'How far prices move while the quote is open' });
    await panel.getByText('Nine times in ten, up to').waitFor();
    // The two rises are 28 days apart, so no window of 15 holds both; $1,117.41 to $1,144.58 is 2.43 %.
    expect(await panel.locator('.risk-figures dd').allTextContents()).toContain('+2.4 %');
    await panel.scrollIntoViewIfNeeded();
    await takePictures(page, 'price-risk');
  });

  test('lead from what changed since a quote to the next one', async () => {
    await page.getByRole('button', { name: 'Make a quote' }).click();
    await page.getByText(/is made as a draft/).waitFor();
    await page.getByRole('button', { name: /What changed since/ }).click();
    const dialog = page.getByRole('dialog', { name: /What changed since/ });
    await dialog.getByText('has a direct cost of', { exact: false }).waitFor();
    // Today the job is priced anew; the sample's prices are the newest there are, so no line differs.
    expect(await dialog.textContent()).toContain('the margin over direct cost goes from');
    await takePictures(page, 'quote-change');
    await dialog.getByRole('button', { name: 'Make the draft anew' }).click();
    await dialog.waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: 'Searching the boards' }).waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: 'Make the draft anew' }).waitFor();
  });
});
