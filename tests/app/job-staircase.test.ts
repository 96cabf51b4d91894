import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { entryAt, figuresFollow, goToSection, openSample, unfold } from './job-hands.ts';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

const watched = programInBrowser(async (page) => {
  await openSample(page);
  await goToSection(page, 'Design');
  await unfold(page, 'Boards by overhang');
  await page.getByRole('button', { name: 'Work out the steps' }).click();
});

const panel = (page: Page) => page.locator('details.fold-panel', { hasText: 'Boards by overhang' });
const rows = (page: Page) => page.getByRole('table', { name: 'Boards’ cost by overhang' }).getByRole('row');
const status = (page: Page) => panel(page).locator('.variant-tools [role="status"]');

async function workedOut(page: Page): Promise<void> {
  await status(page).filter({ hasText: 'Worked out.' }).waitFor({ timeout: 120_000 });
}

/** What the boards cost from the least overhang up. [$] */
async function dollars(page: Page): Promise<readonly number[]> {
  const cells = await rows(page).locator('td:nth-child(2)').allInnerTexts();
  return cells.map((text) => Number(text.replaceAll(/[$,]/g, '')));
}

test('shows steps before the last is worked out, and says how far it is', async () => {
  const { page } = watched;
  await status(page)
    .filter({ hasText: /Reckoning overhang \d+ of \d+\.|Searching for proofs/ })
    .waitFor();
  expect(await rows(page).count()).toBeGreaterThan(1);
  await workedOut(page);
  watched.mustBeQuiet();
});

test('boards never cost less further out, and each step says how well it is known', async () => {
  const { page } = watched;
  await workedOut(page);
  const cost = await dollars(page);
  expect(cost.length).toBeGreaterThan(5);
  expect(cost).toEqual(cost.toSorted((a, b) => a - b));
  for (const known of await rows(page).locator('td:nth-child(4)').allInnerTexts())
    expect(known).toMatch(/^(Proven|At least \$[\d,.]+)$/);
  expect(await panel(page).innerText()).toMatch(/less \([\d-/]+"\) saves \$[\d.]+ of boards\./);
  expect(await accessFaults(page)).toEqual([]);
  await panel(page).scrollIntoViewIfNeeded();
  await takePictures(page, 'job-staircase');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-staircase-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  watched.mustBeQuiet();
});

test('a cheaper overhang is taken with the keys and given back, and the staircase is seen from it', async () => {
  const { page } = watched;
  await workedOut(page);
  const overhang = entryAt(page, 'design.eaves.0.overhangIn');
  const before = await overhang.inputValue();
  const chart = page.getByRole('slider', { name: 'Steps of the boards’ cost' });
  await chart.focus();
  await page.keyboard.press('ArrowLeft');
  expect(await chart.getAttribute('aria-valuetext')).toMatch(/\$[\d.]+ less/);
  await page.keyboard.press('Enter');
  await expect.poll(() => overhang.inputValue()).not.toBe(before);
  await figuresFollow(page);
  expect(await rows(page).filter({ hasText: '(today)' }).count()).toBe(1);
  await page.getByRole('button', { name: /^Undo: the overhang of / }).click();
  await expect.poll(() => overhang.inputValue()).toBe(before);
  expect(await status(page).innerText()).toBe('Worked out.');
  watched.mustBeQuiet();
});

test('a click on the drawing looks at a step, and its button takes it', async () => {
  const { page } = watched;
  await workedOut(page);
  const overhang = entryAt(page, 'design.eaves.0.overhangIn');
  const before = await overhang.inputValue();
  const chart = page.getByRole('slider', { name: 'Steps of the boards’ cost' });
  await chart.click({ position: { x: 4, y: 80 } });
  expect(await overhang.inputValue()).toBe(before);
  await panel(page)
    .locator('.staircase-looked')
    .getByRole('button', { name: /^Take the overhang / })
    .click();
  await expect.poll(() => overhang.inputValue()).not.toBe(before);
  await page.getByRole('button', { name: /^Undo: the overhang of / }).click();
  await expect.poll(() => overhang.inputValue()).toBe(before);
  watched.mustBeQuiet();
});
