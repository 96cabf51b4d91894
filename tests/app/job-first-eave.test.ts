import { expect, test } from 'vitest';
import {
  allSaved,
  entryAt,
  focusedPath,
  goToSection,
  startJob,
  typeEntry,
  typeReadings,
} from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser();

/** Entries that are called wrong on the screen. */
function wrong(): Promise<number> {
  return watched.page.locator('[aria-invalid="true"], .rafter-row-bad').count();
}

test('a job without an eave says so in plain words and leads to the Survey', async () => {
  const { page } = watched;
  await startJob(page, 'Sandpiper Lane');
  await goToSection(page, 'Takeoff');
  expect(await page.locator('body').innerText()).not.toContain('NaN');
  await page.locator('.no-figures .text-button', { hasText: 'The survey has no eave yet.' }).click();
  await expect.poll(() => focusedPath(page)).toBe('survey.eaves');
  await page.keyboard.press('Enter');
  // The new eave's name is what is typed first, and nothing of it is called wrong yet.
  await expect.poll(() => focusedPath(page)).toBe('survey.eaves.0.name');
  expect(await wrong()).toBe(0);
  await page.keyboard.type('South eave');
  await entryAt(page, 'survey.eaves.0.lengthIn').focus();
  await page.keyboard.press('Tab');
  // Left blank, it is.
  expect(await entryAt(page, 'survey.eaves.0.lengthIn').getAttribute('aria-invalid')).toBe('true');
  expect(await wrong()).toBe(1);
  watched.mustBeQuiet();
});

test('readings are placed, drawn and checked before anything is designed', async () => {
  const { page } = watched;
  await typeEntry(page, 'survey.eaves.0.lengthIn', "12'");
  await typeReadings(page, 0, ['3/4', '17-1/2', '33', '49', '65']);
  const row = page
    .locator('.rafter-row')
    .filter({ has: entryAt(page, 'survey.eaves.0.rafters.2.readingIn') });
  expect(await row.locator('.derived').allInnerTexts()).toEqual([`2' 9"`, `1' 3-1/2"`]);
  await page.locator('svg.drawing title', { hasText: 'Plan of South eave as measured' }).waitFor({
    state: 'attached',
  });
  await takePictures(page, 'job-survey-before-design');
  // Out of order: told at the reading and at the foot, which leads there.
  await typeEntry(page, 'survey.eaves.0.rafters.3.readingIn', '20');
  await page
    .getByText(/rafter 4 at 1' 8" stands before the last one at 2' 9"/)
    .first()
    .waitFor();
  expect(await entryAt(page, 'survey.eaves.0.rafters.3.readingIn').getAttribute('aria-invalid')).toBe('true');
  await typeEntry(page, 'survey.eaves.0.rafters.3.readingIn', '49');
  // What the design lacks is named with its eave and its place, and the foot leads there.
  await typeEntry(page, 'survey.eaves.0.pitchRisePer12', '6/12');
  await typeEntry(page, 'survey.eaves.0.heightAbovePlateIn', '4-3/8');
  const link = page.locator('.standing .standing-link');
  await expect.poll(() => link.innerText()).toMatch(/^South eave, overhang, on Design: Enter a length/);
  expect(await accessFaults(page)).toEqual([]);
  await link.click();
  await expect.poll(() => focusedPath(page)).toBe('design.eaves.0.overhangIn');
  watched.mustBeQuiet();
});

test('lumber can be chosen and drawn with an empty price list, and the foot says how much is lacking', async () => {
  const { page } = watched;
  await typeEntry(page, 'design.eaves.0.overhangIn', '12');
  await page.locator('[data-path="design.eaves.0.extender"]').click();
  await page.getByRole('option', { name: '2x4, no price yet' }).click();
  await page.locator('svg.drawing title', { hasText: 'Section at A-E01' }).waitFor({ state: 'attached' });
  const foot = page.locator('.standing');
  await expect
    .poll(() => foot.innerText())
    .toMatch(/^Figures follow from what is typed; the estimate lacks \d+ /);
  expect(await foot.locator('svg.lucide-check').count()).toBe(0);
  await goToSection(page, 'Estimate');
  await takePictures(page, 'job-estimate-lacks');
  await page.locator('.lacks .text-button', { hasText: 'wage' }).first().click();
  await expect.poll(() => focusedPath(page)).toBe('labour.wageUsdPerHour');
  await page.goBack();
  watched.mustBeQuiet();
});

test('an added cost and an added thing in the way take the focus, and a cost of nothing is told there', async () => {
  const { page } = watched;
  await goToSection(page, 'Design');
  await page.getByRole('button', { name: 'Extra costs' }).click();
  await page.getByRole('button', { name: 'Add a cost' }).click();
  await expect.poll(() => focusedPath(page)).toBe('design.extraCosts.0.description');
  expect(await wrong()).toBe(0);
  await page.keyboard.type('Staging');
  await typeEntry(page, 'design.extraCosts.0.unit', 'lot');
  await typeEntry(page, 'design.extraCosts.0.quantity', '0');
  await page.getByText('0 lot costs nothing: enter how many, or remove the line.').waitFor();
  await typeEntry(page, 'design.extraCosts.0.unitCostUsd', '0');
  await page.getByText('At $0 this costs nothing').waitFor();
  await takePictures(page, 'job-extra-cost-of-nothing');
  expect(await accessFaults(page)).toEqual([]);
  await typeEntry(page, 'design.extraCosts.0.quantity', '1');
  await typeEntry(page, 'design.extraCosts.0.unitCostUsd', '250');
  await goToSection(page, 'Survey');
  await page.getByRole('button', { name: 'South eave' }).first().click();
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await expect.poll(() => focusedPath(page)).toBe('survey.eaves.0.obstructions.0.label');
  expect(await wrong()).toBe(0);
  await page.getByRole('button', { name: 'Remove this thing' }).click();
  watched.mustBeQuiet();
});

test('a row put in above takes the focus, and a section called by its keys is gone on with at its top', async () => {
  const { page } = watched;
  await entryAt(page, 'survey.eaves.0.rafters.2.readingIn').click();
  await page.getByRole('button', { name: 'Row above 3' }).click();
  await expect.poll(() => focusedPath(page)).toBe('survey.eaves.0.rafters.2.readingIn');
  expect(await wrong()).toBe(0);
  await page.getByRole('button', { name: 'Remove 3' }).click();
  await entryAt(page, 'survey.eaves.0.rafters.1.readingIn').focus();
  await page.keyboard.press('Alt+Shift+Digit4');
  await expect
    .poll(() =>
      page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent}`),
    )
    .toBe('H2 Takeoff');
  await page.keyboard.press('Alt+Shift+Digit1');
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Survey');
  watched.mustBeQuiet();
});

test('the other figures are there after a reload with a half-typed reading', async () => {
  const { page } = watched;
  const path = 'survey.eaves.0.rafters.3.readingIn';
  await entryAt(page, path).click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('4-1-3/', { delay: 120 });
  await allSaved(page);
  await page.reload();
  await entryAt(page, path).waitFor();
  await expect.poll(() => entryAt(page, path).inputValue()).toBe('4-1-3/');
  await page.getByText('Figures are from before the last change.').waitFor();
  expect(await entryAt(page, path).getAttribute('aria-invalid')).toBe('true');
  await goToSection(page, 'Takeoff');
  expect(await page.getByText('No figures yet').count()).toBe(0);
  await page.locator('.job-main .figure').first().waitFor();
  watched.mustBeQuiet();
});

test('the cell with the focus stands clear of the line at the foot', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  await page.evaluate(() => window.scrollTo(0, 0));
  await entryAt(page, 'survey.eaves.0.rafters.0.readingIn').focus();
  for (let press = 0; press < 5; press += 1) await page.keyboard.press('ArrowDown');
  const bottoms = await page.evaluate(() => [
    document.activeElement?.getBoundingClientRect().bottom ?? 0,
    document.querySelector('.standing')?.getBoundingClientRect().top ?? 0,
  ]);
  expect(await focusedPath(page)).toBe('survey.eaves.0.rafters.5.readingIn');
  expect(bottoms[0]).toBeLessThanOrEqual(bottoms[1] ?? 0);
});
