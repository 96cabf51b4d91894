import type { Problem } from '../problems/problem.ts';

/** What crosses the bridge in answer to a command: the value, or the problem; never an exception. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/** Something the host tells the page without being asked. */
export type HostEvent = { readonly kind: 'changed'; readonly what: 'jobs' | 'prices' | 'settings' };
