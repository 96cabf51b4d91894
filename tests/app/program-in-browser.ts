import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, vi } from 'vitest';
import { launchBrowser } from './browser.ts';
import { type RunningProgram, startProgram } from './running-program.ts';
import { openPage, type WatchedPage } from './watched-page.ts';

/** Longest that a test in a browser may take on a busy machine. [ms] */
const longestMs = 300_000;

/** The program and a browser, started before the tests of a file and ended behind them. */
export type ProgramAndBrowser = {
  readonly program: RunningProgram;
  readonly browser: Browser;
  /** Goes on with the program started anew. */
  readonly goOnWith: (program: RunningProgram) => void;
};

/** Starts the program and a browser for the tests of this file. */
export function programAndBrowser(): ProgramAndBrowser {
  vi.setConfig({ testTimeout: longestMs });
  let program: RunningProgram | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    [program, browser] = await Promise.all([startProgram(), launchBrowser()]);
  });
  afterAll(async () => {
    await browser?.close();
    await program?.remove();
  });
  return {
    get program() {
      return started(program);
    },
    get browser() {
      return started(browser);
    },
    goOnWith(next) {
      program = next;
    },
  };
}

/** The page that the tests of a file share. */
export type PageOfProgram = WatchedPage & { readonly program: RunningProgram };

/**
 * Starts the program for the tests of this file, with one page open on it.
 * @param prepare - what is done on the page before the first test.
 */
export function programInBrowser(prepare?: (page: Page) => Promise<void> | void): PageOfProgram {
  const both = programAndBrowser();
  let watched: WatchedPage | undefined;
  beforeAll(async () => {
    watched = await openPage(both.browser, both.program.address);
    await prepare?.(watched.page);
  });
  return {
    get program() {
      return both.program;
    },
    get page(): Page {
      return started(watched).page;
    },
    get context(): BrowserContext {
      return started(watched).context;
    },
    mustBeQuiet: () => started(watched).mustBeQuiet(),
    close: () => started(watched).close(),
  };
}

function started<T>(thing: T | undefined): T {
  if (thing === undefined) throw new Error('started before the first test, not at the top of the file');
  return thing;
}
