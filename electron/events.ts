import type { ChangeEvent, HostEvent } from '../core/contract/reply.ts';

/** Where the host's events go out to whoever listens. */
export type Events = {
  readonly publish: (event: HostEvent) => void;
  /** Returns the function that stops listening. */
  readonly subscribe: (listener: (event: HostEvent) => void) => () => void;
};

/** Makes a channel for events without listeners yet. */
export function createEvents(): Events {
  const listeners = new Set<(event: HostEvent) => void>();
  return {
    publish(event) {
      for (const listener of listeners) listener(event);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

/** What a write made different, by the command that did it. A job file can bring prices and settings along,
 * and a restored backup is another shop. */
export function changedBy(command: string): readonly ChangeEvent['what'][] {
  if (
    command === 'jobs.import' ||
    command === 'jobs.openSample' ||
    command === 'jobs.openFinishedSample' ||
    command === 'shop.restore'
  )
    return ['jobs', 'prices', 'settings', 'stock', 'money'];
  switch (command.split('.')[0]) {
    case 'jobs':
    case 'estimates':
      return ['jobs'];
    // A first quote takes the shop's next number.
    case 'quotes':
      return ['jobs', 'settings', 'money'];
    case 'prices':
      return ['prices'];
    case 'settings':
      return ['settings'];
    case 'stock':
      return ['stock', 'jobs'];
    // A receipt can note a price; what is billed and owed stands in the list of jobs.
    case 'costs':
    case 'billing':
    case 'learning':
    case 'money':
      return ['money', 'jobs', 'prices', 'settings'];
    default:
      return [];
  }
}
