import type { Design } from '../../../core/eave/design-document.ts';
import type { JobInfo } from '../../../core/job/job-file.ts';
import type { Survey } from '../../../core/survey/survey-document.ts';

/** Raw text of entries that do not read as a value yet, by dotted path, so that nothing typed is lost. */
export type Drafts = Readonly<Record<string, string>>;

/** Everything of a job that a person edits. Never changed in place: every edit gives a new value. */
export type Documents = {
  readonly estimateOn: string | null;
  readonly info: JobInfo;
  readonly survey: Survey;
  readonly design: Design;
  readonly drafts: Drafts;
};

/** Reads the value at a dotted path, e.g. `survey.eaves.0.lengthIn`; undefined where nothing is there. */
export function valueAt(documents: Documents, path: string): unknown {
  let at: unknown = documents;
  for (const key of path.split('.')) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<string, unknown>)[key];
  }
  return at;
}

/**
 * Puts a value at a dotted path and copies only the way to it; the same value gives the same documents back, so that
 * whoever compares by identity sees that nothing changed. A path that leads nowhere is a bug.
 */
export function withValueAt(documents: Documents, path: string, value: unknown): Documents {
  return put(documents, path.split('.'), value) as Documents;
}

function put(at: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (typeof at !== 'object' || at === null) throw new Error(`no entry ${key}`);
  const before = (at as Record<string, unknown>)[key];
  const after = put(before, rest, value);
  if (Object.is(before, after)) return at;
  if (Array.isArray(at)) return at.map((item, index) => (String(index) === key ? after : item) as unknown);
  return { ...at, [key]: after };
}

/** Sets or, with null, drops the draft of an entry. */
export function withDraft(documents: Documents, path: string, text: string | null): Documents {
  const before = documents.drafts[path];
  if (text === null) {
    if (before === undefined) return documents;
    const { [path]: _dropped, ...drafts } = documents.drafts;
    return { ...documents, drafts };
  }
  return before === text ? documents : { ...documents, drafts: { ...documents.drafts, [path]: text } };
}

/**
 * Moves the drafts of a list's entries along when its entries move.
 * @param listPath - dotted path of the list, e.g. `survey.eaves.0.rafters`.
 * @param toIndex - where an entry goes; null where it is removed, and its drafts with it.
 */
export function withMovedDrafts(
  documents: Documents,
  listPath: string,
  toIndex: (index: number) => number | null,
): Documents {
  const prefix = `${listPath}.`;
  const drafts: Record<string, string> = {};
  for (const [path, text] of Object.entries(documents.drafts)) {
    if (!path.startsWith(prefix)) {
      drafts[path] = text;
      continue;
    }
    const [index = '', ...rest] = path.slice(prefix.length).split('.');
    const moved = toIndex(Number(index));
    if (moved !== null) drafts[[listPath, moved, ...rest].join('.')] = text;
  }
  return { ...documents, drafts };
}
