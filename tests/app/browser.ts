import { chromium, type Browser } from 'playwright-core';
import { findBrowser } from './ensure-browser.ts';

/** Starts the browser of this machine without a window. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined) {
    throw new Error('No Chromium, Chrome or Edge was found. Set CHROMIUM to the path of one.');
  }
  return chromium.launch({
    executablePath,
    args: [
      // As root, Chromium does not start with its sandbox.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
