import { useMemo, useSyncExternalStore } from 'react';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { invoke } from '../../bridge.ts';
import { createAutosave, type Autosave, type SaveState } from '../../host/autosave.ts';
import { currentConnection, onConnection } from '../../host/connection.ts';
import { queryClient } from '../../host/queries.ts';

/** An item without its prices: what the entries beside the list change. */
export type PriceItemEntries = Omit<PriceItem, 'prices'>;

type Edited = { entries: PriceItemEntries; readonly autosave: Autosave<PriceItemEntries> };

/** Items that were changed in this window, kept outside of the screen until they are on the disk. */
const edited = new Map<string, Edited>();
const listeners = new Set<() => void>();
let version = 0;

onConnection(() => {
  if (currentConnection() !== 'here') return;
  for (const { autosave } of edited.values()) if (autosave.state().kind === 'waiting') autosave.retry();
});

/** Changes entries of an item and saves it. */
export function changePriceItem(item: PriceItem, change: Partial<PriceItemEntries>): void {
  const held = edited.get(item.id);
  const entries = { ...(held?.entries ?? entriesOf(item)), ...change };
  const autosave = held?.autosave ?? newAutosave(item.id);
  edited.set(item.id, { entries, autosave });
  said();
  autosave.put(entries);
}

/** The item as it stands on the screen, and whether that is on the disk. */
export function usePriceItem(item: PriceItem): {
  readonly entries: PriceItemEntries;
  readonly saveState: SaveState;
} {
  const seen = useSyncExternalStore(subscribe, () => version);
  return useMemo(() => {
    const held = edited.get(item.id);
    return {
      entries: held?.entries ?? entriesOf(item),
      saveState: held?.autosave.state() ?? { kind: 'saved' },
    };
    // `seen` stands for the map, which is changed in place.
  }, [item, seen]);
}

function newAutosave(id: string): Autosave<PriceItemEntries> {
  const autosave = createAutosave<PriceItemEntries>(async (entries) => {
    const reply = await invoke('prices.saveItem', { item: entries });
    if (reply.ok) putInList(entries);
    return reply;
  });
  autosave.subscribe(() => {
    if (autosave.state().kind === 'saved') edited.delete(id);
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
  version += 1;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
