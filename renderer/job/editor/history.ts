import type { Documents } from './documents.ts';

/** A change that was made: what it was, in words for the undo button, and the documents on its other side. */
export type Step = { readonly what: string; readonly documents: Documents };

/** The documents as they stand, and the ways back and forward. */
export type History = {
  readonly present: Documents;
  /** Newest last; each holds the documents from before its change. */
  readonly past: readonly Step[];
  /** Next last; each holds the documents from after its change. */
  readonly future: readonly Step[];
  /** Entry that is being typed in: its keystrokes are one step. Null where the next change is a step of its own. */
  readonly typingAt: string | null;
};

/** Steps that are kept; a day's typing. */
const mostSteps = 1000;

/** Starts with no way back. */
export function startHistory(present: Documents): History {
  return { present, past: [], future: [], typingAt: null };
}

/**
 * Records a change as a step that can be undone. Keystrokes in one entry count as one step until it is left.
 * @param what - the change in words, e.g. `reading of rafter 3`.
 * @param typingAt - path of the entry that is being typed in, null for a change that stands alone.
 */
export function record(
  history: History,
  present: Documents,
  what: string,
  typingAt: string | null = null,
): History {
  if (present === history.present) return history;
  const sameEntry = typingAt !== null && typingAt === history.typingAt && history.past.length > 0;
  return {
    present,
    past: sameEntry
      ? history.past
      : [...history.past.slice(1 - mostSteps), { what, documents: history.present }],
    future: [],
    typingAt,
  };
}

/** Ends the step that is being typed: the next keystroke starts a new one. */
export function seal(history: History): History {
  return history.typingAt === null ? history : { ...history, typingAt: null };
}

/** Takes the last step back; without one, nothing changes. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    present: step.documents,
    past: history.past.slice(0, -1),
    future: [...history.future, { what: step.what, documents: history.present }],
    typingAt: null,
  };
}

/** Makes the step again that was taken back last. */
export function redo(history: History): History {
  const step = history.future.at(-1);
  if (step === undefined) return history;
  return {
    present: step.documents,
    past: [...history.past, { what: step.what, documents: history.present }],
    future: history.future.slice(0, -1),
    typingAt: null,
  };
}
