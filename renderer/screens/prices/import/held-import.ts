import { useSyncExternalStore } from 'react';
import type { CommandOutput } from '../../../../core/contract/contract.ts';

export type OpenedFile = CommandOutput<'prices.importOpen'>;

/** A supplier's file that the host has in hand. */
export type HeldImport = {
  readonly importId: string;
  readonly fileName: string;
  readonly opened: OpenedFile;
};

let held: HeldImport | null = null;
const listeners = new Set<() => void>();

/** Takes a file in hand, in place of the last one. */
export function holdImport(next: HeldImport | null): void {
  held = next;
  for (const listener of listeners) listener();
}

/** The file in hand; null where there is none. */
export function useHeldImport(): HeldImport | null {
  return useSyncExternalStore(subscribe, () => held);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
