import { useSyncExternalStore } from 'react';

/** Light or dark; `system` follows the computer. */
export type Theme = 'system' | 'light' | 'dark';

const storageName = 'eavewright-theme';
const listeners = new Set<() => void>();
let theme: Theme = read();

/** Puts the theme that was chosen last on the page. */
export function startTheme(): void {
  show();
}

/** Chooses the theme and remembers it in this window's storage. */
export function chooseTheme(next: Theme): void {
  theme = next;
  window.localStorage.setItem(storageName, next);
  show();
  for (const listener of listeners) listener();
}

/** The theme that is chosen now. */
export function useTheme(): Theme {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    () => theme,
  );
}

function show(): void {
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}

function read(): Theme {
  const stored = window.localStorage.getItem(storageName);
  return stored === 'light' || stored === 'dark' ? stored : 'system';
}
