import { afterEach, describe, expect, test } from 'vitest';
import { sample, sampleText } from '../electron/contract-asker.ts';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

let page: Page;
const watched = programInBrowser((opened) => {
  page = opened;
});
afterEach(() => watched.mustBeQuiet());

const row = (name: string) => page.getByRole('row').filter({ hasText: name });
const rowInFocus = () =>
  page.evaluate(() => document.activeElement?.closest<HTMLElement>('tbody tr')?.innerText ?? '');
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
    await expect.poll(rowInFocus).toContain('Quillfeather');
    await page.getByText('Show archived jobs', { exact: true }).click();
    await row('Ostrander porch').getByText('archived', { exact: true }).waitFor();
    expect(await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(3);
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs-archived');
    await page.getByRole('button', { name: 'What to do with Ostrander porch' }).click();
    await page.getByRole('menuitem', { name: 'Bring back from the archive' }).click();
    await row('Ostrander porch').getByText('archived', { exact: true }).waitFor({ state: 'detached' });
    await expect.poll(rowInFocus).toContain('Ostrander porch');
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
    await page
      .getByText('x.json was not imported. The file is not a job file: it is not JSON, at line 1.', {
        exact: false,
      })
      .waitFor();
    await takePictures(page, 'jobs-import-not-json');
    expect(await page.getByRole('table', { name: 'Jobs' }).getByRole('link').count()).toBe(before);
    await page.getByRole('alert').getByRole('button', { name: 'Put away' }).click();
    await page.getByText(/x\.json was not imported/).waitFor({ state: 'detached' });
  });

  test('names every fault of a job file with its eave and entry', async () => {
    const file = sampleText
      .replace('"storeys": 1', '"storeys": 9')
      .replace(/"readingIn": "?[^,}]+/, '"readingIn": "2 cubits"');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'two.json', mimeType: 'application/json', buffer: Buffer.from(file) });
    const faults = page.getByRole('alert').getByRole('listitem');
    await faults.first().waitFor();
    expect((await faults.allInnerTexts()).sort()).toEqual([
      'Survey, eave 1, rafter 1, reading: "2 cubits" is not a length. Write it like 5\' 6-1/2", 66-1/2, 5-6-8/16 or 1690 mm.',
      expect.stringMatching(/^Survey, storeys: Enter .* or less\.$/),
    ]);
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs-import-faults');
    await page.getByRole('alert').getByRole('button', { name: 'Put away' }).click();
  });

  test('marks an estimate that lacks something', async () => {
    const file = sampleText.replace(/"wageUsdPerHour": "[^"]+"/, '"wageUsdPerHour": "0"');
    const job = JSON.parse(file) as { job: { name: string }; design: { eaves: { extender: object }[] } };
    job.job.name = 'Lacking lumber';
    for (const eave of job.design.eaves) Object.assign(eave.extender, { grade: 'Unpriced' });
    await page.locator('input[type=file]').setInputFiles({
      name: 'lacking.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(job)),
    });
    await page.waitForURL(/#\/jobs\/./);
    await page
      .getByRole('navigation', { name: 'Sections of the job' })
      .getByRole('link', { name: /Estimate/ })
      .click();
    await page.getByRole('button', { name: 'Save this estimate' }).click();
    await page.getByText(/was saved as it stands/).waitFor();
    await goToJobs();
    const missing = row('Lacking lumber').getByText(/missing$/);
    await missing.waitFor();
    expect(await missing.innerText()).toMatch(/^[1-9]\d* figures? missing$/);
    await takePictures(page, 'jobs-lacking');
  });

  test.each(['light', 'dark'] as const)(
    'lets a keyboard come to a list of commands that is longer than its place, in the %s',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      await row(sample.job.name).getByRole('link').click();
      await page.waitForURL(/#\/jobs\/./);
      await page.getByText('Figures follow from what is typed.').waitFor();
      await page.keyboard.press('Control+k');
      const box = page.getByRole('dialog', { name: 'All commands' }).locator('.palette');
      await expect
        .poll(() => box.evaluate((element) => element.scrollHeight > element.clientHeight))
        .toBe(true);
      expect(await accessFaults(page)).toEqual([]);
      await takePictures(page, `palette-${colorScheme}`);
      // From the first upwards is the last.
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => box.evaluate((element) => element.scrollTop)).toBeGreaterThan(0);
      await page.keyboard.press('Tab');
      expect(await box.evaluate((element) => element === document.activeElement)).toBe(true);
      await page.keyboard.press('Escape');
      await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
      await goToJobs();
      await page.emulateMedia({ colorScheme: 'light' });
    },
  );

  test('puts away what was not done, and leaves it behind with the job, clear of the line at its foot', async () => {
    await row(sample.job.name).getByRole('link').click();
    await page.getByText('Figures follow from what is typed.').waitFor();
    const save = async () => {
      await page.route('**/api/estimates.save', (route) =>
        route.fulfill({ json: { ok: false, problem: { code: 'disk-full' } } }),
      );
      await page
        .getByRole('navigation', { name: 'Sections of the job' })
        .getByRole('link', { name: /Estimate/ })
        .click();
      await page.getByRole('button', { name: 'Save this estimate' }).click();
      await page.getByText('Not done.').waitFor();
      await page.unroute('**/api/estimates.save');
    };
    await save();
    await takePictures(page, 'job-notice');
    const notice = await page.locator('.notice-problem').boundingBox();
    const foot = await page.locator('.standing').boundingBox();
    expect((notice?.y ?? 0) + (notice?.height ?? 0)).toBeLessThanOrEqual(foot?.y ?? 0);
    await page.locator('.notice-problem').getByRole('button', { name: 'Put away' }).click();
    await page.getByText('Not done.').waitFor({ state: 'detached' });
    await save();
    await goToJobs();
    await page.getByText('Not done.').waitFor({ state: 'detached' });
  });
});
