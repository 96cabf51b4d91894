import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allSaved, entryAt, figuresFollow, goToSection, openSample, typeEntry, unfold } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser(openSample);

const snow = 'survey.site.groundSnowPsf';
/** The check that the tests look at: its verdict turns with the snow. */
const bending = 'bending/south';

function checkRow(page: Page, id: string): Locator {
  return page.locator(`.check[data-check="${id}"]`);
}

async function typeSnow(page: Page, psf: string): Promise<void> {
  await goToSection(page, 'Survey');
  await page.getByRole('button', { name: 'Job and house' }).click();
  await typeEntry(page, snow, psf);
  await page.getByRole('button', { name: 'South eave' }).click();
  await figuresFollow(page);
}

async function chooseSpecies(page: Page): Promise<void> {
  await goToSection(page, 'Design');
  await unfold(page, 'Structure');
  await entryAt(page, 'design.eaves.0.structure.species').click();
  await page.getByRole('option', { name: /^Spruce-pine-fir/ }).click();
  await figuresFollow(page);
}

test('a check that waits for an entry leads to it, and goes on once it is typed', async () => {
  const { page } = watched;
  await chooseSpecies(page);
  await typeSnow(page, '');
  await goToSection(page, 'Checks');
  const row = checkRow(page, bending);
  expect(await row.locator('.verdict').innerText()).toBe('Not covered');
  await row.getByRole('button', { name: 'Enter: Ground snow' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-path'))).toBe(snow);
  await page.keyboard.type('10');
  await page.keyboard.press('Tab');
  await figuresFollow(page);
  await page.getByRole('button', { name: 'South eave' }).click();
  await goToSection(page, 'Checks');
  await expect.poll(() => row.locator('.verdict').innerText()).toBe('Within the limit');
  expect(await row.locator('.ratio-number').innerText()).toMatch(/^0\.\d\d$/);
  watched.mustBeQuiet();
});

test('the line and the chips beside the design turn from within to beyond as the snow is typed', async () => {
  const { page } = watched;
  const chip = page.locator(`.chip[data-ref="check/${bending}"]`);
  const counts = page.locator('.checks-line .verdict-counts li').first();
  await typeSnow(page, '10');
  await goToSection(page, 'Design');
  expect(await chip.innerText()).toMatch(/^Within the limit:/);
  const before = Number.parseInt(await counts.innerText(), 10);
  await typeSnow(page, '300');
  await goToSection(page, 'Design');
  await expect.poll(() => chip.innerText()).toMatch(/^Beyond the limit:/);
  expect(Number.parseInt(await counts.innerText(), 10)).toBeGreaterThan(before);
  await takePictures(page, 'job-checks-design');
  expect(await accessFaults(page)).toEqual([]);
  // Taken back as one step.
  await page.keyboard.press('ControlOrMeta+Z');
  await expect.poll(() => chip.innerText()).toMatch(/^Within the limit:/);
  await page.keyboard.press('ControlOrMeta+Shift+Z');
  await expect.poll(() => chip.innerText()).toMatch(/^Beyond the limit:/);
  watched.mustBeQuiet();
});

test('every check says verdict in words, where, source with its mark, and never an approval', async () => {
  const { page } = watched;
  await goToSection(page, 'Checks');
  await page.getByRole('button', { name: 'All eaves' }).click();
  const rows = page.locator('.check');
  expect(await rows.count()).toBeGreaterThan(20);
  for (const text of await rows.allInnerTexts())
    expect(text).toMatch(/^(Within the limit|Beyond the limit|Not covered|Needs an engineer)\n/);
  const said = await page.locator('.job-main').innerText();
  expect(said).toContain('from memory, not looked up');
  expect(said).not.toMatch(
    /\bOK\b|\bapproved\b|\bpass(es|ed)?\b|\bsafe\b|\badequate\b|NaN|undefined|Infinity/i,
  );
  const caution = page.locator('.checks-caution .banner-caution');
  expect(await caution.innerText()).toContain('a licensed engineer decide');
  // The caution stays in view over the last figure.
  await rows.last().scrollIntoViewIfNeeded();
  const box = await caution.boundingBox();
  expect(box?.y).toBeGreaterThanOrEqual(0);
  expect((box?.y ?? 900) + (box?.height ?? 0)).toBeLessThan(800);
  await page.getByRole('button', { name: 'South eave' }).click();
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-checks');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-checks-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  watched.mustBeQuiet();
});

test('why opens the reckoning by keyboard, and a figure in it walks back to its entry', async () => {
  const { page } = watched;
  await goToSection(page, 'Checks');
  const why = checkRow(page, bending).getByRole('button', { name: /^Why: / });
  await why.focus();
  await page.keyboard.press('Enter');
  const walk = page.getByRole('complementary', { name: 'Where the figure comes from' });
  await walk.locator('.reckoning-steps > li').first().waitFor();
  expect(await walk.locator('.reckoning-steps > li').count()).toBeGreaterThan(3);
  expect(await walk.locator('.banner-caution').innerText()).toContain('a licensed engineer decide');
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-checks-why');
  const figure = walk.locator('.reckoning-steps .figure').first();
  await figure.focus();
  await page.keyboard.press('Enter');
  await walk.locator('.walk-value').waitFor();
  expect(await walk.getByRole('listitem').count()).toBeGreaterThan(0);
  await page.keyboard.press('Escape');
  expect(await walk.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(/^Why: /);
  watched.mustBeQuiet();
});

test('an engineer’s decision stands beside the figure, which stays; it is undone and removed by keyboard', async () => {
  const { page } = watched;
  await goToSection(page, 'Checks');
  const row = checkRow(page, bending);
  const figures = await row.locator('.check-figures').innerText();
  await row.getByRole('button', { name: /^Record a decision/ }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  expect(await row.innerText()).toContain('Write who decided.');
  await page.keyboard.type('R. Vantongeren, PE');
  await row.getByLabel('Date').fill('2026-05-04');
  await row.getByLabel('What was decided').fill('2x8 tails at the brace');
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-checks-decision');
  await row.getByRole('button', { name: 'Record', exact: true }).focus();
  await page.keyboard.press('Enter');
  const decision = row.getByText('Decided by R. Vantongeren, PE on 2026-05-04: 2x8 tails at the brace.');
  await decision.waitFor();
  expect(await row.locator('.check-figures').innerText()).toBe(figures);
  expect(await row.locator('.verdict').innerText()).toBe('Beyond the limit');
  await page.keyboard.press('ControlOrMeta+Z');
  await expect.poll(() => decision.count()).toBe(0);
  await page.keyboard.press('ControlOrMeta+Shift+Z');
  await decision.waitFor();
  // Told beside the figure in the reckoning and on its chip as well.
  await row.getByRole('button', { name: /^Why: / }).click();
  expect(await page.locator('.walk .decision').innerText()).toContain('R. Vantongeren');
  await page.keyboard.press('Escape');
  await goToSection(page, 'Design');
  expect(await page.locator(`.chip[data-ref="check/${bending}"]`).innerText()).toContain('decided on');
  await goToSection(page, 'Checks');
  // Kept with the job.
  await allSaved(page);
  await page.reload();
  await decision.waitFor();
  // The figure it was made on is no longer the figure.
  await typeSnow(page, '280');
  await goToSection(page, 'Checks');
  expect(await row.locator('.decision').innerText()).toContain('The figure has changed since');
  await row.getByRole('button', { name: /^Remove the decision of R. Vantongeren/ }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => row.locator('.decision').count()).toBe(0);
  await page.keyboard.press('ControlOrMeta+Z');
  await row.locator('.decision').waitFor();
  watched.mustBeQuiet();
});

test('a load that does not read is answered at its entry, and the last figures stay', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  await page.getByRole('button', { name: 'Job and house' }).click();
  await typeEntry(page, snow, 'much');
  await page.getByText('"much" is not a number').first().waitFor();
  expect(await entryAt(page, snow).getAttribute('aria-invalid')).toBe('true');
  await takePictures(page, 'job-checks-site');
  expect(await accessFaults(page)).toEqual([]);
  await goToSection(page, 'Checks');
  await page.getByText('From before the last change').first().waitFor();
  expect(await page.locator('.check').count()).toBeGreaterThan(20);
  await page.keyboard.press('ControlOrMeta+Z');
  await figuresFollow(page);
  watched.mustBeQuiet();
});

test('the key of Checks opens it from another section', async () => {
  const { page } = watched;
  await goToSection(page, 'Estimate');
  await page.keyboard.press('Alt+Shift+Digit3');
  await page.waitForURL(/\/checks$/);
  expect(await page.locator('.check').count()).toBeGreaterThan(20);
});
