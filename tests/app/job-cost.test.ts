import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

let page: Page;
const patient = { timeout: 60_000 };
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('link', { name: 'Job cost', exact: true }).click();
});
afterEach(() => watched.mustBeQuiet());

test('a job without an accepted quote says how it comes to a budget', async () => {
  await page.getByText(/No quote of this job is accepted/).waitFor(patient);
  await page
    .getByText(/No quote of this job is accepted/)
    .getByRole('link')
    .click();
  await page.getByRole('button', { name: 'Make a quote' }).click(patient);
  await page.getByRole('button', { name: 'Mark as sent' }).click(patient);
  await page.getByRole('button', { name: 'Accepted…' }).click(patient);
  await page.getByRole('button', { name: 'Note it' }).click(patient);
  await page.getByText(/Accepted \d{4}/).waitFor(patient);
  await page.getByRole('link', { name: 'Job cost', exact: true }).click();
  await page
    .getByRole('row', { name: /^Framing/ })
    .first()
    .waitFor(patient);
  expect(await page.getByText(/No quote of this job is accepted/).count()).toBe(0);
});

test('the day’s hours of two people are entered at once, and a slip stands at its field with nothing lost', async () => {
  await page.getByRole('textbox', { name: 'Who', exact: true }).first().fill('Ardith');
  await page.getByRole('textbox', { name: 'Hours', exact: true }).first().fill('7.5');
  await page.getByRole('button', { name: 'Another line' }).click();
  await page.getByRole('textbox', { name: 'Who', exact: true }).nth(1).fill('Bram');
  await page.getByRole('textbox', { name: 'Hours', exact: true }).nth(1).fill('eight');
  await page.getByRole('button', { name: 'Save the day' }).click();
  await page.getByText(/"eight" is not a number/).waitFor(patient);
  expect(await page.getByRole('textbox', { name: 'Hours', exact: true }).first().inputValue()).toBe('7.5');
  await page.getByRole('textbox', { name: 'Hours', exact: true }).nth(1).fill('8');
  await page.keyboard.press('Enter');
  await page.getByText(/2 entries of .* saved/).waitFor(patient);
  // $34 an hour with 35 % burden: 15.5 h cost $711.45, in the table $711.
  await page.getByRole('row', { name: /Framing .*\$711/ }).waitFor(patient);
});

test('a receipt takes its lines from what the quote buys and counts at once', async () => {
  await page.getByRole('button', { name: 'Receipt', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText('From the purchase list').click();
  await dialog.getByRole('checkbox').first().check();
  await dialog.getByRole('checkbox').nth(1).check();
  await dialog.getByRole('textbox', { name: 'Its number' }).fill('A-1043');
  expect(await dialog.getByRole('textbox', { name: 'From' }).inputValue()).not.toBe('');
  await takePictures(page, 'job-cost-receipt');
  expect(await accessFaults(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText(/Receipt of .* saved/).waitFor(patient);
  await page.getByRole('row', { name: /A-1043/ }).waitFor(patient);
});

test('how far a phase is comes from what is counted, and the forecast follows', async () => {
  const field = page.getByRole('textbox', { name: 'Framing, tails set' });
  await field.fill('10');
  await page.getByRole('button', { name: 'Note it: Framing' }).click();
  await page.getByText('Framing: noted.').waitFor(patient);
  await page
    .getByRole('row', { name: /^Framing .* % / })
    .first()
    .waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-cost');
});

test('corrected hours stay in the list, struck through', async () => {
  await page.getByRole('heading', { name: 'Hours that were entered' }).click();
  await page.getByRole('button', { name: /^Correct… Bram/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'Hours' }).fill('6');
  await dialog.getByRole('button', { name: 'Save the correction' }).click();
  await page
    .getByText(/corrected \d{4}/)
    .first()
    .waitFor(patient);
  await page.getByRole('row', { name: /Bram .*6 .*\$275\.40/ }).waitFor(patient);
  expect(await page.getByRole('row', { name: /Bram .*8 .*\$367\.20/ }).count()).toBe(1);
});
