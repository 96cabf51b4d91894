import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { entryAt, figuresFollow, goToSection, openSample, typeEntry } from './job-hands.ts';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

const watched = programInBrowser(async (page) => {
  await openSample(page);
  await goToSection(page, 'Cut plan');
});

/** Shows the cut plan, and waits until its boards were searched, whatever came of it. */
async function searched(page: Page): Promise<string> {
  await goToSection(page, 'Cut plan');
  await figuresFollow(page);
  const line = page.locator('.search-line');
  await line.filter({ hasText: /Proven:|Best found:/ }).waitFor({ timeout: 90_000 });
  return line.innerText();
}

const costOf = (text: string): number => Number(/costs \$([\d,.]+) in all/.exec(text)?.[1]?.replace(',', ''));
const boards = (page: Page) => page.getByRole('table', { name: /^Boards of / });

test('says how the boards are known to be the cheapest, in light and dark', async () => {
  const { page } = watched;
  expect(costOf(await searched(page))).toBeGreaterThan(0);
  const known = page.locator('.plan-proof').first();
  await known.getByText('How this is known').click();
  expect(await known.innerText()).toMatch(/Shown in whole numbers|Shown by a search|Not shown/);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-cut-plan-proof');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
  watched.mustBeQuiet();
});

test('while boards are searched, shows how long and how far, and can be told that it is enough', async () => {
  const { page, program } = watched;
  const before = costOf(await searched(page));
  // The host is held, so that the search is seen under way.
  program.freeze();
  await typeEntry(page, 'design.cutting.usdPerBoard', '2.50');
  const line = page.locator('.search-line');
  await line.filter({ hasText: /Proving, [1-9]\d* s: best so far \$[\d,.]+, bound \$[\d,.]+\./ }).waitFor();
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-cut-plan-proving');
  await line.getByRole('button', { name: 'Cancel' }).click();
  program.thaw();
  const after = await searched(page);
  expect(after).toContain('counting $2.50 for each board to carry');
  expect(costOf(after)).toBeGreaterThanOrEqual(before);
  await page.getByRole('button', { name: 'Undo: A board fewer is worth' }).click();
  expect(costOf(await searched(page))).toBe(before);
  watched.mustBeQuiet();
});

test('what has nothing to do with boards searches nothing and changes no plan', async () => {
  const { page } = watched;
  const before = await searched(page);
  const plans = await boards(page).first().innerText();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await goToSection(page, 'Survey');
  await typeEntry(page, 'survey.eaves.0.windowHeadBelowPlateIn', '20');
  await figuresFollow(page);
  await goToSection(page, 'Cut plan');
  expect(await searched(page)).toBe(before);
  expect(await boards(page).first().innerText()).toBe(plans);
  expect(asked).toContain('/api/jobs.save');
  expect(asked).not.toContain('/api/cutting.solve');
});

test('a board is pinned as it is and let go, each a step that can be taken back', async () => {
  const { page } = watched;
  const before = await searched(page);
  const first = boards(page).first();
  const row = first.getByRole('row').nth(2);
  const pieces = await row.locator('.board-mark').allInnerTexts();
  await row.getByRole('button', { name: /^Pin board / }).click();
  await searched(page);
  const pinned = first.getByRole('row').filter({ hasText: 'pinned' });
  expect((await pinned.locator('.board-mark').allInnerTexts()).sort()).toEqual(pieces.toSorted());
  await expect
    .poll(() => pinned.locator('.choice-cost').innerText(), { timeout: 60_000 })
    .toMatch(/the board free$/);
  await page.getByRole('button', { name: /^Undo: pinning board/ }).click();
  await pinned.waitFor({ state: 'detached' });
  expect(costOf(await searched(page))).toBe(costOf(before));
});

test('a length that the job goes without is not bought, and what that costs stands beside it', async () => {
  const { page } = watched;
  const before = costOf(await searched(page));
  const length = page.locator('.length-switch').filter({ hasText: '10 ft' });
  await length.locator('label').click();
  const after = costOf(await searched(page));
  expect(after).toBeGreaterThanOrEqual(before);
  expect(await boards(page).first().innerText()).not.toContain(`10' 0"`);
  await expect
    .poll(() => length.locator('.choice-cost').innerText(), { timeout: 60_000 })
    .toMatch(/buying 10 ft$/);
  await page.getByRole('button', { name: 'Undo: going without 10 ft' }).click();
  expect(costOf(await searched(page))).toBe(before);
});

test('boards on hand are used, and an entry that does not read keeps the figures', async () => {
  const { page } = watched;
  const before = costOf(await searched(page));
  await page.getByRole('button', { name: 'Add boards on hand' }).click();
  await entryAt(page, 'design.cutting.onHand.0.lengthIn').waitFor();
  await typeEntry(page, 'design.cutting.onHand.0.lengthIn', `9' 6"`);
  await typeEntry(page, 'design.cutting.onHand.0.count', '4');
  expect(costOf(await searched(page))).toBeLessThan(before);
  await boards(page).first().getByText('on hand').first().waitFor();
  await typeEntry(page, 'design.cutting.onHand.0.count', 'some');
  await page.locator('.field-problem', { hasText: /number/i }).waitFor();
  await boards(page).first().getByText('on hand').first().waitFor();
  await takePictures(page, 'job-cut-plan-on-hand');
  await page.getByRole('button', { name: 'Remove board on hand 1' }).click();
  expect(costOf(await searched(page))).toBe(before);
  watched.mustBeQuiet();
});

test('two suppliers are compared, alone and split, and the job buys where the person says', async () => {
  const { page } = watched;
  const job = JSON.parse(
    readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8'),
  ) as {
    job: { name: string };
    priceList: {
      id: string;
      section?: string;
      supplier: string;
      lengthFt?: number;
      prices: { priceUsd: string }[];
    }[];
  };
  const lumber = job.priceList.filter(({ section = '' }) => section !== '');
  job.job.name = 'Two yards';
  job.priceList.push(
    ...lumber.map((item) => ({
      ...item,
      id: `hollin-${item.id}`,
      supplier: 'Hollin Yard',
      prices: item.prices.map((price) => ({
        ...price,
        priceUsd: (Number(price.priceUsd) * ((item.lengthFt ?? 0) > 10 ? 0.9 : 1.1)).toFixed(2),
      })),
    })),
  );
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'two.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(job)),
  });
  await page.getByRole('heading', { name: 'Two yards' }).waitFor();
  await searched(page);
  const table = page.getByRole('table', { name: 'The lumber at each supplier' });
  await table.getByRole('row').nth(3).waitFor({ timeout: 90_000 });
  const rows = await table.locator('tbody tr').allInnerTexts();
  expect(
    rows.map((row) =>
      row
        .split('\n')[0]
        ?.split('\t')[0]
        ?.replace(/cheapest$/, ''),
    ),
  ).toEqual(['Fernhollow Lumber', 'Hollin Yard', 'Split between Fernhollow Lumber and Hollin Yard']);
  await takePictures(page, 'job-cut-plan-suppliers');
  await table.getByRole('row').nth(2).getByRole('button', { name: 'Buy here' }).click();
  await searched(page);
  await table.getByText('this job buys here').waitFor();
  await page.getByText('Now this job buys at Hollin Yard.').waitFor();
  expect(await accessFaults(page)).toEqual([]);
  watched.mustBeQuiet();
});
