import { expect, test } from 'vitest';
import { allSaved, entryAt, openSample, typeEntry } from './job-hands.ts';
import { openPage } from './watched-page.ts';
import { programAndBrowser } from './program-in-browser.ts';
import { startProgram } from './running-program.ts';

const running = programAndBrowser();

test('nothing typed is lost when the program is killed, not even a half-typed entry', async () => {
  const watched = await openPage(running.browser, running.program.address);
  const { page } = watched;
  await openSample(page);
  await typeEntry(page, 'survey.eaves.0.rafters.0.note', 'split at the plate');
  await entryAt(page, 'survey.eaves.0.windowHeadBelowPlateIn').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(`1' 3-`, { delay: 15 });
  await allSaved(page);
  const { folder } = running.program;
  await running.program.kill();

  // The page goes on: what is typed now stays on the screen, is said not to be saved, and can be kept as a file.
  await typeEntry(page, 'survey.eaves.0.rafters.1.note', 'typed after the end');
  await page.getByText('Not saved yet').waitFor();
  // The foot says it too, where the head of the screen is out of sight.
  await page.locator('.standing', { hasText: 'Not saved: Eavewright does not answer.' }).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Keep a copy as a file' }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  const kept = JSON.parse(Buffer.concat(chunks).toString('utf8')) as {
    survey: { eaves: { rafters: { note: string }[] }[] };
    job: { notes: string };
  };
  expect(kept.survey.eaves[0]?.rafters[1]?.note).toBe('typed after the end');
  expect(kept.job.notes).toContain(`survey.eaves.0.windowHeadBelowPlateIn: 1' 3-`);
  await watched.close();

  running.goOnWith(await startProgram(folder));
  const again = await openPage(running.browser, running.program.address);
  await again.page.getByRole('link', { name: 'Quillfeather house, two eaves' }).click();
  await entryAt(again.page, 'survey.eaves.0.rafters.0.note').waitFor();
  expect(await entryAt(again.page, 'survey.eaves.0.rafters.0.note').inputValue()).toBe('split at the plate');
  expect(await entryAt(again.page, 'survey.eaves.0.windowHeadBelowPlateIn').inputValue()).toBe(`1' 3-`);
  again.mustBeQuiet();
  await again.close();
});

test('what is typed while the program does not answer is saved once it answers again', async () => {
  const watched = await openPage(running.browser, running.program.address);
  const { page } = watched;
  await page.getByRole('link', { name: 'Quillfeather house, two eaves' }).click();
  await entryAt(page, 'survey.eaves.0.rafters.2.note').waitFor();
  running.program.freeze();
  await typeEntry(page, 'survey.eaves.0.rafters.2.note', 'typed in the silence');
  await page.locator('.saved-line.saved-saving').waitFor();
  running.program.thaw();
  await allSaved(page);
  await page.reload();
  await entryAt(page, 'survey.eaves.0.rafters.2.note').waitFor();
  expect(await entryAt(page, 'survey.eaves.0.rafters.2.note').inputValue()).toBe('typed in the silence');
  await watched.close();
});

test('a second window’s change is never written over unasked', async () => {
  const [one, two] = [
    await openPage(running.browser, running.program.address),
    await openPage(running.browser, running.program.address),
  ] as const;
  for (const { page } of [one, two]) {
    await page.getByRole('link', { name: 'Quillfeather house, two eaves' }).click();
    await entryAt(page, 'survey.eaves.0.rafters.3.note').waitFor();
  }
  await typeEntry(one.page, 'survey.eaves.0.rafters.3.note', 'from the first window');
  await allSaved(one.page);
  // The second window hears of it at once, and takes it while nothing there waits to be saved.
  await expect
    .poll(() => entryAt(two.page, 'survey.eaves.0.rafters.3.note').inputValue())
    .toBe('from the first window');
  // The second window's save is held on its way until the first's has arrived.
  const firstSaved = Promise.withResolvers<void>();
  await two.page.route('**/api/jobs.save', async (route) => {
    await firstSaved.promise;
    await route.continue();
  });
  await typeEntry(two.page, 'survey.eaves.0.rafters.4.note', 'from the second window');
  await typeEntry(one.page, 'survey.eaves.0.rafters.3.note', 'changed again in the first');
  await allSaved(one.page);
  firstSaved.resolve();
  const told = two.page.locator('.saved-line', { hasText: 'was changed in another window' });
  await told.waitFor();
  expect(await told.innerText()).toContain('Take the other version');
  expect(await told.innerText()).toContain('keep this one');
  await two.page.locator('.standing', { hasText: 'Not saved: changed in another window.' }).waitFor();
  await two.page.getByRole('button', { name: 'Take the other version' }).click();
  await expect
    .poll(() => entryAt(two.page, 'survey.eaves.0.rafters.3.note').inputValue())
    .toBe('changed again in the first');
  await one.close();
  await two.close();
});
