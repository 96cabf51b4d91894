import type { ChangeEvent, HostEvent } from '../../core/contract/reply.ts';
import { HostLost, type Transport } from './transport.ts';
import { onNewKey, sessionKey, takeLaterKeys } from './session-key.ts';

const pauseMs = 2000;

/** Talks to the loopback host by POST, with the key of this run in a header. */
export function httpTransport(): Transport {
  let key = sessionKey();
  takeLaterKeys();
  onNewKey(() => {
    key = sessionKey();
  });
  const post = (path: string, body: string, signal?: AbortSignal): Promise<Response> =>
    fetch(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${key}` },
      body,
      cache: 'no-store',
      ...(signal === undefined ? {} : { signal }),
    });
  return {
    async invoke(command, input) {
      let response: Response;
      try {
        response = await post(`/api/${command}`, JSON.stringify(input));
      } catch {
        throw new HostLost('no-answer');
      }
      if (response.status === 401 || response.status === 403) throw new HostLost('no-key');
      try {
        return (await response.json()) as unknown;
      } catch {
        throw new HostLost('no-answer');
      }
    },
    subscribe(callback, gone) {
      const stop = new AbortController();
      void listen(() => post('/events', '{}', stop.signal), stop.signal, callback, gone);
      return () => stop.abort();
    },
  };
}

/** Reads events, one JSON value a line, and asks again when the answer ends or another key came, until told to stop. */
async function listen(
  ask: () => Promise<Response>,
  signal: AbortSignal,
  callback: (event: HostEvent) => void,
  gone: () => void,
): Promise<void> {
  while (!signal.aborted) {
    try {
      const response = await ask();
      if (response.status === 401 || response.status === 403) {
        gone();
        await anotherKey();
        continue;
      }
      if (response.ok && response.body !== null) {
        for await (const line of linesOf(response.body)) {
          for (const event of eventsOf(line)) callback(event);
        }
      }
    } catch {
      // The host is gone or the page is closing; both are dealt with below.
    }
    if (signal.aborted) return;
    gone();
    await new Promise((resolve) => window.setTimeout(resolve, pauseMs));
  }
}

/** A wrong key stays wrong, and the host counts wrong keys: so nothing is asked until there is another. */
function anotherKey(): Promise<void> {
  return new Promise((resolve) => {
    const stop = onNewKey(() => {
      stop();
      resolve();
    });
  });
}

async function* linesOf(body: ReadableStream<Uint8Array<ArrayBuffer>>): AsyncGenerator<string> {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  for (;;) {
    const { done, value } = await reader.read();
    const lines = (rest + (value ?? '')).split('\n');
    rest = lines.pop() ?? '';
    yield* lines;
    if (done) break;
  }
  yield rest;
}

function eventsOf(line: string): readonly HostEvent[] {
  if (line.trim() === '') return [];
  const parsed: unknown = JSON.parse(line);
  const list: readonly unknown[] = Array.isArray(parsed) ? parsed : [parsed];
  return list.filter(isHostEvent);
}

const topics = [
  'jobs',
  'prices',
  'settings',
  'stock',
  'money',
] as const satisfies readonly ChangeEvent['what'][];

function isHostEvent(value: unknown): value is HostEvent {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return false;
  switch (value.kind) {
    case 'changed':
      return 'what' in value && topics.some((topic) => topic === value.what);
    case 'solving':
      return 'solveId' in value && typeof value.solveId === 'string' && 'key' in value && 'costUsd' in value;
    case 'staircase':
      return 'solveId' in value && typeof value.solveId === 'string' && 'staircase' in value;
    case 'importing':
      return 'importId' in value && typeof value.importId === 'string' && 'done' in value;
    default:
      return false;
  }
}
