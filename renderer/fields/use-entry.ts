import { useState } from 'react';
import { readEntry, type Entry, type EntryKind } from './entry.ts';

export type EntryState<T> = {
  readonly text: string;
  readonly entry: Entry<T>;
  readonly type: (text: string) => void;
  readonly leave: () => void;
};

type Typed<T> = { readonly text: string; readonly value: T | null; readonly unreadable: boolean };

/**
 * Keeps what is typed exactly as it is typed, and writes it in the carpenter's form once the field is left.
 * When the value changes from outside (undo, another window), the field shows the new value.
 * @param kind - how the field reads and writes.
 * @param value - the last good value; null for a blank.
 * @param draft - raw text that does not read, kept by the owner; null where there is none; undefined where the owner keeps none.
 */
export function useEntry<T>(options: {
  readonly kind: EntryKind<T>;
  readonly value: T | null;
  readonly draft: string | null | undefined;
  readonly mayBeBlank: boolean;
  readonly onEntry: (entry: Entry<T>) => void;
}): EntryState<T> {
  const { kind, value, draft, mayBeBlank, onEntry } = options;
  const [typed, setTyped] = useState<Typed<T> | null>(null);
  const settled = draft ?? (value === null ? '' : kind.write(value));
  const text = typed !== null && belongs(typed, value, draft) ? typed.text : settled;
  const entry = readEntry(kind, text, mayBeBlank);
  return {
    text,
    entry,
    type(next) {
      const read = readEntry(kind, next, mayBeBlank);
      const unreadable = read.problem !== null;
      setTyped({ text: next, value: unreadable ? value : read.value, unreadable });
      onEntry(read);
    },
    leave() {
      if (entry.problem === null || draft !== undefined) setTyped(null);
    },
  };
}

/** Whether what was typed is still what the owner holds; else the owner's value was changed from outside. */
function belongs<T>(typed: Typed<T>, value: T | null, draft: string | null | undefined): boolean {
  if (typeof draft === 'string') return draft === typed.text;
  return Object.is(typed.value, value) && (draft === undefined || !typed.unreadable);
}
