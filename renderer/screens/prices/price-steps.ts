import { useSyncExternalStore } from 'react';
import type { PriceChange } from '../../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { withChanges } from '../../../core/pricing/table/table-cells.ts';
import { attempt } from '../../host/attempt.ts';
import { queryClient } from '../../host/queries.ts';
import { notify } from '../../kit/notices.tsx';

/** What was done to the price list in this window, as it is called in a menu, and the host's numbers for it. */
type Step = {
  readonly label: string;
  readonly stepIds: readonly number[];
  /** Steps in a row of one key are undone as one: the letters of an entry. */
  readonly key: string | null;
};

type Steps = { readonly done: readonly Step[]; readonly undone: readonly Step[] };

/** The host lets go of old ones too. */
const mostSteps = 200;

/** The list of today, as the screen holds it. */
export const todaysList = ['prices.list', { on: 'today' }] as const;

let steps: Steps = { done: [], undone: [] };
let isBusy = false;
const listeners = new Set<() => void>();

function change(next: Steps): void {
  steps = next;
  for (const listener of listeners) listener();
}

/** Puts a change that the host has made on top of what can be undone. */
export function noteStep(label: string, stepId: number, key: string | null = null): void {
  const last = steps.done.at(-1);
  const joins = key !== null && last?.key === key;
  const step = joins ? { ...last, stepIds: [...last.stepIds, stepId] } : { label, stepIds: [stepId], key };
  change({ done: [...(joins ? steps.done.slice(0, -1) : steps.done), step].slice(-mostSteps), undone: [] });
}

/**
 * Makes changes to the price list, shown at once and held to be undone.
 * @returns whether the host made them; why not has been said.
 */
export async function changePriceList(label: string, changes: readonly PriceChange[]): Promise<boolean> {
  if (changes.length === 0) return true;
  queryClient.setQueryData<PriceItem[]>(todaysList, (list) =>
    list === undefined ? undefined : [...withChanges(list, changes)],
  );
  const made = await attempt('prices.change', { changes: [...changes] });
  // What the list said already leaves nothing to undo.
  if (made !== undefined && made.changed > 0) noteStep(label, made.stepId);
  return made !== undefined;
}

/** Takes the last change back. */
export async function undoPrices(): Promise<void> {
  const step = steps.done.at(-1);
  if (step === undefined) return;
  await turn(step, 'Undone', (stepId) => ({
    done: steps.done.filter((one) => one !== step),
    undone: [...steps.undone, { ...step, stepIds: [stepId], key: null }],
  }));
}

/** Makes the change again that was taken back last. */
export async function redoPrices(): Promise<void> {
  const step = steps.undone.at(-1);
  if (step === undefined) return;
  await turn(step, 'Done again', (stepId) => ({
    done: [...steps.done, { ...step, stepIds: [stepId], key: null }],
    undone: steps.undone.filter((one) => one !== step),
  }));
}

async function turn(step: Step, word: string, then: (stepId: number) => Steps): Promise<void> {
  if (isBusy) return;
  isBusy = true;
  try {
    const made = await attempt('prices.undo', { stepIds: [...step.stepIds] });
    if (made === undefined) return;
    change(then(made.stepId));
    notify(`${word}: ${step.label}.`);
  } finally {
    isBusy = false;
  }
}

/** What can be undone and done again, as it is called; null where there is nothing. */
export function usePriceSteps(): { readonly undo: string | null; readonly redo: string | null } {
  const { done, undone } = useSyncExternalStore(subscribe, () => steps);
  return { undo: done.at(-1)?.label ?? null, redo: undone.at(-1)?.label ?? null };
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
