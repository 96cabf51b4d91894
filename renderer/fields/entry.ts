import type { Problem } from '../../core/problems/problem.ts';
import type { Result } from '../../core/result.ts';

/** What stands in a field after a key: the value that it reads as, or null with the problem, or null for a blank. */
export type Entry<T> = {
  readonly value: T | null;
  readonly text: string;
  /** Set where the text cannot be used; a blank that is allowed has none. */
  readonly problem: Problem | null;
};

/** How one kind of field reads and writes its value. */
export type EntryKind<T> = {
  readonly read: (text: string) => Result<T, Problem>;
  readonly write: (value: T) => string;
};

/**
 * Reads the text of a field.
 * @param kind - how it reads.
 * @param text - what was typed.
 * @param mayBeBlank - whether a blank stands for "as the general value says".
 */
export function readEntry<T>(kind: EntryKind<T>, text: string, mayBeBlank: boolean): Entry<T> {
  if (mayBeBlank && text.trim() === '') return { value: null, text, problem: null };
  const read = kind.read(text);
  return read.ok ? { value: read.value, text, problem: null } : { value: null, text, problem: read.problem };
}
