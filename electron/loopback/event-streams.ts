import type { ServerResponse } from 'node:http';
import type { HostEvent } from '../../core/contract/reply.ts';

/** An empty line this often keeps the stream alive and finds out when its page is gone. [ms] */
const pulseMs = 15_000;

/** The pages that listen, each on an answer that does not end: one JSON value a line. */
export type EventStreams = {
  add(response: ServerResponse): void;
  send(event: HostEvent): void;
  close(): void;
};

/**
 * Keeps the open event streams.
 * @param countChanged - hears how many pages listen, after each change.
 */
export function createEventStreams(countChanged: (pages: number) => void): EventStreams {
  const open = new Set<ServerResponse>();
  const pulse = setInterval(() => {
    for (const response of open) response.write('\n');
  }, pulseMs);
  pulse.unref();
  return {
    add(response) {
      open.add(response);
      response.on('close', () => {
        open.delete(response);
        countChanged(open.size);
      });
      response.write('\n');
      countChanged(open.size);
    },
    send(event) {
      for (const response of open) response.write(`${JSON.stringify(event)}\n`);
    },
    close() {
      clearInterval(pulse);
      for (const response of open) response.end();
    },
  };
}
