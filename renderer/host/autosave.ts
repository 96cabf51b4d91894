import type { Problem } from '../../core/problems/problem.ts';
import type { Reply } from '../../core/contract/reply.ts';

/** Where a document stands between the person and the disk. */
export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  /** The host does not answer; it is tried again when it does. */
  | { readonly kind: 'waiting' }
  | { readonly kind: 'problem'; readonly problem: Problem };

export type Autosave<T> = {
  /** Takes the newest value and saves it as soon as the one before has been answered. */
  readonly put: (value: T) => void;
  /** Tries again what was not saved. */
  readonly retry: () => void;
  readonly state: () => SaveState;
  readonly subscribe: (listener: () => void) => () => void;
};

let unsaved = 0;

/** Whether anything that was typed in this window is not on the disk yet. */
export function hasUnsaved(): boolean {
  return unsaved > 0;
}

/**
 * Saves the newest of a stream of values, one at a time and never an older after a newer.
 * @param save - saves one value; its promise rejects where the host did not answer.
 */
export function createAutosave<T>(save: (value: T) => Promise<Reply<unknown>>): Autosave<T> {
  let pending: { value: T } | undefined;
  let busy = false;
  let state: SaveState = { kind: 'saved' };
  const listeners = new Set<() => void>();

  const become = (next: SaveState): void => {
    unsaved += Number(next.kind !== 'saved') - Number(state.kind !== 'saved');
    state = next;
    for (const listener of listeners) listener();
  };

  const run = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    while (pending !== undefined) {
      const taken = pending;
      pending = undefined;
      if (state.kind !== 'saving') become({ kind: 'saving' });
      let next: SaveState;
      try {
        const reply = await save(taken.value);
        next = reply.ok ? { kind: 'saved' } : { kind: 'problem', problem: reply.problem };
      } catch {
        next = { kind: 'waiting' };
      }
      if (next.kind === 'saved') continue;
      pending ??= taken;
      busy = false;
      become(next);
      return;
    }
    busy = false;
    become({ kind: 'saved' });
  };

  return {
    put(value) {
      pending = { value };
      void run();
    },
    retry() {
      void run();
    },
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}
