import { afterEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('link', { name: 'Settings' }).click();
});
afterEach(() => watched.mustBeQuiet());

const part = (name: string) =>
  page.getByRole('navigation', { name: 'Parts of the settings' }).getByRole('link', { name }).click();
const entry = (name: string) => page.getByRole('textbox', { name, exact: true });
const saved = () => page.getByRole('status').getByText('Saved', { exact: true });

describe('the settings', () => {
  test('are saved as one types, and stand there after a reload', async () => {
    await entry('Name of the shop').fill('Ridgeway Eaves');
    await saved().waitFor();
    await page.reload();
    await expect.poll(() => entry('Name of the shop').inputValue()).toBe('Ridgeway Eaves');
    expect(await page.title()).toBe('Settings - Eavewright');
  });

  test("show what was typed in the carpenter's form once the field is left", async () => {
    await part('Saw');
    await entry('Kerf of the saw').fill('3/32');
    await page.keyboard.press('Tab');
    expect(await entry('Kerf of the saw').inputValue()).toBe('3/32"');
    await entry('Cut off each end of a board').fill('.75');
    await page.keyboard.press('Tab');
    expect(await entry('Cut off each end of a board').inputValue()).toBe('3/4"');
    await saved().waitFor();
  });

  test('say at the field what does not read, keep the text, and keep the last good value on the disk', async () => {
    await part('Money');
    await entry('Overhead').fill('18');
    await saved().waitFor();
    await entry('Overhead').fill('18,,5');
    await page.getByText('"18,,5" is not a number. Write plain digits, like 12 or 12.5.').waitFor();
    expect(await entry('Overhead').getAttribute('aria-invalid')).toBe('true');
    await takePictures(page, 'settings-money-problem');
    await part('Shop');
    await part('Money');
    expect(await entry('Overhead').inputValue()).toBe('18,,5');
    await entry('Overhead').fill('18.5');
    await saved().waitFor();
    await page.reload();
    await expect.poll(() => entry('Overhead').inputValue()).toBe('18.5');
  });

  test('refuse a margin of 100 % or more, at the field or by choosing margin, and keep the old value', async () => {
    await part('Money');
    const profit = entry('Profit');
    const method = page.getByRole('button', { name: /Profit is reckoned as/ });
    const choose = async (name: string) => {
      await method.click();
      await page.getByRole('option', { name }).click();
    };
    const refused = page.getByText('A margin of 150 % cannot be reached. Enter less than 100 %.');
    await profit.fill('150');
    await saved().waitFor();
    await choose('Margin of the price');
    await refused.waitFor();
    expect(await method.innerText()).toContain('Markup on cost');
    await takePictures(page, 'settings-margin-refused');
    await profit.fill('20');
    await refused.waitFor({ state: 'detached' });
    await choose('Margin of the price');
    await saved().waitFor();
    await profit.fill('150');
    await refused.waitFor();
    expect(await profit.getAttribute('aria-invalid')).toBe('true');
    const other = await watched.context.newPage();
    await other.goto(watched.program.address);
    await other.getByRole('link', { name: 'Settings' }).click();
    await other
      .getByRole('navigation', { name: 'Parts of the settings' })
      .getByRole('link', { name: 'Money' })
      .click();
    await expect
      .poll(() => other.getByRole('textbox', { name: 'Profit', exact: true }).inputValue())
      .toBe('20');
    await other.close();
    await choose('Markup on cost');
    await refused.waitFor({ state: 'detached' });
    await saved().waitFor();
    await page.reload();
    await expect.poll(() => profit.inputValue()).toBe('150');
    await profit.fill('10');
    await saved().waitFor();
  });

  test('say what is no whole number, what is out of range with its unit, and take a pitch as a pitch', async () => {
    await part('Labour');
    await entry('Crew').fill('2.5');
    await page.getByText('2.5 is not a whole number.', { exact: false }).waitFor();
    await entry('Crew').fill('0');
    await page.getByText('0 is out of range. Enter 1 people to 20 people.').waitFor();
    await entry('Crew').fill('2');
    expect(await entry('Steep begins above').inputValue()).toBe('8/12');
    await entry('Steep begins above').fill('7 1/2');
    await page.keyboard.press('Tab');
    expect(await entry('Steep begins above').inputValue()).toBe('7.5/12');
    await entry('Steep begins above').fill('');
    await page.getByText('Enter a pitch, like 6/12 or 26.6 deg.').waitFor();
    await entry('Steep begins above').fill('8/12');
    await saved().waitFor();
    await part('Shop');
    await entry('Next quote number').fill('0');
    await page.getByText('0 is out of range. Enter 1 or more.').waitFor();
    await entry('Next quote number').fill('1');
    await saved().waitFor();
  });

  test('say that labour counts as nothing while no wage is set', async () => {
    await part('Labour');
    const caution = page.getByText('No wage is set yet', { exact: false });
    await caution.waitFor();
    await entry('Wage').fill('41');
    await caution.waitFor({ state: 'detached' });
    await page.keyboard.press('Tab');
    expect(await entry('Wage').inputValue()).toBe('41.00');
  });

  test("mark a rate as the shop's own once it is typed, and go back to the placeholder", async () => {
    const row = page.getByRole('row').filter({ hasText: 'Set fascia' });
    expect(await row.innerText()).toContain('Placeholder');
    await row.getByRole('textbox').fill('0.11');
    await row.getByText('Your own').waitFor();
    await saved().waitFor();
    await page.reload();
    await row.getByText('Your own').waitFor();
    await row.getByRole('button', { name: 'Go back to the placeholder for Set fascia' }).click();
    await row.getByText('Placeholder', { exact: true }).waitFor();
  });

  test('carry the caution beside the nails', async () => {
    await part('Nails');
    const caution = page.getByText(/The local code, the building department or a licensed engineer/);
    await caution.waitFor();
    expect(await page.getByText(/\b(safe|approved|passes|OK)\b/).count()).toBe(0);
  });

  test.each(['Shop', 'Money', 'Labour', 'Saw', 'Layout', 'Nails'])('shut nobody out of %s', async (name) => {
    await part(name);
    await page.getByRole('heading', { level: 2 }).first().waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, `settings-${name.toLowerCase()}`);
  });

  test('are as legible in the dark', async () => {
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'settings-dark');
    await page.emulateMedia({ colorScheme: 'light' });
  });

  test('changed in two windows are not silently overwritten', async () => {
    await part('Shop');
    const other = await watched.context.newPage();
    await other.goto(watched.program.address);
    await other.getByRole('link', { name: 'Settings' }).click();
    const theirs = other.getByRole('textbox', { name: 'Telephone' });
    await theirs.fill('555-0142');
    await other.getByRole('status').getByText('Saved', { exact: true }).waitFor();
    await expect.poll(() => entry('Telephone').inputValue()).toBe('555-0142');
    await other.close();
  });
});
