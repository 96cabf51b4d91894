import { useSyncExternalStore } from 'react';

/** Whether the host answers. `no-key`: it answers, but this window has not the key of its run. */
export type Connection = 'here' | 'no-answer' | 'no-key';

const retryMs = 1000;

let connection: Connection = 'here';
let watching = false;
const listeners = new Set<() => void>();

/** Notes that the host gave an answer. */
export function noteHostAnswered(): void {
  change('here');
}

/** Notes that no answer came. */
export function noteHostLost(reason: Exclude<Connection, 'here'>): void {
  change(reason);
}

/** Asks again every second until the host answers; one watch at a time. */
export function watchForHost(ask: () => Promise<unknown>): void {
  if (watching) return;
  watching = true;
  const again = async (): Promise<void> => {
    try {
      await ask();
      watching = false;
      noteHostAnswered();
    } catch {
      window.setTimeout(() => void again(), retryMs);
    }
  };
  window.setTimeout(() => void again(), retryMs);
}

/** The present connection, for code outside of React. */
export function currentConnection(): Connection {
  return connection;
}

/** Calls back at each change of the connection; returns the function that stops it. */
export function onConnection(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

/** The present connection; the component is drawn again when it changes. */
export function useConnection(): Connection {
  return useSyncExternalStore(onConnection, currentConnection);
}

function change(next: Connection): void {
  if (next === connection) return;
  connection = next;
  for (const listener of listeners) listener();
}
