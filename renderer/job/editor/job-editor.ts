import { type Documents, valueAt, withDraft } from './documents.ts';
import { enter } from './enter.ts';
import { type History, record, redo, seal, startHistory, undo } from './history.ts';
import { type SaveState, type Saver, type SaverWorld, startSaver } from './autosave.ts';

const takenWords = 'Another window saved this job; what it saved stands here now.';

/** What the screens read. */
export type EditorState = {
  readonly history: History;
  readonly saving: SaveState;
  /** What the last undo or redo did, for the live line; null after any other change. */
  readonly said: string | null;
};

/** The editor of one job: holds its documents, the way back, and saves as it is typed. */
export type JobEditor = {
  readonly read: () => EditorState;
  readonly subscribe: (listener: () => void) => () => void;
  /** A change that stands alone: a choice, an added or removed row. */
  readonly change: (what: string, edit: (documents: Documents) => Documents) => void;
  /** A keystroke in an entry; keystrokes in one entry are one step back. */
  readonly type: (what: string, path: string, text: string) => void;
  /** A keystroke that changes more than its own entry. */
  readonly typeWith: (what: string, path: string, edit: (documents: Documents) => Documents) => void;
  /** The entry was left. */
  readonly seal: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly flush: () => void;
  readonly keepMine: () => void;
  readonly isSaved: () => boolean;
  /** Another window, or this one, saved some job: looks whether it was this one. */
  readonly heard: () => void;
  readonly stop: () => void;
};

/** Opens an editor on documents as the host holds them at a revision. */
export function openEditor(
  world: Omit<SaverWorld, 'told' | 'took'>,
  documents: Documents,
  revision: number,
): JobEditor {
  let state: EditorState = { history: startHistory(documents), saving: { kind: 'saved' }, said: null };
  const listeners = new Set<() => void>();
  const publish = (next: EditorState): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const saver: Saver = startSaver(
    {
      ...world,
      told: (saving) => publish({ ...state, saving }),
      took: (taken) => publish({ ...state, history: startHistory(taken), said: takenWords }),
    },
    documents,
    revision,
  );
  const move = (history: History, said: string | null = null): void => {
    if (history === state.history) return;
    const changed = history.present !== state.history.present;
    publish({ ...state, history, said });
    if (changed) saver.changed(history.present);
  };
  const { read, subscribe } = {
    read: () => state,
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
  const typeWith: JobEditor['typeWith'] = (what, path, edit) =>
    move(record(state.history, typed(state.history, path, edit), what, path));
  return {
    read,
    subscribe,
    change: (what, edit) => move(record(state.history, edit(state.history.present), what)),
    type: (what, path, text) => typeWith(what, path, (documents) => enter(documents, path, text)),
    typeWith,
    seal: () => move(seal(state.history)),
    undo: () => move(undo(state.history), saidOf('Taken back', state.history.past.at(-1)?.what)),
    redo: () => move(redo(state.history), saidOf('Done again', state.history.future.at(-1)?.what)),
    flush: saver.flush,
    keepMine: saver.keepMine,
    isSaved: saver.isSaved,
    heard: saver.heard,
    stop: saver.stop,
  };
}

/**
 * The documents after a keystroke. A text that does not read leaves the entry's value as it was before the typing began:
 * on the way to 6-10-3/8 stands 6, which reads and was never meant.
 */
function typed(history: History, path: string, edit: (documents: Documents) => Documents): Documents {
  const entered = edit(history.present);
  const draft = entered.drafts[path];
  if (draft === undefined) return entered;
  const before =
    history.typingAt === path ? (history.past.at(-1)?.documents ?? history.present) : history.present;
  const isGone = draft.trim() === '' && valueAt(before, path) === undefined;
  return withDraft(before, path, isGone ? null : draft);
}

function saidOf(verb: string, what: string | undefined): string | null {
  return what === undefined ? null : `${verb}: ${what}`;
}
