import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page
    .getByRole('navigation', { name: /Sections/ })
    .waitFor({ state: 'attached' })
    .catch(() => undefined);
  await page.getByRole('link', { name: 'Quote', exact: true }).click();
});
afterEach(() => watched.mustBeQuiet());

const patient = { timeout: 60_000 };

test('a quote is made, sent and answered; the next revision keeps its number; the list of jobs says where it stands', async () => {
  await page.getByRole('button', { name: 'Make a quote' }).click(patient);
  await page.getByText(/is made as a draft/).waitFor(patient);
  await page.getByRole('button', { name: 'Mark as sent' }).click();
  await page.getByText(/counts as sent/).waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-quotes');
  await page.getByRole('button', { name: 'Accepted…' }).click();
  await page.getByRole('textbox', { name: 'What was said' }).fill('By telephone');
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByText(/Accepted \d{4}-\d{2}-\d{2}/).waitFor(patient);
  await page.getByRole('button', { name: 'Make the next revision' }).click();
  await page
    .getByText(/revision 2/)
    .first()
    .waitFor(patient);
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page
    .getByRole('row', { name: /Quillfeather/ })
    .getByText(/: Draft/)
    .waitFor(patient);
});
