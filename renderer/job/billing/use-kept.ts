import { useState } from 'react';

/** Forms that were begun and not sent, so that going to another section and back loses nothing. */
const kept = new Map<string, unknown>();

/**
 * State that outlives its component for the session.
 * @param key - names the form and the job that it belongs to; one key holds one type.
 */
export function useKept<T>(key: string, initial: T): readonly [T, (value: T) => void] {
  const [value, setValue] = useState<T>(() => (kept.has(key) ? (kept.get(key) as T) : initial));
  return [
    value,
    (next) => {
      kept.set(key, next);
      setValue(next);
    },
  ];
}
