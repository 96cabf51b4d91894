import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, vi } from 'vitest';
import type { StartArguments } from '../../electron/start/arguments.ts';
import { buildPageIfStale } from '../../electron/start/build.ts';
import { fetchElectron, findElectron, runElectron } from '../../electron/start/electron-program.ts';
import { pickShell, type World } from '../../electron/start/pick-shell.ts';
import { serve, type ServeOptions } from '../../electron/start/serve.ts';
import { programRoot } from '../../electron/program-root.ts';
import { openShop } from '../../electron/store/open-shop.ts';
import { runChild } from '../store/child.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

const start = fileURLToPath(new URL('../../electron/start.ts', import.meta.url));
const addressForm = /^http:\/\/127\.0\.0\.1:\d+\/#t=[\w-]{43}$/;

const plain: StartArguments = { data: undefined, shell: undefined, open: true, dev: false, help: false };

/** Runs the choice of a shell in a world put together for it; answers what was done, in order. */
async function picked(args: Partial<StartArguments>, world: Partial<World>): Promise<string[]> {
  const did: string[] = [];
  await pickShell(
    { ...plain, ...args },
    {
      display: true,
      findElectron: () => undefined,
      fetchElectron: () => {
        did.push('fetch');
        return Promise.resolve(undefined);
      },
      runElectron: (program) => {
        did.push(`run ${program}`);
        return Promise.resolve(0);
      },
      serve: (open, because) => {
        did.push(`serve, ${open ? 'open a browser' : 'print the address'}: ${because}`);
        return Promise.resolve(0);
      },
      say: (line) => did.push(`say ${line}`),
      ...world,
    },
  );
  return did;
}

test('with Electron here, it opens in its own window and says so', async () => {
  expect(await picked({}, { findElectron: () => '/electron' })).toEqual([
    'say Eavewright opens in its own window.',
    'run /electron',
  ]);
});

test('without Electron it tries to fetch it, and then opens a browser and says why', async () => {
  expect(await picked({}, {})).toEqual([
    'fetch',
    'serve, open a browser: Electron is not here, so a browser is used.',
  ]);
  expect(await picked({ shell: 'electron' }, {})).toEqual(await picked({}, {}));
});

test('where Electron gives up at once, a browser is used and it says why', async () => {
  const world = {
    findElectron: () => '/electron',
    runElectron: () => Promise.resolve('not-started' as const),
  };
  expect((await picked({}, world)).at(-1)).toBe(
    'serve, open a browser: Electron could not start here, so a browser is used.',
  );
});

test('without a display the address is printed, and Electron is not even looked for', async () => {
  const findElectron = vi.fn<() => undefined>();
  expect(await picked({}, { display: false, findElectron })).toEqual([
    'serve, print the address: There is no display here; open this address in a browser:',
  ]);
  expect(findElectron).not.toHaveBeenCalled();
});

test.each([{ shell: 'loopback' } as const, { dev: true }])(
  'without a display %j says what to do with the address too',
  async (args) => {
    expect(await picked(args, { display: false })).toEqual([
      'serve, print the address: There is no display here; open this address in a browser:',
    ]);
    expect(await picked({ ...args, open: false }, { display: false })).toEqual([
      'serve, print the address: ',
    ]);
  },
);

test('what was asked for is done without a word about it', async () => {
  expect(await picked({ shell: 'loopback' }, {})).toEqual(['serve, open a browser: ']);
  expect(await picked({ open: false }, { findElectron: () => '/electron' })).toEqual([
    'serve, print the address: ',
  ]);
  expect(await picked({ dev: true }, { findElectron: () => '/electron' })).toEqual([
    'serve, open a browser: ',
  ]);
});

/** A program folder whose Electron package has this installer. */
function rootWithInstaller(script: string): string {
  const root = temporaryFolder();
  const folder = join(root, 'node_modules', 'electron');
  mkdirSync(join(folder, 'dist'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"type":"commonjs"}');
  writeFileSync(join(folder, 'install.js'), script);
  return root;
}

test('a download that hangs is waited for once, and not again that day', async () => {
  const root = rootWithInstaller('setInterval(() => {}, 1000)');
  const now = Date.now();
  const waits = vi.fn<() => void>();
  const began = performance.now();
  const first = await fetchElectron(root, now, waits, 300);
  expect(first.program).toBe(undefined);
  expect(performance.now() - began).toBeLessThan(5000);
  const again = performance.now();
  const second = await fetchElectron(root, now + 60_000, waits, 20_000);
  expect(second.program).toBe(undefined);
  expect(performance.now() - again).toBeLessThan(2000);
  expect(waits).toHaveBeenCalledOnce();
  first.stop();
  second.stop();
});

const laysElectron = `const fs = require('fs'), path = require('path');
  fs.writeFileSync(path.join(__dirname, 'dist', 'electron'), '');
  fs.writeFileSync(path.join(__dirname, 'path.txt'), 'electron');`;

test('a download that fails is over at once, and one that succeeds on a later day is used', async () => {
  const root = rootWithInstaller('process.exit(1)');
  const began = performance.now();
  expect((await fetchElectron(root, Date.now())).program).toBe(undefined);
  expect(performance.now() - began).toBeLessThan(10_000);
  writeFileSync(join(root, 'node_modules', 'electron', 'install.js'), laysElectron);
  const tomorrow = Date.now() + 25 * 60 * 60 * 1000;
  const program = join(root, 'node_modules', 'electron', 'dist', 'electron');
  expect((await fetchElectron(root, tomorrow)).program).toBe(program);
  expect(findElectron(root)).toBe(program);
});

test('a download longer than the wait goes on, and a later start finds it', async () => {
  const root = rootWithInstaller(`setTimeout(() => { ${laysElectron} }, 500)`);
  expect((await fetchElectron(root, Date.now(), undefined, 0)).program).toBe(undefined);
  await expect.poll(() => findElectron(root), { timeout: 10_000 }).toBeDefined();
});

test('without the package there is no Electron to fetch', async () => {
  const root = temporaryFolder();
  expect(findElectron(root)).toBe(undefined);
  expect((await fetchElectron(root, 0)).program).toBe(undefined);
});

test.each([
  ['ends well', 'process.exit(0)', 0],
  ['fails at once', 'process.exit(1)', 'not-started'],
  ['is refused the shop file', 'process.exit(3)', 3],
  ['is told where the data is', "process.exit(process.env.EAVEWRIGHT_DATA === 'DATA' ? 0 : 1)", 0],
] as const)('an Electron that %s', async (_how, script, code) => {
  // Node stands in for Electron, and a script for the program's folder.
  const program = join(temporaryFolder(), 'program.cjs');
  writeFileSync(program, script);
  expect(await runElectron(process.execPath, program, 'DATA', () => 0)).toBe(code);
});

test('an Electron that is not a program at all', async () => {
  expect(await runElectron(join(temporaryFolder(), 'none'), '.', '.', () => 0)).toBe('not-started');
});

/** Serves in this process; answers what was printed, and how to end it. */
async function served(more: Partial<ServeOptions> = {}) {
  await buildPageIfStale(programRoot());
  const data = more.data ?? temporaryFolder();
  const lines: string[] = [];
  const { promise: told, resolve: end } = Promise.withResolvers<void>();
  const { promise: firstLine, resolve: said } = Promise.withResolvers<string>();
  const hear = (line: string): void => {
    lines.push(line);
    said(line);
  };
  const code = serve({
    root: programRoot(),
    data,
    dev: false,
    because: '',
    openBrowser: undefined,
    told,
    say: hear,
    complain: hear,
    ...more,
  });
  return { data, lines, end, code, firstLine: await firstLine };
}

test('told to end, it leaves the shop file whole and alone', async () => {
  const { data, end, code, firstLine } = await served();
  expect(firstLine).toMatch(addressForm);
  expect(readdirSync(data)).toContain('shop.eavewright-wal');
  end();
  expect(await code).toBe(0);
  expect(readdirSync(data).filter((name) => /wal|shm|journal/.test(name))).toEqual([]);
});

test('the page it opens in a browser is reached once by that address, and named in one line', async () => {
  const opened: string[] = [];
  const { end, code, lines } = await served({
    because: 'Electron is not here.',
    openBrowser: (address) => {
      opened.push(address);
      return Promise.resolve('Chromium');
    },
  });
  expect(lines).toEqual([
    expect.stringMatching(
      /^Electron is not here\. Eavewright is open in Chromium: http:\S+ \(Ctrl\+C ends it\)$/,
    ),
  ]);
  const [address = ''] = opened;
  const first = await fetch(address, { redirect: 'manual' });
  expect([first.status, first.headers.get('location')]).toEqual([303, expect.stringMatching(/^\/#t=/)]);
  expect((await fetch(address, { redirect: 'manual' })).status).toBe(404);
  end();
  await code;
});

test('where no browser can be started, the address is printed for the person to open', async () => {
  const { end, code, firstLine } = await served({ openBrowser: () => Promise.resolve(undefined) });
  expect(firstLine).toMatch(/^Open this address in a browser: http:/);
  end();
  await code;
});

test('it ends when the last page that it opened has been gone for a while', async () => {
  const { code, firstLine } = await served({
    openBrowser: () => Promise.resolve('Chromium'),
    leaveAfterMs: 100,
  });
  const address = new URL(/http:\S+/.exec(firstLine)?.[0] ?? '');
  const page = new AbortController();
  await fetch(`${address.origin}/events`, {
    method: 'POST',
    headers: {
      origin: address.origin,
      'content-type': 'application/json',
      authorization: `Bearer ${address.hash.slice(3)}`,
    },
    body: '{}',
    signal: page.signal,
  });
  page.abort();
  expect(await code).toBe(0);
});

test('where the shop file is refused, it says what to do and ends with 1', async () => {
  const data = temporaryFolder();
  const shop = openShop(data);
  const { code, lines } = await served({ data });
  expect(await code).toBe(1);
  expect(lines).toEqual([expect.stringContaining('open in another Eavewright')]);
  expect(shop.ok && shop.value.close()).toBe(undefined);
});

test('`npm start` serves the built page with --no-open, prints the address alone, and ends on a signal', async () => {
  const data = temporaryFolder();
  const child = runChild([start, '--shell', 'loopback', '--no-open', '--data', data]);
  const address = new URL(await child.line((line) => addressForm.test(line)));
  expect(child.lines).toEqual([address.href]);
  const page = await fetch(address.origin);
  expect(page.status).toBe(200);
  const script = /src="([^"]+\.js)"/.exec(await page.text())?.[1] ?? 'none';
  expect((await fetch(new URL(script, address.origin))).headers.get('content-type')).toContain('javascript');
  child.process.kill('SIGTERM');
  // Windows knows no signals: there the program is ended without a word, as by a kill.
  expect(await child.exited).toBe(process.platform === 'win32' ? null : 0);
}, 90_000);

test('a command line that cannot be read is answered with what it may be', async () => {
  const child = runChild([start, '--colour']);
  expect(await child.exited).toBe(2);
  expect(child.lines.join('\n')).toContain('--no-open');
});
