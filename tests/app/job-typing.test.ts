import { expect, test } from 'vitest';
import {
  allSaved,
  entryAt,
  figuresFollow,
  goToSection,
  openSample,
  startJob,
  typeEntry,
  typeReadings,
} from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser();

/** The amount that stands last in a cell, behind what is read aloud. [cents] */
function centsOf(text: string): number {
  return Math.round(Number((/\$([\d,.]+)$/.exec(text)?.[1] ?? '').replaceAll(',', '')) * 100);
}

test('a survey typed from nothing by keyboard gives a plan, a section, a takeoff and an estimate', async () => {
  const { page } = watched;
  // The sample brings a price list and rates; the job itself is typed from nothing.
  await openSample(page);
  await startJob(page, 'Plover Street');
  await page.getByRole('button', { name: 'Add the first eave' }).click();
  // What only a tape can tell is asked for, and nothing is computed from a guess.
  expect(await page.getByText('No figures yet.').count()).toBe(1);
  expect(await accessFaults(page)).toEqual([]);
  await typeEntry(page, 'survey.eaves.0.name', 'Street side');
  await typeEntry(page, 'survey.eaves.0.lengthIn', `8' 2"`);
  await typeEntry(page, 'survey.eaves.0.pitchRisePer12', '6/12');
  await typeEntry(page, 'survey.eaves.0.heightAbovePlateIn', '4-3/8');
  await typeReadings(page, 0, ['3/4', '17-1/2', '2-9-0/16', '49', `5' 4-1/2"`, '81', `8' 1"`]);
  await goToSection(page, 'Design');
  await typeEntry(page, 'design.eaves.0.overhangIn', '16');
  await figuresFollow(page);
  expect(await page.locator('svg.drawing title', { hasText: 'Section at A-E01, Street side' }).count()).toBe(
    1,
  );
  expect(await page.locator('svg.drawing title', { hasText: 'Plan of Street side' }).count()).toBe(1);
  await takePictures(page, 'job-typed-design');

  await goToSection(page, 'Takeoff');
  // Seven rafters with a free side each: seven extenders.
  const extenders = page.getByRole('row', { name: /^Extenders 2x6/ });
  expect(await extenders.getByRole('cell').first().innerText()).toMatch(/\s7$/);

  await goToSection(page, 'Estimate');
  const costs = await page
    .getByRole('table', { name: 'Cost lines by phase' })
    .locator('tbody tr:not(.phase-row) td:nth-child(5)')
    .allInnerTexts();
  const total = await page.getByRole('row', { name: /^Total/ }).innerText();
  expect(costs.length).toBeGreaterThan(10);
  expect(total).toMatch(/\$[\d,]+\.\d\d/);
  // The cost column adds up by hand to the cent.
  const cents = costs.map(centsOf);
  const foot = await page
    .getByRole('row', { name: /^All lines/ })
    .getByRole('cell')
    .first()
    .innerText();
  expect(cents.reduce((sum, one) => sum + one, 0)).toBe(centsOf(foot));
  watched.mustBeQuiet();
});

test('a reading that is no length is answered at the entry, and the last good figures stay', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  const path = 'survey.eaves.0.rafters.2.readingIn';
  await typeEntry(page, path, 'about 33');
  const entry = entryAt(page, path);
  expect(await entry.getAttribute('aria-invalid')).toBe('true');
  const sentence = page.getByText('"about 33" is not a length.').first();
  await sentence.waitFor();
  await page.getByText('Figures are from before the last change.').waitFor();
  expect(await page.locator('svg.drawing').count()).toBe(1);
  await takePictures(page, 'job-bad-entry');
  expect(await accessFaults(page)).toEqual([]);
  // Out of order: the entry reads, the survey does not hold together.
  await typeEntry(page, path, '12');
  await page
    .getByText(/rafter 3 at 1' 0" stands before the last one at 1' 5-1\/2"/)
    .first()
    .waitFor();
  expect(await entry.getAttribute('aria-invalid')).toBe('true');
  // The line at the foot leads to the entry.
  await page.getByRole('link', { name: 'Takeoff' }).click();
  await page.locator('.standing .standing-link').click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-path'))).toBe(path);
  await typeEntry(page, path, '2-9-0/16');
  await figuresFollow(page);
  watched.mustBeQuiet();
});

test.each([
  ['survey.eaves.0.pitchRisePer12', '0', 'Enter more than 0 and at most 24/12.'],
  ['survey.eaves.0.pitchRisePer12', '25/12', 'Enter more than 0 and at most 24/12.'],
  ['survey.eaves.0.lengthIn', `4000'`, 'is out of range'],
  ['survey.eaves.0.lengthIn', `5'`, 'does not stand on the wall'],
  ['survey.eaves.0.heightAbovePlateIn', '', 'Enter a length'],
])('%s typed as %j says what to do and loses nothing', async (path, text, sentence) => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  const before = await entryAt(page, path).inputValue();
  await typeEntry(page, path, text);
  await page.getByText(sentence).first().waitFor();
  expect(await page.locator('body').innerText()).not.toContain('NaN');
  await page.keyboard.press('ControlOrMeta+Z');
  expect(await entryAt(page, path).inputValue()).toBe(before);
  await figuresFollow(page);
});

test('undo takes back an entry as a whole, and redo makes it again', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  const path = 'survey.eaves.0.rafters.1.readingIn';
  const entry = entryAt(page, path);
  await typeEntry(page, path, '18-1/4');
  expect(await entry.inputValue()).toBe(`1' 6-1/4"`);
  await page.keyboard.press('ControlOrMeta+Z');
  expect(await entry.inputValue()).toBe(`1' 5-1/2"`);
  await page.keyboard.press('ControlOrMeta+Shift+Z');
  expect(await entry.inputValue()).toBe(`1' 6-1/4"`);
  await page.keyboard.press('ControlOrMeta+Z');
  await allSaved(page);
});

test('the rafter grid is walked by arrow keys, and Enter in the last row starts the next rafter', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-path'));
  await entryAt(page, 'survey.eaves.0.rafters.0.readingIn').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.press('ArrowDown');
  expect(await focused()).toBe('survey.eaves.0.rafters.1.readingIn');
  await page.keyboard.press('ArrowRight');
  expect(await focused()).toBe('survey.eaves.0.rafters.1.joist');
  await page.keyboard.type('r');
  expect(await entryAt(page, 'survey.eaves.0.rafters.1.joist').inputValue()).toBe('right');
  await page.keyboard.press('ArrowDown');
  expect(await focused()).toBe('survey.eaves.0.rafters.2.joist');
  expect(await entryAt(page, 'survey.eaves.0.rafters.2.joist').inputValue()).toBe('none');
  await page.keyboard.press('ControlOrMeta+Z');
  expect(await entryAt(page, 'survey.eaves.0.rafters.1.joist').inputValue()).toBe('none');
  await entryAt(page, 'survey.eaves.0.rafters.6.readingIn').click();
  await page.keyboard.press('Enter');
  expect(await focused()).toBe('survey.eaves.0.rafters.7.readingIn');
  watched.mustBeQuiet();
});

test('what was half typed and not yet read is there again when the page is opened anew', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  await entryAt(page, 'survey.eaves.0.plateWidthIn').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('3-5/');
  await allSaved(page);
  await page.reload();
  await entryAt(page, 'survey.eaves.0.plateWidthIn').waitFor();
  await expect.poll(() => entryAt(page, 'survey.eaves.0.plateWidthIn').inputValue()).toBe('3-5/');
  await typeEntry(page, 'survey.eaves.0.plateWidthIn', '3-5/8');
  await figuresFollow(page);
});
