import { mkdtempSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { hasKey } from '../../electron/loopback/gate.ts';
import { serveLoopback, type Loopback } from '../../electron/loopback.ts';
import { openHost, type OpenHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { describeContract } from './contract-suite.ts';
import { send, type Answer, type Ask } from './loopback-client.ts';

const files = new Map([
  ['/', { type: 'text/html; charset=utf-8', bytes: Buffer.from('<!doctype html>page') }],
  ['/assets/a.js', { type: 'text/javascript; charset=utf-8', bytes: Buffer.from('1') }],
]);

type Served = {
  readonly loopback: Loopback;
  readonly host: OpenHost;
  readonly port: number;
  readonly key: string;
  readonly guessed: () => number;
  readonly pages: readonly number[];
  readonly close: () => Promise<void>;
};

async function serve(bodyLimit?: number): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'eavewright-'));
  const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
  if (!host.ok) throw new Error(host.problem.code);
  let guesses = 0;
  const pages: number[] = [];
  const loopback = await serveLoopback({
    host: host.value,
    files: () => files,
    pagesChanged: (count) => pages.push(count),
    guessed: () => {
      guesses += 1;
    },
    ...(bodyLimit === undefined ? {} : { bodyLimit }),
  });
  const address = new URL(loopback.address);
  return {
    loopback,
    host: host.value,
    port: Number(address.port),
    key: address.hash.slice('#t='.length),
    guessed: () => guesses,
    pages,
    close: async () => {
      await loopback.close();
      host.value.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Headers of a command as our own page sends it. */
function pageHeaders({ port, key }: Served): Record<string, string> {
  return {
    host: `127.0.0.1:${port}`,
    origin: `http://127.0.0.1:${port}`,
    'content-type': 'application/json',
    authorization: `Bearer ${key}`,
  };
}

async function* linesOf(body: ReadableStream<Uint8Array<ArrayBuffer>>): AsyncGenerator<string> {
  let rest = '';
  for await (const part of body.pipeThrough(new TextDecoderStream())) {
    const lines = (rest + part).split('\n');
    rest = lines.pop() ?? '';
    yield* lines;
  }
}

describeContract(
  'HTTP on loopback',
  async () => {
    const served = await serve();
    const { host: _host, ...headers } = pageHeaders(served);
    const post = (path: string, input: unknown, signal?: AbortSignal) =>
      fetch(`http://127.0.0.1:${served.port}${path}`, {
        method: 'POST',
        headers,
        body: JSON.stringify(input),
        ...(signal === undefined ? {} : { signal }),
      });
    return {
      invoke: async (command, input) => (await post(`/api/${command}`, input)).json(),
      subscribe(callback) {
        const stop = new AbortController();
        const listen = async (): Promise<void> => {
          const response = await post('/events', {}, stop.signal);
          if (response.body === null) return;
          for await (const line of linesOf(response.body)) {
            if (line !== '') callback(JSON.parse(line));
          }
        };
        listen().catch(() => undefined);
        return () => stop.abort();
      },
      close: served.close,
    };
  },
  { shell: 'loopback', savesFiles: false },
);

function isReached(host: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port });
    socket.once('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', () => resolve(false));
  });
}

describe('the loopback door', () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve(2000);
  });
  afterAll(() => served.close());

  /** A command as our page sends it, with some headers put otherwise; an empty one is left out. */
  function command(otherwise: Record<string, string>, more: Partial<Ask> = {}): Promise<Answer> {
    const headers = Object.fromEntries(
      Object.entries({ ...pageHeaders(served), ...otherwise }).filter(([, text]) => text !== ''),
    );
    return send({ port: served.port, method: 'POST', path: '/api/app.info', body: '{}', ...more, headers });
  }

  test('our own page is answered', async () => {
    const answer = await command({});
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.text)).toMatchObject({ ok: true, value: { shell: 'loopback' } });
    expect((await command({ 'sec-fetch-site': 'same-origin' })).status).toBe(200);
  });

  const port = (): number => served.port;
  test.each([
    ['a name that resolves here', () => ({ host: `localhost:${port()}` }), 421],
    ['an attacker’s name', () => ({ host: 'evil.test' }), 421],
    ['an attacker’s name with our port', () => ({ host: `evil.test:${port()}` }), 421],
    ['the address without port', () => ({ host: '127.0.0.1' }), 421],
    ['the other address of this machine', () => ({ host: `[::1]:${port()}` }), 421],
    ['another port', () => ({ host: `127.0.0.1:${port() + 1}` }), 421],
    ['no origin', () => ({ origin: '' }), 403],
    ['a sandboxed page', () => ({ origin: 'null' }), 403],
    ['a page of another port', () => ({ origin: `http://127.0.0.1:${port() + 1}` }), 403],
    ['a page of another name', () => ({ origin: `http://localhost:${port()}` }), 403],
    ['a page over TLS', () => ({ origin: `https://127.0.0.1:${port()}` }), 403],
    ['a page of the same site only', () => ({ 'sec-fetch-site': 'same-site' }), 403],
    ['a page of another site', () => ({ 'sec-fetch-site': 'cross-site' }), 403],
    ['a form', () => ({ 'content-type': 'application/x-www-form-urlencoded' }), 415],
    ['plain text', () => ({ 'content-type': 'text/plain' }), 415],
    ['JSON with a parameter', () => ({ 'content-type': 'application/json; charset=utf-8' }), 415],
    ['no type', () => ({ 'content-type': '' }), 415],
    ['no key', () => ({ authorization: '' }), 401],
    ['a wrong key', () => ({ authorization: 'Bearer AAAA' }), 401],
    ['the key without its scheme', () => ({ authorization: served.key }), 401],
    ['the key and more', () => ({ authorization: `Bearer ${served.key}A` }), 401],
    ['the key in a cookie', () => ({ authorization: '', cookie: `key=${served.key}` }), 401],
  ] as const)('a command with %s is refused', async (_what, headers, status) => {
    const answer = await command(headers());
    expect(answer.status).toBe(status);
    expect(answer.text).not.toBe('');
  });

  test('a request without a Host is refused', async () => {
    expect((await command({ host: '' })).status).toBe(400);
  });

  test.each([
    ['GET', '/api/app.info', 405],
    ['PUT', '/api/app.info', 405],
    ['DELETE', '/api/app.info', 405],
    ['OPTIONS', '/api/app.info', 405],
    ['HEAD', '/', 405],
    ['POST', '/', 405],
    ['OPTIONS', '/', 405],
    ['TRACE', '/', 405],
    ['GET', '/events', 405],
    ['GET', '/package.json', 404],
    ['GET', '/../package.json', 404],
    ['GET', '/..%2fpackage.json', 404],
    ['GET', '/assets/..%2f..%2fpackage.json', 404],
    ['GET', '/assets/', 404],
    ['GET', '//evil.test/', 404],
    ['GET', 'http://evil.test/', 404],
    ['GET', '/open/guess', 404],
  ])('%s %s is answered with %i', async (method, path, status) => {
    const answer = await send({
      port: served.port,
      method,
      path,
      headers: { host: `127.0.0.1:${served.port}` },
    });
    expect(answer.status).toBe(status);
  });

  test('a body beyond the limit is refused, with and without its length said before', async () => {
    const big = JSON.stringify({ x: 'x'.repeat(3000) });
    expect((await command({ 'content-length': String(big.length) }, { body: big })).status).toBe(413);
    expect((await command({ 'transfer-encoding': 'chunked' }, { body: big })).status).toBe(413);
  });

  test('a body that is not JSON is refused without a word about the program', async () => {
    const answer = await command({}, { body: '{"x":' });
    expect(answer.status).toBe(400);
    expect(JSON.parse(answer.text)).toEqual({ ok: false, problem: { code: 'internal' } });
  });

  test('every answer carries the policy, and none lets other pages read it', async () => {
    const answers = [
      await send({ port: served.port, headers: { host: `127.0.0.1:${served.port}` } }),
      await send({ port: served.port, headers: { host: 'evil.test' } }),
      await command({}),
      await command({ authorization: '' }),
      await command({}, { method: 'OPTIONS' }),
    ];
    for (const { headers } of answers) {
      expect(headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self';/);
      expect(headers['content-security-policy']).toContain("require-trusted-types-for 'script'");
      expect(headers['content-security-policy']).not.toContain('unsafe');
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cross-origin-resource-policy': 'same-origin',
        'cross-origin-opener-policy': 'same-origin',
        'cache-control': 'no-store',
      });
      expect(Object.keys(headers).filter((name) => /^access-control|^set-cookie/.test(name))).toEqual([]);
    }
  });

  test('it listens on 127.0.0.1 alone', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4')
      .map(({ address }) => address);
    expect(await isReached('127.0.0.1', served.port)).toBe(true);
    for (const address of [...others, '::1']) {
      expect([address, await isReached(address, served.port)]).toEqual([address, false]);
    }
  });

  test('the key has 32 random bytes and is another in each run', async () => {
    const other = await serve();
    expect(Buffer.from(served.key, 'base64url').length).toBe(32);
    expect(other.key).not.toBe(served.key);
    await other.close();
  });

  test('an address for a command line opens the page once', async () => {
    const once = new URL(served.loopback.openOnceAddress());
    expect(once.href).not.toContain(served.key);
    const ask = { port: served.port, path: once.pathname, headers: { host: `127.0.0.1:${served.port}` } };
    const first = await send(ask);
    expect([first.status, first.headers.location]).toEqual([303, `/#t=${served.key}`]);
    expect((await send(ask)).status).toBe(404);
  });

  test('a websocket gets no answer', async () => {
    const socket = connect({ host: '127.0.0.1', port: served.port });
    socket.write(
      `GET / HTTP/1.1\r\nHost: 127.0.0.1:${served.port}\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n\r\n`,
    );
    let text = '';
    for await (const part of socket) text += String(part);
    expect(text).toBe('');
  });
});

test('twenty wrong keys end the run', async () => {
  const served = await serve();
  for (let attempt = 1; attempt <= 20; attempt += 1) {
    const headers = { ...pageHeaders(served), authorization: `Bearer ${attempt}` };
    await send({ port: served.port, method: 'POST', path: '/api/app.info', headers, body: '{}' });
    expect(served.guessed()).toBe(attempt < 20 ? 0 : 1);
  }
  await served.close();
});

test('three hundred idle connections and a flood of refused requests do not keep our own page from its answer', async () => {
  const served = await serve();
  const idle = Array.from({ length: 300 }, () => {
    const socket = connect({ host: '127.0.0.1', port: served.port });
    socket.on('error', () => undefined);
    socket.write('POST /api/app.info HTTP/1.1\r\nHost: 127');
    return socket;
  });
  const flood = Array.from({ length: 200 }, (_, number) =>
    send({ port: served.port, path: `/${'x'.repeat(number)}`, headers: { host: `evil${number}.test` } }),
  );
  const ours = await send({
    port: served.port,
    method: 'POST',
    path: '/api/app.info',
    headers: pageHeaders(served),
    body: '{}',
  });
  expect(ours.status).toBe(200);
  expect(new Set((await Promise.all(flood)).map(({ status }) => status))).toEqual(new Set([421]));
  for (const socket of idle) socket.destroy();
  await served.close();
});

test('the key stands in no answer to anybody, no header and no line that the host writes', async () => {
  const served = await serve();
  const written: string[] = [];
  const write = process.stderr.write.bind(process.stderr);
  process.stderr.write = (text: string) => {
    written.push(text);
    return true;
  };
  const headers = pageHeaders(served);
  const answers = [
    await send({ port: served.port, headers: { host: `127.0.0.1:${served.port}` } }),
    await send({ port: served.port, method: 'POST', path: '/api/app.report', headers, body: '{}' }),
    await send({ port: served.port, method: 'POST', path: '/api/no.such', headers, body: '{}' }),
    await send({ port: served.port, method: 'POST', path: '/api/jobs.get', headers, body: '{"id":7}' }),
    await send({ port: served.port, path: '/gone', headers: { host: `127.0.0.1:${served.port}` } }),
  ];
  process.stderr.write = write;
  for (const answer of answers) expect(JSON.stringify(answer)).not.toContain(served.key);
  expect(written.join('')).not.toContain(served.key);
  await served.close();
});

test('the host knows how many pages are open', async () => {
  const served = await serve();
  const { host: _host, ...headers } = pageHeaders(served);
  const stop = new AbortController();
  await fetch(`http://127.0.0.1:${served.port}/events`, {
    method: 'POST',
    headers,
    body: '{}',
    signal: stop.signal,
  });
  stop.abort();
  await expect.poll(() => served.pages).toEqual([1, 0]);
  await served.close();
});

test.each([
  undefined,
  null,
  7,
  {},
  [],
  '',
  'Bearer',
  'Bearer ',
  'bearer KEY',
  'Bearer KEY ',
  'Bearer KEYKEY',
])('%j is not the key', (presented) => {
  expect(hasKey(presented, 'KEY')).toBe(false);
});

test('the key is the key', () => {
  expect(hasKey('Bearer KEY', 'KEY')).toBe(true);
});
