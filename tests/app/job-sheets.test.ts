import { expect, test } from 'vitest';
import { goToSection, openSample } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

/** Errors in the console alone: the browser's PDF viewer asks for its own parts, which are none of ours. */
const errors: string[] = [];

const watched = programInBrowser(async (page) => {
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await openSample(page);
});

test('each sheet is previewed and saved as a PDF for letter and A4', async () => {
  const { page } = watched;
  await goToSection(page, 'Sheets');
  for (const sheet of ['Takeoff', 'Cut list', 'Layout sheet', 'Seat templates', 'Quote', 'Calculation']) {
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
