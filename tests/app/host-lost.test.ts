import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import { launchBrowser } from './browser.ts';
import { startProgram } from './running-program.ts';
import { openPage, takePictures } from './watched-page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const lostLine = 'Eavewright does not answer.';

describe('when the program stops answering', () => {
  test('what was typed meanwhile is kept and saved as soon as it answers again', async () => {
    const program = await startProgram();
    const { page, close } = await openPage(browser, program.address);
    await page.getByRole('link', { name: 'Settings' }).click();
    const shop = page.getByRole('textbox', { name: 'Name of the shop' });
    await shop.waitFor();
    await page.context().setOffline(true);
    await shop.fill('Typed while the program was away');
    await page.getByText(lostLine).waitFor();
    await page.getByText('Not saved yet: waiting for Eavewright').waitFor();
    await takePictures(page, 'host-lost');

    await page
      .getByRole('navigation', { name: 'Parts of the settings' })
      .getByRole('link', { name: 'Money' })
      .click();
    await page.context().setOffline(false);
    await page.getByRole('status').getByText('Saved', { exact: true }).waitFor();
    await page.getByText(lostLine).waitFor({ state: 'detached' });
    await page.reload();
    await page.getByRole('link', { name: 'Shop', exact: true }).click();
    await expect.poll(() => shop.inputValue()).toBe('Typed while the program was away');
    await close();
    await program.remove();
  });

  test('a program killed in the middle of work loses nothing that was shown as saved, and the page says what to do', async () => {
    const first = await startProgram();
    const before = await openPage(browser, first.address);
    await before.page.getByRole('link', { name: 'Settings' }).click();
    const shop = before.page.getByRole('textbox', { name: 'Name of the shop' });
    await shop.pressSequentially('Saved to the last letter');
    await before.page.getByRole('status').getByText('Saved', { exact: true }).waitFor();
    await first.kill();
    await before.page.getByText(lostLine).waitFor();
    await shop.pressSequentially(', and then some');
    expect(await shop.inputValue()).toBe('Saved to the last letter, and then some');

    const second = await startProgram(first.folder);
    const after = await openPage(browser, second.address);
    await after.page.getByRole('link', { name: 'Settings' }).click();
    await expect
      .poll(() => after.page.getByRole('textbox', { name: 'Name of the shop' }).inputValue())
      .toBe('Saved to the last letter');
    // The window of the first start still shows what was typed since.
    expect(await shop.inputValue()).toBe('Saved to the last letter, and then some');
    await before.close();
    await after.close();
    await second.remove();
  });

  test('a name that could not be sent stays in its field', async () => {
    const program = await startProgram();
    const { page, close } = await openPage(browser, program.address);
    await page.getByRole('button', { name: 'New job' }).click();
    await page.getByRole('textbox', { name: 'Name of the job' }).fill('Hollister');
    await page.context().setOffline(true);
    await page.keyboard.press('Enter');
    await page.getByText('Eavewright does not answer. The name stays here; try again in a moment.').waitFor();
    expect(await page.getByRole('textbox', { name: 'Name of the job' }).inputValue()).toBe('Hollister');
    await page.context().setOffline(false);
    await expect
      .poll(async () => {
        if (/#\/jobs\/./.test(page.url())) return true;
        await page.keyboard.press('Enter');
        return false;
      })
      .toBe(true);
    await close();
    await program.remove();
  });

  test('a window without the key of this start says so', async () => {
    const program = await startProgram();
    const { page, close } = await openPage(browser, `${new URL(program.address).origin}/`);
    await page.getByText('This window has no key to the Eavewright that is running.').waitFor();
    await takePictures(page, 'no-key');
    expect(await page.getByRole('table').count()).toBe(0);
    await close();
    await program.remove();
  });
});
