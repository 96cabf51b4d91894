import { useSyncExternalStore } from 'react';
import { shopSettingsSchema, type ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { invoke } from '../../bridge.ts';
import { createAutosave, type SaveState } from '../../host/autosave.ts';
import { currentConnection, onConnection } from '../../host/connection.ts';
import { queryClient } from '../../host/queries.ts';

type Held = { readonly settings: ShopSettings; readonly revision: number };

/**
 * The settings as they stand on the screen, kept outside of the screen so that a change that waits for the host outlives
 * a walk to another screen.
 */
let held: Held | null = null;
const listeners = new Set<() => void>();

const autosave = createAutosave<ShopSettings>(async (settings) => {
  const reply = await invoke('settings.save', { settings, baseRevision: held?.revision ?? 0 });
  if (reply.ok) {
    hold({ settings: held?.settings ?? settings, revision: reply.value.revision });
    queryClient.setQueryData(['settings.get', {}], { settings, revision: reply.value.revision });
  }
  return reply;
});

onConnection(() => {
  if (currentConnection() === 'here' && autosave.state().kind === 'waiting') autosave.retry();
});

/** Takes what the host answered, unless the person has newer changes that are not saved yet. */
export function takeSettings(answer: Held): void {
  if (held !== null && (autosave.state().kind !== 'saved' || held.revision >= answer.revision)) return;
  hold(answer);
}

/** Takes the host's settings in place of the person's own changes, where both changed. */
export function takeSettingsAnyway(answer: Held): void {
  held = { settings: answer.settings, revision: answer.revision };
  autosave.put(answer.settings);
}

/** Changes the settings and saves them. */
export function changeSettings(change: (settings: ShopSettings) => ShopSettings): void {
  if (held === null) return;
  const settings = shopSettingsSchema.parse(change(held.settings));
  hold({ settings, revision: held.revision });
  autosave.put(settings);
}

/** The settings on the screen; null until the host has answered. */
export function useSettings(): ShopSettings | null {
  return useSyncExternalStore(subscribe, () => held)?.settings ?? null;
}

/** Whether the settings on the screen are on the disk. */
export function useSettingsSaveState(): SaveState {
  return useSyncExternalStore(autosave.subscribe, autosave.state);
}

function hold(next: Held): void {
  held = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
