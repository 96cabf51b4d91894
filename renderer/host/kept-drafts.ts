import { useCallback, useSyncExternalStore } from 'react';

/**
 * Raw text of entries that do not read yet, for screens whose documents have no room for drafts: kept for the session, so
 * that nothing typed is lost by going to another screen or by loading the page again.
 */
export type KeptDrafts = {
  /** The text, or null where there is none. */
  readonly get: (path: string) => string | null;
  /** Null lets go of it. */
  readonly set: (path: string, text: string | null) => void;
};

const storageName = 'eavewright-drafts';
const listeners = new Set<() => void>();
let drafts: ReadonlyMap<string, string> = read();

/**
 * The drafts of one document.
 * @param owner - the document's name, e.g. `settings`, `price/stud-2x6-8`.
 */
export function useKeptDrafts(owner: string): KeptDrafts {
  const all = useSyncExternalStore(subscribe, () => drafts);
  const get = useCallback((path: string) => all.get(`${owner}:${path}`) ?? null, [all, owner]);
  const set = useCallback((path: string, text: string | null) => put(`${owner}:${path}`, text), [owner]);
  return { get, set };
}

function put(name: string, text: string | null): void {
  if ((drafts.get(name) ?? null) === text) return;
  const next = new Map(drafts);
  if (text === null) next.delete(name);
  else next.set(name, text);
  drafts = next;
  window.sessionStorage.setItem(storageName, JSON.stringify([...next]));
  for (const listener of listeners) listener();
}

function read(): ReadonlyMap<string, string> {
  try {
    const stored: unknown = JSON.parse(window.sessionStorage.getItem(storageName) ?? '[]');
    return Array.isArray(stored) ? new Map(stored.filter(isPair)) : new Map();
  } catch {
    return new Map();
  }
}

function isPair(value: unknown): value is [string, string] {
  return Array.isArray(value) && typeof value[0] === 'string' && typeof value[1] === 'string';
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
