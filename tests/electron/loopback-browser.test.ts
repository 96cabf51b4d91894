import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { ok } from '../../core/result.ts';
import type { Dispatch } from '../../electron/dispatcher.ts';
import { serveLoopback, type Loopback } from '../../electron/loopback.ts';
import { findBrowser } from '../app/ensure-browser.ts';

const dispatch = vi.fn<Dispatch>(() => Promise.resolve(ok({ secret: 'of the shop' })));

const pageScript = `
  document.title = 'ran';
  const tries = [
    () => { document.documentElement.innerHTML = '<p>'; },
    () => eval('1'),
    () => new Function('return 1')(),
  ];
  document.documentElement.dataset.stopped = tries.map((attempt) => {
    try { attempt(); return 'ran'; } catch (error) { return error.name; }
  }).join(' ');
`;

let browser: Browser;
let loopback: Loopback;
let attacker: Server;
let attackerPort: number;
let ours: URL;
let page: Page;

beforeAll(async () => {
  loopback = await serveLoopback({
    host: { dispatch, subscribe: () => () => undefined },
    files: () =>
      new Map([
        [
          '/',
          {
            type: 'text/html',
            bytes: Buffer.from('<!doctype html><title>ours</title><script src="/a.js"></script>'),
          },
        ],
        ['/a.js', { type: 'text/javascript', bytes: Buffer.from(pageScript) }],
      ]),
  });
  ours = new URL(loopback.address);
  attacker = createServer((_request, response) => {
    response.setHeader('content-type', 'text/html');
    response.end('<!doctype html><title>attacker</title>');
  });
  await new Promise<void>((resolve) => attacker.listen(0, '127.0.0.1', resolve));
  attackerPort = (attacker.address() as AddressInfo).port;
  browser = await chromium.launch({
    executablePath: findBrowser() ?? 'no browser found',
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // A name of the attacker's that resolves to this machine: what DNS rebinding comes to.
      '--host-resolver-rules=MAP evil.test 127.0.0.1',
    ],
  });
});
afterAll(async () => {
  await browser.close();
  await loopback.close();
  attacker.close();
});
beforeEach(async () => {
  dispatch.mockClear();
  page = await browser.newPage();
  return () => page.close();
});

/** Everything that a page can try without the key; answers what it could read of it. */
function attack(host: string): Promise<string[]> {
  return page.evaluate(async (address) => {
    const body = '{}';
    const tries: RequestInit[] = [
      { method: 'GET' },
      { method: 'POST', body },
      { method: 'POST', body, mode: 'no-cors', credentials: 'include' },
      { method: 'POST', body, headers: { 'content-type': 'application/json' } },
      {
        method: 'POST',
        body,
        headers: { 'content-type': 'application/json', authorization: 'Bearer guess' },
      },
      { method: 'POST', body: new URLSearchParams({ a: '1' }), mode: 'no-cors' },
    ];
    const read: string[] = [];
    for (const init of tries) {
      for (const path of ['/api/jobs.list', '/events', '/']) {
        try {
          const response = await fetch(address + path, init);
          read.push(`${response.type} ${response.status}`);
        } catch {
          read.push('failed');
        }
      }
    }
    return read;
  }, host);
}

test('our own page runs under its policy', async () => {
  await page.goto(loopback.address);
  expect(await page.title()).toBe('ran');
});

test.each(['127.0.0.1', 'evil.test'])(
  'a page of %s on another port gets nothing and does nothing',
  async (name) => {
    await page.goto(`http://${name}:${attackerPort}/`);
    const read = new Set(await attack(ours.origin));
    expect([...read].filter((answer) => answer !== 'failed' && answer !== 'opaque 0')).toEqual([]);
    expect(dispatch).not.toHaveBeenCalled();
  },
);

test('a name that is turned to this machine is not served, and its page cannot ask', async () => {
  const response = await page.goto(`http://evil.test:${ours.port}/`);
  expect(response?.status()).toBe(421);
  const read = new Set(await attack(`http://evil.test:${ours.port}`));
  expect(
    [...read].filter((answer) => answer !== 'failed' && answer !== 'basic 421' && answer !== 'opaque 0'),
  ).toEqual([]);
  expect(dispatch).not.toHaveBeenCalled();
});

test('our page cannot be put into a frame of another', async () => {
  await page.goto(`http://127.0.0.1:${attackerPort}/`);
  await page.evaluate((address) => {
    const frame = document.createElement('iframe');
    frame.src = address;
    document.body.append(frame);
  }, loopback.address);
  await expect.poll(() => page.frames().length).toBe(2);
  await page.waitForTimeout(500);
  expect(await page.frames()[1]?.title()).not.toBe('ran');
});

test('a second tab without the key is told so', async () => {
  await page.goto(ours.origin);
  const status = await page.evaluate(async () => {
    const headers = { 'content-type': 'application/json' };
    return (await fetch('/api/jobs.list', { method: 'POST', body: '{}', headers })).status;
  });
  expect(status).toBe(401);
  expect(dispatch).not.toHaveBeenCalled();
});

test('text that would become script is stopped by the policy', async () => {
  await page.goto(loopback.address);
  // The page's own script tried it: what a test sends in is not held to the policy.
  expect(await page.evaluate(() => document.documentElement.dataset['stopped'])).toBe(
    'TypeError EvalError EvalError',
  );
});
