import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { programInBrowser } from './program-in-browser.ts';
import { join } from 'node:path';
import { accessFaults, screenshotFolder, takePictures } from './watched-page.ts';

let page: Page;
const patient = { timeout: 60_000 };
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('link', { name: 'Money', exact: true }).click();
});
afterEach(() => watched.mustBeQuiet());

/** Goes to a part of the Money screen. */
async function goToPart(name: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('link', { name: 'Money', exact: true })
    .click();
  await page
    .getByRole('navigation', { name: "Parts of the shop's money" })
    .getByRole('link', { name, exact: true })
    .click();
}

test('a shop without contracts says how one comes about, and brings invented jobs in one click', async () => {
  await page.getByText('No job has an accepted quote yet.').waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Bring in jobs of the sample shop' }).click();
  await page
    .getByRole('row', { name: /Dunlin Court/ })
    .first()
    .waitFor(patient);
});

test('every job under contract stands with its bills, cost and margin, and what waits', async () => {
  const jobs = page.getByRole('table', { name: 'Open jobs' });
  await jobs.getByRole('row', { name: /Dunlin Court/ }).waitFor(patient);
  expect(await page.getByRole('table', { name: 'Finished jobs' }).getByRole('row').count()).toBe(4);
  await page.getByRole('table', { name: 'Bills to be paid' }).getByText('late').first().waitFor(patient);
  await takePictures(page, 'money-now');
  expect(await accessFaults(page)).toEqual([]);
  await jobs.getByRole('link', { name: /Dunlin Court/ }).click();
  await page.waitForURL(/\/jobs\/.+\/cost/);
});

test('finished jobs say how good their estimates were, phase by phase and job by job', async () => {
  await goToPart('Finished jobs');
  await page
    .getByRole('table', { name: 'Taken beyond reckoned, by phase' })
    .getByRole('row', { name: /Framing/ })
    .waitFor(patient);
  await takePictures(page, 'money-finished');
  expect(await accessFaults(page)).toEqual([]);
  await page
    .getByRole('button', { name: /^Whole job/ })
    .last()
    .click();
  await page.getByRole('option', { name: 'Soffit', exact: true }).click();
  await page
    .getByRole('table', { name: 'Soffit, job by job' })
    .getByRole('row', { name: /Marrowby/ })
    .waitFor(patient);
  await page
    .getByRole('table', { name: 'Soffit, job by job' })
    .getByRole('row')
    .last()
    .scrollIntoViewIfNeeded();
  await page.screenshot({ path: join(screenshotFolder, 'money-job-by-job.png') });
});

test('a learned rate is proposed with its jobs, changes when one is left out, and is taken with a press', async () => {
  await goToPart('What they teach');
  const row = page.getByRole('row', { name: /Install extenders to the string/ });
  await row.waitFor(patient);
  await takePictures(page, 'money-learned');
  expect(await accessFaults(page)).toEqual([]);
  const before = await row.getByRole('button', { name: /^Take/ }).textContent();
  await page.getByRole('button', { name: 'Leave out Framing of Brackenhall cottage, north eave' }).click();
  await page
    .getByRole('button', { name: 'Count Framing of Brackenhall cottage, north eave' })
    .waitFor(patient);
  await expect.poll(() => row.getByRole('button', { name: /^Take/ }).textContent()).not.toBe(before);
  const offered = (await row.getByRole('button', { name: /^Take/ }).textContent())?.replace('Take ', '');
  await row.getByRole('button', { name: /^Take/ }).click();
  await row.getByText(`${offered} h / piece`).waitFor(patient);
  await page.getByRole('link', { name: 'Settings', exact: true }).click();
  await page.getByRole('link', { name: 'Labour', exact: true }).click();
  const setting = page.getByRole('row', { name: /Install extenders to the string/ });
  await setting.getByText('Your own').waitFor(patient);
  await setting.getByText(/The last 2 jobs/).waitFor(patient);
  await takePictures(page, 'settings-learned');
  // Taken in the settings themselves, the entry follows.
  const fascia = page.getByRole('row', { name: /^Set fascia/ });
  const taken = (await fascia.getByRole('button', { name: /^Take/ }).textContent())?.replace('Take ', '');
  await fascia.getByRole('button', { name: /^Take/ }).click();
  await fascia.getByText('Your own').waitFor(patient);
  await expect.poll(() => fascia.getByRole('textbox').inputValue()).toBe(taken);
});

test('what surprised him stands among what he asks before each quote, beside a question of his own', async () => {
  await goToPart('What they teach');
  const asked = page.getByRole('region', { name: 'What you ask before each quote' });
  await asked.getByText('Is the soffit width read at both ends?').waitFor(patient);
  await asked.getByRole('textbox', { name: 'Another question' }).fill('Does the dog bite?');
  await page.keyboard.press('Enter');
  await asked.getByRole('button', { name: 'Ask no more: Does the dog bite?' }).click(patient);
  await asked.getByText('Does the dog bite?').waitFor({ ...patient, state: 'detached' });
  expect(await asked.getByRole('listitem').count()).toBe(2);
});

test('a job is finished in its own section: the day, why, what surprised, and the report as a PDF', async () => {
  await goToPart('Where it stands');
  await page
    .getByRole('table', { name: 'Open jobs' })
    .getByRole('link', { name: /Dunlin Court/ })
    .click();
  await page.getByRole('button', { name: 'Mark the job as finished…' }).click(patient);
  await page
    .getByRole('textbox', { name: 'What surprised you?' })
    .fill('Is the chimney flashed on the eave side?');
  await page.getByRole('button', { name: /Why Framing came out otherwise/ }).click();
  await page.getByRole('option', { name: 'Hidden damage' }).click();
  await takePictures(page, 'job-close-out');
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'The job is finished', exact: true }).click();
  await page.getByText(/Finished on \d{4}/).waitFor(patient);
  const download = page.waitForEvent('download', patient);
  await page.getByRole('button', { name: 'Job report as PDF' }).click();
  expect((await download).suggestedFilename()).toMatch(/job report Dunlin Court.*\.pdf$/);
  await page.getByRole('button', { name: 'Take it up again' }).click();
  await page.getByRole('button', { name: 'Mark the job as finished…' }).waitFor(patient);
});

test('an estimate tells beside its labour what finished jobs took', async () => {
  await page
    .getByRole('navigation', { name: 'Sections of the job' })
    .getByRole('link', { name: 'Estimate' })
    .click();
  const told = page.getByText(/The last 3 jobs: .* h, used/);
  await told.first().waitFor(patient);
  expect(await told.count()).toBeGreaterThan(5);
  const bought = page.getByRole('row', { name: /Fernhollow Lumber/ });
  expect(await bought.count()).toBeGreaterThan(0);
  expect(await bought.getByText(/h, used/).count()).toBe(0);
  await takePictures(page, 'estimate-learned');
});

test('a year is saved for the accountant as one file', async () => {
  await goToPart('Where it stands');
  const download = page.waitForEvent('download', patient);
  await page.getByRole('button', { name: 'Year for the accountant', exact: true }).click();
  expect((await download).suggestedFilename()).toMatch(/^eavewright-year-\d{4}\.zip$/);
});
