import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Page } from 'playwright-core';

/** Where screenshots go, to be looked at by people. */
export const screenshotFolder = process.env['EAVEWRIGHT_SHOTS'] ?? join(tmpdir(), 'eavewright-shots');

/** A page whose complaints are kept: console errors, exceptions, and requests to anywhere but the program. */
export type WatchedPage = {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Fails the test, with every complaint, where there was one. */
  readonly mustBeQuiet: () => void;
  readonly close: () => Promise<void>;
};

/** Opens a page of the program. */
export async function openPage(
  browser: Browser,
  address: string,
  size: { width: number; height: number } = { width: 1280, height: 800 },
): Promise<WatchedPage> {
  const context = await browser.newContext({ viewport: size, acceptDownloads: true });
  const page = await context.newPage();
  const complaints: string[] = [];
  const origin = new URL(address).origin;
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !url.startsWith('data:') && !url.startsWith('blob:'))
      complaints.push(`asked elsewhere: ${url}`);
  });
  await page.goto(address);
  return {
    page,
    context,
    mustBeQuiet() {
      const heard = complaints.splice(0);
      if (heard.length > 0) throw new Error(`the page complained:\n${heard.join('\n')}`);
    },
    close: () => context.close(),
  };
}

/** What axe finds wrong on the page, of the levels that shut people out; one line a finding. */
export async function accessFaults(page: Page): Promise<readonly string[]> {
  const found = await new AxeBuilder({ page }).analyze();
  return found.violations
    .filter((violation) => violation.impact === 'serious' || violation.impact === 'critical')
    .flatMap((violation) =>
      violation.nodes.map((node) => `${violation.id}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
    );
}

/** Takes a picture at the two sizes that the program is looked at. */
export async function takePictures(page: Page, name: string): Promise<void> {
  mkdirSync(screenshotFolder, { recursive: true });
  const before = page.viewportSize();
  for (const size of [
    { width: 1280, height: 800 },
    { width: 1600, height: 1000 },
  ]) {
    await page.setViewportSize(size);
    await page.screenshot({ path: join(screenshotFolder, `${name}-${size.width}.png`) });
  }
  if (before !== null) await page.setViewportSize(before);
}
