import { expect, test } from 'vitest';
import { entryAt, figuresFollow, focusedPath, goToSection, openSample, typeEntry } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser((page) => openSample(page));

test('a figure of a rake is walked back to its tape reading, and its entry is gone to', async () => {
  const { page } = watched;
  await goToSection(page, 'Design');
  await page.locator('.job-main .figure[data-ref="rake/west/barge"]').first().click();
  const walk = page.getByRole('complementary', { name: 'Where the figure comes from' });
  await walk.waitFor();
  await walk.locator('.figure[data-ref="rake/west/survey/runIn"]').click();
  expect(await walk.locator('.walk-value').innerText()).toBe(`12' 6"`);
  await walk.getByRole('button', { name: 'Go to entry' }).click();
  await expect.poll(() => focusedPath(page)).toBe('survey.rakes.0.runIn');
  await page.keyboard.press('Escape');
});

test('a rake that is added waits for its run, and is drawn with its pieces as soon as it is typed', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  await page.getByRole('button', { name: 'Add a rake at the right end' }).click();
  // The cursor stands where the tape is read next, and nothing is figured with a run that nobody typed.
  await expect.poll(() => focusedPath(page)).toBe('survey.rakes.1.runIn');
  await page.getByText('Figures are from before the last change.').waitFor();
  await typeEntry(page, 'survey.rakes.1.runIn', `12' 6"`);
  await figuresFollow(page);
  await goToSection(page, 'Design');
  await page.getByRole('tab', { name: 'Rake R2' }).click();
  await page
    .getByRole('img', { name: /Rake R2/ })
    .first()
    .waitFor();
  await page.getByRole('heading', { name: /^Pieces of rake R2: 10 lookouts/ }).waitFor();
  expect(await accessFaults(page)).toEqual([]);
});

test('an entry that cannot be built says so at its place, and the last figures stay', async () => {
  const { page } = watched;
  await entryAt(page, 'design.rakes.1.kind').click();
  await page.getByRole('option', { name: 'Ladder' }).click();
  const pieces = page.getByRole('heading', { name: /^Pieces of rake R2: 11 rungs/ });
  await pieces.waitFor();
  await page
    .getByText(/past the wall the rail has only A-E21/)
    .first()
    .waitFor();
  await takePictures(page, 'job-rakes');
  await typeEntry(page, 'design.rakes.1.overhangIn', 'a foot');
  await page.getByText('"a foot" is not a length.').first().waitFor();
  await pieces.waitFor();
  await typeEntry(page, 'design.rakes.1.overhangIn', '4');
  await page
    .getByText(/leaves no room for rungs/)
    .first()
    .waitFor();
  await pieces.waitFor();
  expect(await entryAt(page, 'design.rakes.1.overhangIn').inputValue()).toBe('4"');
  await typeEntry(page, 'design.rakes.1.overhangIn', '9');
  await figuresFollow(page);
});

test('undo takes a rake back with everything that was typed for it', async () => {
  const { page } = watched;
  const undo = page.getByRole('button', { name: /^Undo: / });
  await expect
    .poll(
      async () => {
        if ((await undo.count()) > 0) await undo.click();
        return page.getByRole('tab', { name: 'Rake R2' }).count();
      },
      { timeout: 60_000 },
    )
    .toBe(0);
  await page.getByRole('tab', { name: 'Rake R1' }).waitFor();
  watched.mustBeQuiet();
});
