import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allSaved, entryAt, figuresFollow, goToSection, openSample, typeEntry, unfold } from './job-hands.ts';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

const watched = programInBrowser(async (page) => {
  await openSample(page);
  await goToSection(page, 'Design');
  await grips(page).first().waitFor();
});

/** The tails on the plan, from left to right. */
function grips(page: Page): Locator {
  return page.locator('.tail-grip');
}

/** What each tail on the plan says of itself: its mark, where it stands and why. */
function tailsSaid(page: Page): Promise<readonly string[]> {
  return grips(page).evaluateAll((all) => all.map((grip) => grip.getAttribute('aria-label') ?? ''));
}

function grip(page: Page, mark: string): Locator {
  return page.locator(`.tail-grip[aria-label^="${mark},"]`);
}

/** The tail taken up, as the live line under the plan says it. */
function said(page: Page): Promise<string> {
  return page.locator('.tail-said').innerText();
}

async function undo(page: Page): Promise<void> {
  await page.keyboard.press('ControlOrMeta+Z');
}

/** Takes hold of a tail in its middle and brings it along the wall, without letting go. */
async function drag(page: Page, mark: string, byPx: number): Promise<void> {
  const box = await grip(page, mark).boundingBox();
  if (box === null) throw new Error(`${mark} is not on the plan`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 8; step += 1) await page.mouse.move(x + (byPx * step) / 8, y);
}

function stationSaid(text = ''): string {
  return /at .*?, hung/.exec(text)?.[0] ?? '';
}

test('the wheel scales the plan about the pointer', async () => {
  const { page } = watched;
  const e07 = grip(page, 'A-E07');
  await e07.scrollIntoViewIfNeeded();
  const before = await e07.boundingBox();
  if (before === null) throw new Error('the tail is on the plan');
  const [x, y] = [before.x + before.width / 2, before.y + before.height / 2];
  await page.mouse.move(x, y);
  await page.keyboard.down('Control');
  for (let turn = 0; turn < 3; turn += 1) await page.mouse.wheel(0, -100);
  await page.keyboard.up('Control');
  await expect.poll(async () => (await e07.boundingBox())?.height ?? 0).toBeGreaterThan(before.height * 1.2);
  const after = await e07.boundingBox();
  expect(Math.abs((after?.x ?? 0) + (after?.width ?? 0) / 2 - x)).toBeLessThan(6);
  await page.getByRole('button', { name: 'Fit the drawing' }).first().click();
  await expect.poll(async () => (await e07.boundingBox())?.height ?? 0).toBeCloseTo(before.height, 0);
});

test('a tail is dragged into a bay: the rest is laid out as it goes, and undo brings all of it back', async () => {
  const { page } = watched;
  const before = await tailsSaid(page);
  // Rafter 8's tail stands left of it; to its left lies a bay of over a foot.
  await drag(page, 'A-E08', -24);
  const flag = page.locator('.tail-flag');
  await flag.waitFor();
  expect(await flag.innerText()).toMatch(/^1\d' .*", hung$/);
  // Nothing is changed before it is let go.
  expect(await page.getByRole('button', { name: 'Nothing to undo' }).count()).toBe(1);
  await takePictures(page, 'job-layout-drag');
  await page.mouse.up();
  await expect.poll(() => said(page)).toMatch(/^A-T\d\d, at 1\d' .*", hung on header blocks\. Pinned\.$/);
  await figuresFollow(page);
  expect(await page.locator('.tail-table').innerText()).toContain('None wanted');
  await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(before);
  await allSaved(page);
  watched.mustBeQuiet();
});

test('Escape lets a drag be', async () => {
  const { page } = watched;
  const before = await tailsSaid(page);
  await drag(page, 'A-E08', -24);
  await page.locator('.tail-flag').waitFor();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect.poll(() => tailsSaid(page)).toEqual(before);
  expect(await page.getByRole('button', { name: 'Nothing to undo' }).count()).toBe(1);
});

test('near the side of a rafter a dragged tail is drawn to it, there on a filler where a joist lies', async () => {
  const { page } = watched;
  // On the right of rafter 3 lies a ceiling joist.
  await drag(page, 'A-E03', 9);
  await expect.poll(() => page.locator('.tail-flag').innerText()).toMatch(/^3' .*", right of 3$/);
  await page.mouse.up();
  await expect
    .poll(() => said(page))
    .toMatch(/^A-E03, right of rafter 3 .*, on a filler, joist between\. Pinned\.$/);
  await undo(page);
  await expect.poll(() => said(page)).toMatch(/^A-E03, left of rafter 3 /);
  watched.mustBeQuiet();
});

test('a clash shows at once where it is, by shape and words', async () => {
  const { page } = watched;
  await page.getByLabel('Method of the tail at rafter 11').selectOption('side');
  const flag = page.locator('.tail-flag-clash');
  await flag.waitFor();
  expect(await flag.innerText()).toMatch(/^▲ .*ceiling joist/);
  expect(await page.locator('.tail-clash').first().innerText()).toMatch(/▲ Clash: .*ceiling joist/);
  await grip(page, 'A-E11').focus();
  expect(await said(page)).toMatch(/^A-E11, .* Pinned\. Clash: .*ceiling joist/);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-layout-clash');
  await undo(page);
  await expect.poll(() => flag.count()).toBe(0);
  watched.mustBeQuiet();
});

test('by keyboard alone a tail is hung, moved by sixteenths and inches, and taken away', async () => {
  const { page } = watched;
  await grips(page).first().focus();
  const names = await tailsSaid(page);
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => said(page)).toBe(names[1]);
  await page.keyboard.press('Insert');
  await expect.poll(() => said(page)).toMatch(/^A-T01, at 2' \d.*, hung on header blocks\. Pinned\.$/);
  // The focus goes along, so that the next key moves the new tail.
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-tail'))).toBe('t1');
  const from = await stationOf(page);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => stationOf(page)).toBeCloseTo(from + 1 / 16, 9);
  await page.keyboard.press('Shift+ArrowLeft');
  await expect.poll(() => stationOf(page)).toBeCloseTo(from + 1 / 16 - 1, 9);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-layout-hung');
  await page.keyboard.press('Delete');
  await expect.poll(() => tailsSaid(page)).toEqual(names);
  for (let step = 0; step < 4; step += 1) await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(names);
  await figuresFollow(page);
  watched.mustBeQuiet();
});

test('the menu of a tail pins it, chooses side and method, and releases it', async () => {
  const { page } = watched;
  await grip(page, 'A-E07').focus();
  await page.keyboard.press('Enter');
  const menu = page.getByRole('menu', { name: 'What can be done with the tail' });
  await menu.waitFor();
  expect(await menu.getByRole('menuitem', { name: 'Right of the rafter' }).innerText()).toContain('now');
  await takePictures(page, 'job-layout-menu');
  await menu.getByRole('menuitem', { name: 'Left of the rafter' }).click();
  await expect.poll(() => said(page)).toMatch(/^A-E07, left of rafter 7 .* Pinned\./);
  // The table says and does the same.
  const side = page.getByLabel('Side of the tail at rafter 7');
  expect(await side.inputValue()).toBe('left');
  await page.getByLabel('Method of the tail at rafter 7').selectOption('full-length');
  await expect.poll(() => said(page)).toContain('full length');
  await page.locator('.tail-bar').getByRole('button', { name: 'Release' }).click();
  await expect.poll(() => said(page)).toMatch(/^A-E07, right of rafter 7 .* Preferred side\.$/);
  expect(await side.inputValue()).toBe('free');
  await grip(page, 'A-E07').focus();
  await page.keyboard.press('ControlOrMeta+K');
  await page
    .getByRole('dialog')
    .getByRole('menuitem', { name: /Pin it as it stands/ })
    .click();
  await expect.poll(() => said(page)).toMatch(/^A-E07, .* Pinned\.$/);
  for (let step = 0; step < 4; step += 1) await undo(page);
  await expect.poll(() => said(page)).toMatch(/Preferred side\.$/);
  watched.mustBeQuiet();
});

test('a typed station moves a tail; one in a rafter is answered at the entry and stays as typed', async () => {
  const { page } = watched;
  const before = await tailsSaid(page);
  const entry = page.getByRole('textbox', { name: 'Station of A-E07', exact: true });
  await entry.fill(`10' 2`);
  await page.keyboard.press('Enter');
  await page
    .getByText(/Rafter 7 stands there\. Against its sides a tail stands at 10' .* or 10' 3-1\/2"\./)
    .first()
    .waitFor();
  expect(await entry.inputValue()).toBe(`10' 2`);
  expect(await tailsSaid(page)).toEqual(before);
  await entry.fill('nine');
  await page.keyboard.press('Enter');
  await page.getByText('"nine" is not a length.').first().waitFor();
  await entry.fill(`9' 2`);
  await page.keyboard.press('Enter');
  await expect.poll(() => said(page)).toMatch(/^A-T\d\d, at 9' 2", hung on header blocks\. Pinned\.$/);
  await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(before);
  watched.mustBeQuiet();
});

test('a bay takes a tail by its table, and one that the program would hang is kept out', async () => {
  const { page } = watched;
  const before = await tailsSaid(page);
  await page
    .getByRole('button', { name: /^Hang a tail in A-B/, disabled: false })
    .nth(2)
    .click();
  await expect.poll(async () => (await tailsSaid(page)).length).toBe(before.length + 1);
  await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(before);
  // With tails no further apart than 20 in. the program hangs some of its own.
  await unfold(page, 'Layout');
  await typeEntry(page, 'design.eaves.0.layout.largestGapIn', '20');
  await figuresFollow(page);
  const closer = await tailsSaid(page);
  const own = closer.findIndex((text) => text.includes('hung on header blocks. For'));
  expect(own).toBeGreaterThan(0);
  await grips(page).nth(own).focus();
  await page.keyboard.press('Delete');
  await expect
    .poll(async () => (await tailsSaid(page)).map((text) => stationSaid(text)))
    .not.toContain(stationSaid(closer[own]));
  expect(
    await page
      .getByLabel(/^Let the program hang no tail in/, { exact: false })
      .evaluateAll((all) => all.filter((box) => box instanceof HTMLInputElement && box.checked).length),
  ).toBe(1);
  await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(closer);
  await undo(page);
  await expect.poll(() => tailsSaid(page)).toEqual(before);
  watched.mustBeQuiet();
});

test('readings of the wall from a string change the tails’ own overhangs, and what does not read is answered', async () => {
  const { page } = watched;
  const overhangs = () =>
    page
      .locator('.tail-table .own-overhang')
      .evaluateAll((all) => all.map((cell) => cell.textContent?.replace(/^.*: /, '') ?? ''));
  await figuresFollow(page);
  const before = await overhangs();
  expect(new Set(before).size).toBe(1);
  await goToSection(page, 'Survey');
  await unfold(page, 'Wall from a string');
  const next = page.getByLabel('The wall, next station');
  await next.fill(`0`);
  await page.keyboard.press('Enter');
  await page.keyboard.type(`17' 2`);
  await page.keyboard.press('Tab');
  await page.keyboard.type('3/4');
  await page.keyboard.press('Tab');
  expect(await entryAt(page, 'survey.eaves.0.wallReadings.1.outIn').inputValue()).toBe('3/4"');
  await next.fill(`34' 4-1/2`);
  await page.keyboard.press('Tab');
  await page.keyboard.type('-1/2"');
  await page.keyboard.press('Tab');
  expect(await entryAt(page, 'survey.eaves.0.wallReadings.2.outIn').inputValue()).toBe('-1/2"');
  await figuresFollow(page);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-layout-wall');
  await entryAt(page, 'survey.eaves.0.wallReadings.2.outIn').fill('a bit');
  await page.getByText('"a bit" is not a length.').first().waitFor();
  await entryAt(page, 'survey.eaves.0.wallReadings.2.outIn').fill('-1/2');
  await figuresFollow(page);
  await goToSection(page, 'Design');
  const bowed = await overhangs();
  // 3/4 in. out in the middle leaves the tail there 3/4 in. short of the 16 stated; 1/2 in. in at the end makes it long.
  expect(bowed[0]).toBe(`1' 4"`);
  expect(bowed.filter((text) => text === `1' 3-1/4"` || text === `1' 3-5/16"`)).not.toEqual([]);
  expect(bowed.at(-1)).toBe(`1' 4-1/2"`);
  await page.getByRole('tab', { name: 'Wave' }).click();
  await takePictures(page, 'job-layout-wave');
  watched.mustBeQuiet();
});

test('what was built is typed back: the station moves, the tail is no longer to be cut, and undo takes it back', async () => {
  const { page } = watched;
  await unfold(page, 'As built');
  const panel = page.locator('details', { has: page.getByRole('heading', { name: 'As built' }) });
  const left = () => panel.locator('.panel-note').innerText();
  expect(await left()).toMatch(/^0 of \d+ tails are in place;/);
  const station = page.getByLabel('As-built station of A-E02');
  const laidOut = await panel
    .getByRole('row', { name: /^A-E02/ })
    .getByRole('cell')
    .nth(0)
    .innerText();
  expect(laidOut).toBe(`1' 5-3/4"`);
  await station.fill(`1' 6`);
  await page.keyboard.press('Enter');
  await expect.poll(left).toMatch(/^1 of \d+ tails are in place;/);
  // Enter went on to the next tail, as one reads down the sheet.
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(
    /^As-built station of A-[ET]0[1-3]$/,
  );
  expect(await panel.getByRole('row', { name: /^A-E02/ }).innerText()).toContain('1/4" right');
  await expect.poll(() => grip(page, 'A-E02').getAttribute('aria-label')).toMatch(/As built\..* In place\./);
  await page.getByLabel('A-E03 is in place').check();
  await expect.poll(left).toMatch(/^2 of \d+ tails are in place;/);
  await page.getByLabel('Note on A-E03', { exact: true }).fill('crown down');
  await page.keyboard.press('Tab');
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-layout-as-built');
  await goToSection(page, 'Sheets');
  await goToSection(page, 'Design');
  expect(await page.getByLabel('Note on A-E03', { exact: true }).inputValue()).toBe('crown down');
  // The station, the mark and the note, each a step of its own or two, as the note is typed and settled.
  for (let step = 0; step < 4 && !(await left()).startsWith('0 of'); step += 1) await undo(page);
  await expect.poll(left).toMatch(/^0 of \d+ tails are in place;/);
  await allSaved(page);
  watched.mustBeQuiet();
});

test('section and nails are cut at any station, typed or by steps', async () => {
  const { page } = watched;
  await page.getByRole('tab', { name: 'Section' }).click();
  const station = page.getByLabel('Station to draw');
  await station.fill(`12'`);
  await page.keyboard.press('Enter');
  await page.locator('svg.drawing title', { hasText: /^Section at A-E08/ }).waitFor({ state: 'attached' });
  await page.getByLabel('Station along the wall').focus();
  await page.keyboard.press('ArrowRight');
  await page.locator('svg.drawing title', { hasText: /^Section at A-E09/ }).waitFor({ state: 'attached' });
  await page.getByRole('tab', { name: 'Nails' }).click();
  await page.locator('svg.drawing title', { hasText: /^Nails of A-E09/ }).waitFor({ state: 'attached' });
  for (const name of ['Fascia', 'Deck', 'Wave', 'Rake R1']) {
    await page.getByRole('tab', { name }).click();
    await page.getByRole('tabpanel').locator('svg.drawing').first().waitFor();
    await takePictures(page, `job-layout-${name.toLowerCase().replace(' ', '-')}`);
  }
  expect(await page.getByRole('tab', { selected: true }).last().innerText()).toBe('Rake R1');
  watched.mustBeQuiet();
});

test('the layout shows without complaint in the dark', async () => {
  const { page } = watched;
  await page.evaluate(() => window.scrollTo(0, 0));
  await grip(page, 'A-E07').click();
  await takePictures(page, 'job-layout');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-layout-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  watched.mustBeQuiet();
});

/** The station of the tail taken up, as it is told. [in] */
async function stationOf(page: Page): Promise<number> {
  const [, feet = '0', inches = '0', top = '0', bottom = '1'] =
    /at (?:(\d+)' )?(\d+)?-?(?:(\d+)\/(\d+))?"/.exec(await said(page)) ?? [];
  return Number(feet) * 12 + Number(inches) + Number(top) / Number(bottom);
}
