import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { askHost } from './ask-host.ts';
import { programInBrowser } from './program-in-browser.ts';
import { accessFaults, takePictures } from './watched-page.ts';

let page: Page;
let jobId = '';
/** A PNG of one dot. */
const dot = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
  'base64',
);
const patient = { timeout: 60_000 };
const watched = programInBrowser(async (opened) => {
  page = opened;
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('link', { name: 'Billing', exact: true }).click(patient);
  jobId = /jobs\/([^/]+)\//.exec(page.url())?.[1] ?? '';
});
afterEach(() => watched.mustBeQuiet());

const billing = () => askHost(page, 'billing.get', { jobId });

/** What a PDF that a button saves says, from its own file. */
async function paperOf(press: () => Promise<void>): Promise<string> {
  const download = page.waitForEvent('download');
  await press();
  const path = await (await download).path();
  expect(readFileSync(path).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  return execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
}

test('a job without an accepted quote says what comes first', async () => {
  await page.getByText('Nothing to bill against yet').waitFor(patient);
  await takePictures(page, 'job-billing-empty');
  const { id } = await askHost(page, 'quotes.make', { jobId });
  await askHost(page, 'quotes.send', { id, knowing: true });
  const { today } = await askHost(page, 'app.info', {});
  await askHost(page, 'quotes.decide', { id, decision: 'accepted', on: today, note: '' });
  // The quote was answered behind the page's back; whether it hears of that is another test's matter.
  await page.reload();
  await page.getByRole('heading', { name: 'Contract at a glance' }).waitFor(patient);
  expect((await billing()).summary?.billedUsd).toBe('0.00');
});

test('hidden damage becomes a change order at the agreed price in one step, and approved it is in the contract', async () => {
  const before = (await billing()).summary?.revisedUsd ?? '0';
  await page.getByRole('button', { name: 'From the design as it is now' }).click();
  await page.getByText(/designed as it is in the contract/).waitFor(patient);
  await page.getByRole('button', { name: 'New change order' }).click();
  await page.getByRole('button', { name: /Rotted rafter tail/ }).click();
  await page.getByRole('textbox', { name: 'What changes' }).fill('Three rotted tails at the north corner');
  await page.getByRole('textbox', { name: 'Quantity' }).fill('three');
  await page.getByRole('button', { name: 'Save as draft' }).click();
  await page.getByText(/"three" is not a number/).waitFor(patient);
  await page.getByRole('textbox', { name: 'Quantity' }).fill('3');
  await page.getByRole('textbox', { name: 'Days longer' }).fill('1');
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Photo or PDF…' }).click();
  await (await chooser).setFiles({ name: 'north corner.png', mimeType: 'image/png', buffer: dot });
  await page.getByText('a photo is kept with it').waitFor(patient);
  await takePictures(page, 'job-billing-change');
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('textbox', { name: 'Quantity' }).press('Enter');
  await page.getByText('Change order 1 is saved as a draft.').waitFor(patient);
  await page.getByRole('button', { name: 'Approved…' }).click();
  await page.getByRole('textbox', { name: 'What was said' }).fill('Signed on site');
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByText(/^Approved .*in the contract/).waitFor(patient);
  const after = await billing();
  const [change] = after.changeOrders;
  expect(Number(change?.priceUsd)).toBe(3 * Number(after.unitPrices[0]?.priceUsd));
  expect(Number(after.summary?.revisedUsd)).toBeCloseTo(Number(before) + Number(change?.priceUsd), 2);
  const paper = await paperOf(() => page.getByRole('button', { name: /Change order 1 as PDF/ }).click());
  expect(paper).toContain('Three rotted tails at the north corner');
  expect(paper).toContain('Contract before this change');
  expect(paper).toContain('north corner.png');
});

test('a deposit is looked at, issued and paid; then progress by phase, with its retainage, before the final bill', async () => {
  await page.getByRole('button', { name: 'Make a bill' }).click();
  await page.getByRole('button', { name: /^At signing/ }).click();
  // The sample's first payment is a tenth of what was quoted, to the cent.
  const quoted = Number((await billing()).summary?.quotedUsd);
  const tenth = (quoted / 10).toLocaleString('en-US', { style: 'currency', currency: 'USD' });
  await page.locator('tr', { hasText: 'Total due' }).filter({ hasText: tenth }).waitFor(patient);
  await takePictures(page, 'job-billing-deposit');
  await page.getByRole('textbox', { name: /Deposit before tax/ }).fill('1,500');
  await page.getByRole('row', { name: /Total due .*\$1,500\.00/ }).waitFor(patient);
  await page.getByRole('button', { name: 'Issue it…' }).click();
  await page.getByRole('button', { name: 'Issue the invoice' }).click();
  await page.getByText(/^Invoice 1 is issued/).waitFor(patient);

  await page.getByRole('textbox', { name: 'Amount, $' }).fill('1500');
  await page.getByRole('textbox', { name: 'How', exact: true }).fill('check 1042');
  await page.keyboard.press('Enter');
  await page.getByRole('row', { name: /Deposit .*\$1,500\.00 \$0\.00 paid/ }).waitFor(patient);

  await page.getByRole('button', { name: 'Make a bill' }).click();
  await page.getByRole('textbox', { name: 'All parts at, %' }).fill('50');
  await page.getByRole('button', { name: 'Set all' }).click();
  await page.getByRole('textbox', { name: 'Held back, %' }).fill('10');
  await page.getByRole('row', { name: /Held back, 10 %/ }).waitFor(patient);
  await page.getByText('Show what is in place').click();
  await takePictures(page, 'job-billing-bill');
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Issue it…' }).click();
  await page.getByRole('button', { name: 'Issue the invoice' }).click();
  await page.getByText(/^Invoice 2 is issued/).waitFor(patient);
  const { invoices, summary } = await billing();
  expect(invoices.map(({ number }) => number)).toEqual([1, 2]);
  expect(Number(summary?.retainedUsd)).toBeGreaterThan(0);
  const total = new Intl.NumberFormat('en-US', { minimumFractionDigits: 2 }).format(
    Number(invoices[1]?.totalUsd),
  );
  const print = () => paperOf(() => page.getByRole('button', { name: 'invoice 2 as PDF' }).click());
  const paper = await print();
  expect(paper).toContain(`$${total}`);
  expect(paper).toContain('Change order 1: Three rotted tails at the north corner');
  expect(paper).toContain('In place to date');
});

test('an invoice is taken back by a credit of its own number, and a payment by a row of its own', async () => {
  await page.getByRole('button', { name: 'Credit invoice 2' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: /To take back/ }).fill('100');
  await dialog.getByRole('button', { name: 'Issue the credit' }).click();
  await dialog.getByText('Say why.').waitFor(patient);
  await dialog.getByRole('textbox', { name: 'Why' }).fill('Staging was billed twice');
  await dialog.getByRole('button', { name: 'Issue the credit' }).click();
  await page.getByText('Credit 3 is issued for invoice 2.').waitFor(patient);
  await page.getByRole('button', { name: /Take back the payment of/ }).click();
  await page.getByRole('textbox', { name: 'Why' }).fill('The check came back');
  await page.getByRole('button', { name: 'Take it back' }).click();
  await page.getByText(/^Takes back the payment of/).waitFor(patient);
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, 'job-billing');
  await page.emulateMedia({ colorScheme: 'dark' });
  await takePictures(page, 'job-billing-dark');
  expect(await accessFaults(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
  const statement = await paperOf(() =>
    page.getByRole('button', { name: /Statement of the client/ }).click(),
  );
  expect(statement).toContain('Credit 3 for invoice 2');
  expect(statement).toContain('Payment taken back');
});
