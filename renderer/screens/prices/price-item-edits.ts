import type { Reply } from '../../../core/contract/reply.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { createAutosave, type Autosave, type SaveState } from '../../host/autosave.ts';

/** An item without its prices: what the entries beside the list change. */
export type PriceItemEntries = Omit<PriceItem, 'prices'>;

type Edited = {
  readonly entries: PriceItemEntries;
  readonly autosave: Autosave<PriceItemEntries>;
  readonly saveState: SaveState;
};

export type PriceItemEdits = {
  /** Changes entries of an item and saves it. */
  readonly change: (item: PriceItem, change: Partial<PriceItemEntries>) => void;
  /** What was changed and is not let go of yet. */
  readonly editedOf: (id: string) => Pick<Edited, 'entries' | 'saveState'> | undefined;
  /**
   * Lets go of the items that are on the disk, so that what other windows change shows again.
   * @param list - the list as it stands on the screen.
   */
  readonly settle: (list: readonly PriceItem[]) => void;
  /** Tries again what a lost host did not take. */
  readonly retry: () => void;
  readonly subscribe: (listener: () => void) => () => void;
};

/** What the edits need from around them. */
export type EditsWorld = {
  readonly save: (entries: PriceItemEntries) => Promise<Reply<unknown>>;
  /** Hears of entries that are on the disk now: puts them in the list and asks the host for it afresh. */
  readonly onSaved: (entries: PriceItemEntries) => void;
  /** True where this is the newest list there is and no newer is on its way. */
  readonly isNewest: (list: readonly PriceItem[]) => boolean;
};

/**
 * Holds the items that are changed in this window, outside of the screen. What is typed is shown from here until the list
 * on the screen holds it: between the answer to a save and the list there is a moment in which the list is old, and a
 * letter typed then would be put behind old text.
 */
export function createPriceItemEdits(world: EditsWorld): PriceItemEdits {
  const edited = new Map<string, Edited>();
  const listeners = new Set<() => void>();
  const said = (): void => {
    for (const listener of listeners) listener();
  };

  const newAutosave = (id: string): Autosave<PriceItemEntries> => {
    const autosave = createAutosave<PriceItemEntries>(async (entries) => {
      const reply = await world.save(entries);
      if (reply.ok) world.onSaved(entries);
      return reply;
    });
    autosave.subscribe(() => {
      const held = edited.get(id);
      if (held === undefined) return;
      edited.set(id, { ...held, saveState: autosave.state() });
      said();
    });
    return autosave;
  };

  return {
    change(item, change) {
      const held = edited.get(item.id);
      const entries = { ...(held?.entries ?? entriesOf(item)), ...change };
      const autosave = held?.autosave ?? newAutosave(item.id);
      edited.set(item.id, { entries, autosave, saveState: autosave.state() });
      autosave.put(entries);
      said();
    },
    editedOf: (id) => edited.get(id),
    settle(list) {
      if (!world.isNewest(list)) return;
      const done = [...edited].filter(([, { autosave }]) => autosave.state().kind === 'saved');
      for (const [id] of done) edited.delete(id);
      if (done.length > 0) said();
    },
    retry() {
      for (const { autosave } of edited.values()) if (autosave.state().kind === 'waiting') autosave.retry();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}

/** An item's entries, its prices left out. */
export function entriesOf(item: PriceItem): PriceItemEntries {
  const { prices: _prices, ...entries } = item;
  return entries;
}
