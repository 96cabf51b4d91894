import { expect, test } from 'vitest';
import { entryAt, figuresFollow, focusedPath, goToSection, openSample, typeEntry } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser((page) => openSample(page));

test('a rake is measured, drawn, changed to a ladder and taken back by undo', async () => {
  const { page } = watched;
  await page.getByRole('button', { name: 'A South eave' }).click();
  await page.getByRole('button', { name: 'Add a rake at the right end' }).click();
  // The cursor stands where the tape is read next, and nothing is figured with a run that nobody typed.
  await expect.poll(() => focusedPath(page)).toBe('survey.rakes.1.runIn');
  await page.getByText('Figures are from before the last change.').waitFor();
  await typeEntry(page, 'survey.rakes.1.runIn', `12' 6"`);
  await figuresFollow(page);

  await goToSection(page, 'Design');
  const drawings = page.getByRole('tab', { name: 'Rake R2' });
  await drawings.click();
  await page
    .getByRole('img', { name: /Rake R2/ })
    .first()
    .waitFor();
  await page.getByRole('heading', { name: /^Pieces of rake R2: 10 lookouts/ }).waitFor();

  await entryAt(page, 'design.rakes.1.kind').click();
  await page.getByRole('option', { name: 'Ladder' }).click();
  await page.getByRole('heading', { name: /^Pieces of rake R2: 11 rungs/ }).waitFor();
  await page
    .getByText(/past the wall the rail has only A-E21/)
    .first()
    .waitFor();
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-rakes');

  // What does not read stays as typed, says what to do, and the last figures stay in view.
  await typeEntry(page, 'design.rakes.1.overhangIn', 'a foot');
  await page
    .getByText(/“a foot” is not a length|"a foot" is not a length/)
    .first()
    .waitFor();
  await page.getByRole('heading', { name: /^Pieces of rake R2: 11 rungs/ }).waitFor();
  await typeEntry(page, 'design.rakes.1.overhangIn', '4');
  await page
    .getByText(/leaves no room for rungs/)
    .first()
    .waitFor();
  await page.getByRole('heading', { name: /^Pieces of rake R2: 11 rungs/ }).waitFor();
  await typeEntry(page, 'design.rakes.1.overhangIn', '9');
  await figuresFollow(page);

  const undo = page.getByRole('button', { name: /^Undo: / });
  await expect
    .poll(async () => {
      if ((await undo.count()) > 0) await undo.click();
      return page.getByRole('tab', { name: 'Rake R2' }).count();
    })
    .toBe(0);
  await page.getByRole('tab', { name: 'Rake R1' }).waitFor();
});

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
  watched.mustBeQuiet();
});
