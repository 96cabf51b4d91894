import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { launchBrowser } from './browser.ts';
import { goToSection, openSample } from './job-hands.ts';
import { type RunningProgram, startProgram } from './running-program.ts';
import { accessFaults, openPage, takePictures, type WatchedPage } from './watched-page.ts';

let program: RunningProgram;
let browser: Browser;
let watched: WatchedPage;
/** Errors in the console alone: the browser's PDF viewer asks for its own parts, which are none of ours. */
const errors: string[] = [];

beforeAll(async () => {
  [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
  watched = await openPage(browser, program.address);
  watched.page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await openSample(watched.page);
});

vi.setConfig({ testTimeout: 120_000 });

afterAll(async () => {
  await browser?.close();
  await program?.remove();
});

test('each sheet is previewed and saved as a PDF for letter and A4', async () => {
  const { page } = watched;
  await goToSection(page, 'Sheets');
  for (const sheet of ['Takeoff', 'Cut list', 'Quote', 'Calculation']) {
    for (const paper of ['Letter', 'A4']) {
      await page.getByRole('button', { name: /Sheet$/ }).click();
      await page.getByRole('option', { name: sheet }).click();
      await page.getByRole('button', { name: /Paper$/ }).click();
      await page.getByRole('option', { name: new RegExp(`^${paper}`) }).click();
      await page.getByText(/\.pdf, \d+ pages?$/).waitFor({ timeout: 30_000 });
      await page.locator('iframe.sheet-preview').waitFor();
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save as PDF' }).click(),
      ]);
      const chunks: Buffer[] = [];
      for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
      expect(Buffer.concat(chunks).subarray(0, 5).toString('latin1')).toBe('%PDF-');
      expect(download.suggestedFilename()).toMatch(/\.pdf$/);
    }
  }
  await page.waitForTimeout(800);
  await takePictures(page, 'job-sheets');
  expect(await accessFaults(page)).toEqual([]);
  expect(errors).toEqual([]);
}, 120_000);
