import { randomBytes } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Problem } from '../core/problems/problem.ts';
import { fail } from '../core/result.ts';
import type { BuiltFiles } from './built-files.ts';
import type { Host } from './host.ts';
import { largestBody, readJson } from './loopback/body.ts';
import { createEventStreams } from './loopback/event-streams.ts';
import { refuseAny, refuseCommand, type Refusal } from './loopback/gate.ts';
import { pageHeaders } from './page-headers.ts';

export type LoopbackOptions = {
  readonly host: Host;
  /** The built page; asked for each time, so that a rebuild shows on reload. */
  readonly files: () => BuiltFiles;
  /** Hears how many pages are open, after each change. */
  readonly pagesChanged?: (pages: number) => void;
  /** Called when too many wrong keys came: someone is guessing. */
  readonly guessed?: () => void;
  readonly bodyLimit?: number;
};

export type Loopback = {
  /** `http://127.0.0.1:PORT/#t=KEY`: the key stands in the fragment, which no request carries. */
  readonly address: string;
  /** An address that opens the page once, for a browser's command line, which others on the machine can read. */
  readonly openOnceAddress: () => string;
  readonly close: () => Promise<void>;
};

const wrongKeysAllowed = 20;

/** Serves the program to browsers of this machine, on 127.0.0.1 alone and a port that the system picks. */
export async function serveLoopback(options: LoopbackOptions): Promise<Loopback> {
  const key = randomBytes(32).toString('base64url');
  const tickets = new Set<string>();
  let host = '';
  let wrongKeys = 0;
  const streams = createEventStreams(options.pagesChanged ?? (() => undefined));
  const unsubscribe = options.host.subscribe((event) => streams.send(event));

  async function command(request: IncomingMessage, response: ServerResponse, path: string): Promise<void> {
    const refusal = refuseCommand(request.method, request.headers, host, key);
    if (refusal !== undefined) {
      refuse(response, refusal);
      if (refusal === 401) {
        wrongKeys += 1;
        if (wrongKeys === wrongKeysAllowed) options.guessed?.();
      }
      return;
    }
    const body = await readJson(request, options.bodyLimit ?? largestBody);
    if (body === 'too-large') return answer(response, 413, fail(tooLarge));
    if (body === 'not-json') return answer(response, 400, fail(notJson));
    if (path === '/events') {
      response.writeHead(200, { ...pageHeaders, 'content-type': 'application/x-ndjson' });
      return streams.add(response);
    }
    answer(response, 200, await options.host.dispatch(path.slice('/api/'.length), body.value));
  }

  function page(request: IncomingMessage, response: ServerResponse, path: string): void {
    if (request.method !== 'GET') return refuse(response, 405);
    if (tickets.delete(path)) {
      response.writeHead(303, { ...pageHeaders, location: `/#t=${key}` });
      response.end();
      return;
    }
    const file = options.files().get(path);
    if (file === undefined) return refuse(response, 404);
    response.writeHead(200, {
      ...pageHeaders,
      'content-type': file.type,
      'content-length': file.bytes.length,
    });
    response.end(file.bytes);
  }

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const refusal = refuseAny(request.headers, host);
    if (refusal !== undefined) return refuse(response, refusal);
    // The address is compared as it came, never decoded or resolved: what is not in the map is not there.
    const path = (request.url ?? '').split('?')[0] ?? '';
    if (path === '/events' || path.startsWith('/api/')) return command(request, response, path);
    page(request, response, path);
  }

  const server = createServer((request, response) => {
    handle(request, response).catch(() => {
      // The page went away in the middle of a request, or its body broke off.
      if (!response.headersSent) answer(response, 400, fail(notJson));
      else response.destroy();
    });
  });
  server.on('upgrade', (_request, socket) => socket.destroy());
  server.headersTimeout = 10_000;
  server.requestTimeout = 60_000;

  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  host = `127.0.0.1:${(server.address() as AddressInfo).port}`;

  return {
    address: `http://${host}/#t=${key}`,
    openOnceAddress() {
      const ticket = `/open/${randomBytes(32).toString('base64url')}`;
      tickets.add(ticket);
      setTimeout(() => tickets.delete(ticket), 60_000).unref();
      return `http://${host}${ticket}`;
    },
    async close() {
      unsubscribe();
      streams.close();
      await new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeIdleConnections();
        setTimeout(() => server.closeAllConnections(), 500).unref();
      });
    },
  };
}

const tooLarge: Problem = { code: 'entry-invalid', what: 'The file', detail: 'is too large to take in.' };
const notJson: Problem = { code: 'internal' };

const words: Readonly<Record<Refusal, string>> = {
  401: 'This window does not have the key of this run. Start Eavewright again.',
  403: 'Only pages of Eavewright may ask this.',
  404: 'There is no such file.',
  405: 'This cannot be asked in this way.',
  413: 'Too large.',
  415: 'Only JSON is read here.',
  421: 'This address is not served here.',
};

function refuse(response: ServerResponse, status: Refusal): void {
  // The body of a refused request is not read, so the connection cannot serve another.
  response.writeHead(status, {
    ...pageHeaders,
    'content-type': 'text/plain; charset=utf-8',
    connection: 'close',
  });
  response.end(words[status]);
}

function answer(response: ServerResponse, status: number, reply: unknown): void {
  response.writeHead(status, {
    ...pageHeaders,
    'content-type': 'application/json',
    ...(status === 200 ? {} : { connection: 'close' }),
  });
  response.end(JSON.stringify(reply));
}
