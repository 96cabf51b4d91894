import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

let page: Page;
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('link', { name: 'Quote', exact: true }).click({ timeout: 60_000 });
  await page.getByRole('heading', { name: 'What we build' }).waitFor({ timeout: 60_000 });
});
afterEach(() => watched.mustBeQuiet());

const patient = { timeout: 60_000 };

/** The panel under a heading. */
function panel(title: string | RegExp) {
  return page.getByRole('region', { name: title });
}

test('the section shows the offer: scope, choices beside each other, payments that add up, and what is still asked', async () => {
  const choices = page.getByRole('table', { name: 'Choices beside each other' });
  await choices.getByRole('row', { name: /Eaves alone.*\$/ }).waitFor(patient);
  await choices.getByRole('row', { name: /Open tails, no soffit.*Open rafter tails/ }).waitFor(patient);
  await panel('Payments')
    .getByText(/^Together \$/)
    .waitFor(patient);
  await panel('Is anything forgotten?').getByText('All answered').waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-offer');
  await page.getByRole('heading', { name: 'Payments' }).scrollIntoViewIfNeeded();
  await takePictures(page, 'job-offer-payments');
  await page.getByRole('heading', { name: 'Choices for the client' }).scrollIntoViewIfNeeded();
  await takePictures(page, 'job-offer-choices');
  await page.getByRole('switch', { name: /Signed at the client/ }).scrollIntoViewIfNeeded();
  await takePictures(page, 'job-offer-terms');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-offer-dark');
  await page.emulateMedia({ colorScheme: 'light' });
});

test('payments that do not add up are told at the payment, and a deposit over the state’s limit at its own', async () => {
  const payments = panel('Payments');
  await payments.getByRole('textbox', { name: 'Percent' }).nth(1).fill('95');
  await payments.getByText(/more than the price/).waitFor(patient);
  await payments.getByRole('textbox', { name: 'Percent' }).nth(1).fill('30');
  await payments.getByText(/more than the price/).waitFor({ state: 'detached' });
  await payments.getByRole('textbox', { name: 'Percent' }).first().fill('40');
  await page.getByRole('button', { name: /State rule for deposit/ }).click();
  await page.getByRole('option', { name: /Maryland/ }).click();
  await payments.getByText(/lets you ask for \$3,\d+\.\d\d at most/).waitFor(patient);
  await payments.getByRole('textbox', { name: 'Percent' }).first().fill('10');
  await payments.getByText(/lets you ask for/).waitFor({ state: 'detached' });
  expect(await payments.getByText(/^Together \$/).count()).toBe(1);
});

test('words of the scope are written by hand, told apart when the design moves on, and given back', async () => {
  const scope = panel('What we build');
  await scope.getByRole('button', { name: /Write it yourself: South eave/ }).click();
  const words = scope.getByRole('textbox', { name: /South eave, in your words/ });
  await words.fill('The south roof edge grows by sixteen inches.');
  await page.getByRole('link', { name: 'Design', exact: true }).click();
  await page.locator('[data-path="design.eaves.0.overhangIn"]').fill('15', { timeout: 5000 });
  await page.getByRole('link', { name: 'Quote', exact: true }).click();
  await scope.getByText(/The design has changed since you wrote this/).waitFor(patient);
  expect(await words.inputValue()).toBe('The south roof edge grows by sixteen inches.');
  await takePictures(page, 'job-offer-scope');
  await scope.getByRole('button', { name: /Back to the generated words: South eave/ }).click();
  await scope.getByText(/South eave, .* reaches 1' 3" past the wall/).waitFor(patient);
});

test('what is open is named when the quote is made, and is sent only by one who says that he knows', async () => {
  const asked = panel('Is anything forgotten?');
  await asked.getByRole('textbox', { name: /Runs to the yard/ }).fill('');
  await asked.getByText('1 not answered').waitFor(patient);
  await page.getByRole('button', { name: 'Make a quote' }).click(patient);
  await page.getByText('Does not say yet: runs to the yard.').waitFor(patient);
  await page.getByRole('button', { name: 'Mark as sent' }).click();
  const dialog = page.getByRole('dialog', { name: /leaves something open/ });
  await dialog.getByText('runs to the yard').waitFor();
  await takePictures(page, 'job-offer-open');
  await dialog.getByRole('button', { name: 'I know, mark it as sent' }).click();
  await page.getByText(/counts as sent/).waitFor(patient);
  expect(await page.getByRole('button', { name: 'Mark as sent' }).count()).toBe(0);
});

test('the choice that the client takes is the contract, and revisions are held against each other', async () => {
  await page.getByRole('button', { name: 'Accepted…' }).click();
  await page.getByRole('button', { name: /What the client takes/ }).click();
  await page.getByRole('option', { name: /Eaves alone/ }).click();
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByText(/Taken: Eaves alone/).waitFor(patient);
  await page.getByRole('button', { name: 'Make the next revision' }).click();
  await page
    .getByText(/revision 2/)
    .first()
    .waitFor(patient);
  await page.getByRole('button', { name: 'What changed since…' }).first().click();
  await page.getByRole('button', { name: /Held against/ }).click();
  await page.getByRole('option', { name: 'Quote 1', exact: true }).click();
  await page.getByText(/Its total is/).waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-offer-compare');
  await page.keyboard.press('Escape');
});

test('the settings keep a logo, shown and taken away, and rules to be verified with the state', async () => {
  await page.getByRole('link', { name: 'Settings', exact: true }).click();
  await page.getByRole('heading', { name: 'Logo' }).waitFor(patient);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a logo' }).click(),
  ]);
  await chooser.setFiles({
    name: 'logo.png',
    mimeType: 'image/png',
    buffer: Buffer.from(onePixel, 'base64'),
  });
  await page.getByRole('img', { name: /The shop's logo/ }).waitFor(patient);
  await chooser.page().getByRole('button', { name: 'Print without a logo' }).click();
  await page.getByText('No logo yet.').waitFor(patient);
  await page.getByRole('link', { name: 'Quotes', exact: true }).click();
  await page.getByText('verify with your state').first().waitFor();
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'settings-quotes');
});

test('the list of jobs finds what waits for an answer', async () => {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Jobs' }).click();
  await page.getByRole('button', { name: /Quotes/ }).click();
  await page.getByRole('option', { name: 'Waiting for an answer' }).click();
  await page.getByText('The one job here does not wait for an answer.').waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'jobs-waiting');
});

/** A PNG of one grey point. */
const onePixel =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';
