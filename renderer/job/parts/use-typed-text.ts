import { useState } from 'react';
import { readEntry } from '../editor/read-entry.ts';
import { writeEntry } from './write-entry.ts';

/** What stands in an entry, and what to call as it is typed in and left. */
export type TypedText = {
  readonly text: string;
  readonly type: (text: string) => void;
  readonly leave: () => void;
};

/**
 * Keeps the text of an entry as it is typed until the entry is left; then its value stands there in the carpenter's
 * form. A change from outside, such as undo, shows at once.
 * @param path - dotted path of the entry.
 * @param value - value in the document.
 * @param draft - text that does not read, kept in the document.
 * @param onText - takes what was typed into the document.
 */
export function useTypedText(
  path: string,
  value: unknown,
  draft: string | undefined,
  onText: (text: string) => void,
): TypedText {
  const [typed, setTyped] = useState<{ readonly text: string; readonly value: unknown } | null>(null);
  const asTyped = typed !== null && Object.is(typed.value, value) ? typed.text : undefined;
  return {
    text: draft ?? asTyped ?? writeEntry(path, value),
    type: (text) => {
      const read = readEntry(path, text);
      setTyped(read.ok ? { text, value: read.value } : null);
      onText(text);
    },
    leave: () => setTyped(null),
  };
}
