import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goToSection, openSample } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser(openSample);

/** Steps down from the open walk, by keyboard, through the first part whose ref starts as wanted. */
async function stepTo(page: Page, refStart: string): Promise<void> {
  const part = page.locator(`.walk .figure[data-ref^="${refStart}"]`).first();
  await part.focus();
  await page.keyboard.press('Enter');
}

test('the total is walked back, step by step and by keyboard alone, to a tape reading and its entry', async () => {
  const { page } = watched;
  await goToSection(page, 'Estimate');
  await page.locator('.figure[data-ref="total/total"]').focus();
  await page.keyboard.press('Enter');
  const walk = page.getByRole('complementary', { name: 'Where the figure comes from' });
  await walk.waitFor();
  await takePictures(page, 'job-walk-total');
  expect(await accessFaults(page)).toEqual([]);
  const steps = [
    'total/price',
    'total/direct',
    'total/labour',
    'cost/labour-survey-rafters',
    'line/labour-survey-rafters',
    'eave/south/rafters',
    'reading/south/s1',
  ];
  for (const ref of steps) await stepTo(page, ref);
  expect(await walk.getByRole('heading').innerText()).toMatch(/^Tape reading at rafter 1/);
  expect(await walk.locator('.walk-value').innerText()).toBe('7/8"');
  // The way here stands above, one line a step.
  expect(await walk.getByRole('listitem').count()).toBe(steps.length);
  await walk.getByRole('button', { name: 'Go to entry' }).focus();
  await page.keyboard.press('Enter');
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-path')))
    .toBe('survey.eaves.0.rafters.0.readingIn');
  watched.mustBeQuiet();
});

test('a piece is walked back over its section and station, and the way back up is open', async () => {
  const { page } = watched;
  await goToSection(page, 'Takeoff');
  await page.locator('.job-main .figure[data-ref="piece/A-E05"]').click();
  const walk = page.getByRole('complementary', { name: 'Where the figure comes from' });
  for (const ref of ['section/', 'station/', 'reading/']) await stepTo(page, ref);
  expect(await walk.locator('.walk-value').innerText()).toBe(`6' 10-3/8"`);
  await takePictures(page, 'job-walk-reading');
  expect(await accessFaults(page)).toEqual([]);
  await walk.getByRole('listitem').first().getByRole('button').click();
  expect(await walk.getByRole('heading').innerText()).toContain('A-E05');
  expect(await walk.getByRole('listitem').count()).toBe(0);
  await page.keyboard.press('Escape');
  expect(await walk.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-ref'))).toBe('piece/A-E05');
  watched.mustBeQuiet();
});

test('each figure of takeoff, cut plan and estimate opens what it was made of', async () => {
  const { page } = watched;
  for (const section of ['Takeoff', 'Cut plan', 'Estimate']) {
    await goToSection(page, section);
    await page.locator('.job-main .figure').first().waitFor();
    const refs = await page
      .locator('.job-main .figure')
      .evaluateAll((figures) => figures.map((figure) => figure.getAttribute('data-ref') ?? ''));
    expect(refs.length).toBeGreaterThan(20);
    // One of each kind and some more; every ref of the job is walked in tests/trace.
    const some = refs.filter((ref, index) => index % 25 === 0 || ref.startsWith('total/'));
    for (const ref of some) {
      await page.locator(`.job-main .figure[data-ref="${ref}"]`).first().click();
      const title = page.locator('.walk-title');
      await title.waitFor();
      expect(`${ref}: ${await title.innerText()}`).not.toContain('Not in the figures');
    }
  }
  watched.mustBeQuiet();
});
