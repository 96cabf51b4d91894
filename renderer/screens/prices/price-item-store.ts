import { useEffect, useSyncExternalStore } from 'react';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { invoke } from '../../bridge.ts';
import type { SaveState } from '../../host/autosave.ts';
import { currentConnection, onConnection } from '../../host/connection.ts';
import { queryClient } from '../../host/queries.ts';
import { noteStep, todaysList } from './price-steps.ts';
import { createPriceItemEdits, entriesOf, type PriceItemEntries } from './price-item-edits.ts';

const savedState: SaveState = { kind: 'saved' };

const edits = createPriceItemEdits({
  async save(entries) {
    const from = queryClient.getQueryData<PriceItem[]>(todaysList)?.find(({ id }) => id === entries.id);
    if (from === undefined) return invoke('prices.saveItem', { item: entries });
    const reply = await invoke('prices.change', {
      changes: [{ kind: 'entries', from: entriesOf(from), to: entries }],
    });
    if (reply.ok) noteStep(`entries of ${entries.description}`, reply.value.stepId, `entries ${entries.id}`);
    return reply;
  },
  onSaved(entries) {
    queryClient.setQueryData<PriceItem[]>(todaysList, (list) =>
      list?.map((item) => (item.id === entries.id ? { ...entries, prices: item.prices } : item)),
    );
    // A list that was asked for before this save may come in yet; it is let go of for one that is asked for now.
    void queryClient.invalidateQueries({ queryKey: todaysList });
  },
  isNewest: (list) =>
    queryClient.getQueryData(todaysList) === list && queryClient.isFetching({ queryKey: todaysList }) === 0,
});

onConnection(() => {
  if (currentConnection() === 'here') edits.retry();
});

/** Changes entries of an item and saves it. */
export const changePriceItem = edits.change;

/** The item as it stands on the screen, and whether that is on the disk. */
export function usePriceItem(item: PriceItem): {
  readonly entries: PriceItemEntries;
  readonly saveState: SaveState;
} {
  const held = useSyncExternalStore(edits.subscribe, () => edits.editedOf(item.id));
  return { entries: held?.entries ?? entriesOf(item), saveState: held?.saveState ?? savedState };
}

/** Lets go of saved changes once the list on the screen holds them. To be used where the list is drawn. */
export function useSettledPriceItems(list: readonly PriceItem[] | undefined, isFetching: boolean): void {
  useEffect(() => {
    if (list !== undefined && !isFetching) edits.settle(list);
  }, [list, isFetching]);
}
