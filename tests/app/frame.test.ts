import { afterEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';
import { startProgram } from './running-program.ts';

let page: Page;
const watched = programInBrowser((opened) => {
  page = opened;
});
afterEach(() => watched.mustBeQuiet());

const focusedText = () => page.evaluate(() => document.activeElement?.textContent ?? '');

describe('the frame', () => {
  test('leads past itself with the first press of Tab', async () => {
    await page.getByText('No jobs yet.').waitFor();
    await page.keyboard.press('Tab');
    expect(await focusedText()).toBe('Skip to the screen');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
  });

  test('moves the focus to the heading of the screen that one goes to', async () => {
    await page.keyboard.press('Alt+Shift+KeyP');
    await page.getByRole('heading', { level: 1, name: 'Price list' }).waitFor();
    await expect.poll(focusedText).toBe('Price list');
    await page.keyboard.press('Alt+Shift+KeyJ');
    await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
    await expect.poll(focusedText).toBe('Jobs');
  });

  test('finds every command by a part of its name and runs it by keyboard', async () => {
    await page.keyboard.press('Control+k');
    await page.getByRole('dialog', { name: 'All commands' }).waitFor();
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'palette');
    await page.keyboard.type('settin');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
  });

  test('offers in the menu the same commands with the same keys', async () => {
    await page.getByRole('button', { name: 'Menu', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('menuitem', { name: /Price list/ }).waitFor();
    expect(await page.getByRole('menuitem', { name: /Price list/ }).innerText()).toContain('Alt+Shift+P');
    expect(await accessFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
  });

  test('comes from the name of a new job to the button that makes it before the one that does not', async () => {
    await page.keyboard.press('Alt+Shift+KeyJ');
    await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
    await page.keyboard.press('Alt+Shift+KeyN');
    await page.getByRole('textbox', { name: 'Name of the job' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await focusedText()).toBe('Start the job');
    await page.keyboard.press('Tab');
    expect(await focusedText()).toBe('Cancel');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  });

  test('starts a new job by keyboard alone', async () => {
    await page.keyboard.press('Alt+Shift+KeyJ');
    await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
    await page.keyboard.press('Alt+Shift+KeyN');
    await page.getByRole('dialog', { name: 'New job' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  });

  test('can be dark though the computer is light', async () => {
    await page.keyboard.press('Control+k');
    await page.keyboard.type('dark');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, 'jobs-dark');
  });

  test('is dark again in the next run, whose port is another', async () => {
    const next = await startProgram();
    const again = await watched.context.newPage();
    await again.goto(next.address);
    await again.getByText('No jobs yet.').waitFor();
    expect(await again.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    await again.close();
    await next.remove();
  });

  test('takes the whole address in a window that lost its key, without loading again', async () => {
    const lost = await watched.context.newPage();
    await lost.goto(`${new URL(watched.program.address).origin}/#/prices`);
    const banner = lost.getByText('This window has no key to the Eavewright that is running.');
    await banner.waitFor();
    await lost.evaluate((address) => {
      document.body.dataset['loaded'] = 'once';
      window.location.href = address;
    }, watched.program.address);
    await banner.waitFor({ state: 'detached' });
    await lost.getByText('The price list is empty.').waitFor();
    expect(await lost.evaluate(() => document.body.dataset['loaded'])).toBe('once');
    expect(lost.url()).toMatch(/#\/prices$/);
    await lost.close();
  });

  test('says so where an address leads nowhere', async () => {
    await page.evaluate(() => {
      window.location.hash = '#/nowhere';
    });
    await page.getByText('This address leads to no screen.').waitFor();
    expect(await accessFaults(page)).toEqual([]);
  });
});
