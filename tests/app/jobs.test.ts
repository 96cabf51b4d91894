import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { launchBrowser } from './browser.ts';
import { startProgram, type RunningProgram } from './running-program.ts';
import { accessFaults, openPage, takePictures, type WatchedPage } from './watched-page.ts';

let program: RunningProgram;
let browser: Browser;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
  watched = await openPage(browser, program.address);
  page = watched.page;
});
afterEach(() => watched.mustBeQuiet());
afterAll(async () => {
  await browser.close();
  await program.remove();
});

const row = (name: string) => page.getByRole('row').filter({ hasText: name });
const goToJobs = () =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Jobs' }).click();

describe('the list of jobs', () => {
  test('says on a fresh machine what to do, and opens the sample in one click', async () => {
    await page.getByText('No jobs yet.').waitFor();
    expect(await page.title()).toBe('Jobs - Eavewright');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs-empty');
    await page.getByRole('button', { name: 'Open the sample job' }).click();
    await page.waitForURL(/#\/jobs\/./);
    await goToJobs();
    await page.getByRole('table', { name: 'Jobs' }).waitFor();
    expect(await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(1);
  });

  test('shows no key in the address once the page is open', () => {
    expect(page.url()).not.toContain('t=');
  });

  test('asks a new job for its name, says what is wrong with none, and opens the job', async () => {
    await page.getByRole('button', { name: 'New job' }).click();
    const name = page.getByRole('textbox', { name: 'Name of the job' });
    expect(await name.evaluate((input) => input === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    const problem = page.getByText('Give the job a name, such as the family and the street.');
    await problem.waitFor();
    expect(await name.getAttribute('aria-invalid')).toBe('true');
    expect(await name.getAttribute('aria-describedby')).toContain(await problem.getAttribute('id'));
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs-new');
    await name.fill('Ostrander porch');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#\/jobs\/./);
    await goToJobs();
    await row('Ostrander porch').waitFor();
  });

  test('finds a job by a part of its name, and says so where none fits', async () => {
    const search = page.getByRole('searchbox', { name: 'Search name, customer or address' });
    await search.fill('ostr');
    await expect.poll(() => page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(1);
    await search.fill('nobody of that name');
    await page.getByText('No job has "nobody of that name" in its name, customer or address.').waitFor();
    await page.getByRole('button', { name: 'Show all again' }).click();
    await expect.poll(() => page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(2);
  });

  test('copies a job under another name', async () => {
    await page.getByRole('button', { name: 'What to do with Ostrander porch' }).click();
    await page.getByRole('menuitem', { name: 'Copy the job' }).click();
    await page.getByRole('textbox', { name: 'Name of the job' }).fill('Ostrander back porch');
    await page.getByRole('button', { name: 'Make the copy' }).click();
    await page.waitForURL(/#\/jobs\/./);
    await goToJobs();
    await row('Ostrander back porch').waitFor();
    expect(await row('Ostrander').count()).toBe(2);
  });

  test('puts a job away and brings it back', async () => {
    await page.getByRole('button', { name: 'What to do with Ostrander porch' }).click();
    await takePictures(page, 'jobs-menu');
    await page.getByRole('menuitem', { name: 'Archive' }).click();
    await page.getByText('Ostrander porch is archived.').waitFor();
    await row('Ostrander porch').waitFor({ state: 'detached' });
    await page.getByText('Show archived jobs', { exact: true }).click();
    await row('Ostrander porch').waitFor();
    await page.getByRole('button', { name: 'What to do with Ostrander porch' }).click();
    await page.getByRole('menuitem', { name: 'Bring back from the archive' }).click();
    await page.getByText('No job is archived.').waitFor();
    await page.getByText('Show archived jobs', { exact: true }).click();
    await row('Ostrander porch').waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs');
  });

  test('moves a job to another machine by a file', async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'What to do with Ostrander back porch' }).click();
    await page.getByRole('menuitem', { name: 'Export to a job file' }).click();
    const path = await (await download).path();
    const before = await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count();
    await page.locator('input[type=file]').setInputFiles(path);
    await page.waitForURL(/#\/jobs\/./);
    await goToJobs();
    await expect
      .poll(() => page.getByRole('table', { name: 'Jobs' }).getByRole('link').count())
      .toBe(before + 1);
  });

  test('says what is wrong with a file that is no job, and imports nothing', async () => {
    const before = await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count();
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"rafters":') });
    await page.getByText(/Not done\./).waitFor();
    await page.getByText(/The file is not JSON/).waitFor();
    expect(await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(before);
  });
});
