import { useSyncExternalStore } from 'react';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { invoke } from '../../bridge.ts';
import { createAutosave, type Autosave, type SaveState } from '../../host/autosave.ts';
import { currentConnection, onConnection } from '../../host/connection.ts';
import { queryClient } from '../../host/queries.ts';

/** An item without its prices: what the entries beside the list change. */
export type PriceItemEntries = Omit<PriceItem, 'prices'>;

type Edited = {
  readonly entries: PriceItemEntries;
  readonly autosave: Autosave<PriceItemEntries>;
  readonly saveState: SaveState;
};

const savedState: SaveState = { kind: 'saved' };

/** Items that were changed in this window, kept outside of the screen until they are on the disk. */
const edited = new Map<string, Edited>();
const listeners = new Set<() => void>();

onConnection(() => {
  if (currentConnection() !== 'here') return;
  for (const { autosave } of edited.values()) if (autosave.state().kind === 'waiting') autosave.retry();
});

/** Changes entries of an item and saves it. */
export function changePriceItem(item: PriceItem, change: Partial<PriceItemEntries>): void {
  const held = edited.get(item.id);
  const entries = { ...(held?.entries ?? entriesOf(item)), ...change };
  const autosave = held?.autosave ?? newAutosave(item.id);
  edited.set(item.id, { entries, autosave, saveState: autosave.state() });
  said();
  autosave.put(entries);
}

/** The item as it stands on the screen, and whether that is on the disk. */
export function usePriceItem(item: PriceItem): {
  readonly entries: PriceItemEntries;
  readonly saveState: SaveState;
} {
  const held = useSyncExternalStore(subscribe, () => edited.get(item.id));
  return { entries: held?.entries ?? entriesOf(item), saveState: held?.saveState ?? savedState };
}

function newAutosave(id: string): Autosave<PriceItemEntries> {
  const autosave = createAutosave<PriceItemEntries>(async (entries) => {
    const reply = await invoke('prices.saveItem', { item: entries });
    if (reply.ok) putInList(entries);
    return reply;
  });
  autosave.subscribe(() => {
    const held = edited.get(id);
    const saveState = autosave.state();
    if (saveState.kind === 'saved') edited.delete(id);
    else if (held !== undefined) edited.set(id, { ...held, saveState });
    said();
  });
  return autosave;
}

function putInList(entries: PriceItemEntries): void {
  queryClient.setQueryData<PriceItem[]>(['prices.list', {}], (list) =>
    list?.map((item) => (item.id === entries.id ? { ...entries, prices: item.prices } : item)),
  );
}

function entriesOf(item: PriceItem): PriceItemEntries {
  const { prices: _prices, ...entries } = item;
  return entries;
}

function said(): void {
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
