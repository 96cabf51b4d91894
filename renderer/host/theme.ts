/** Light or dark; `system` follows the computer. */
export type Theme = 'system' | 'light' | 'dark';

const storageName = 'eavewright-theme';
let theme: Theme = read();

/** Puts the theme that was chosen last on the page. */
export function startTheme(): void {
  show();
}

/**
 * Chooses the theme and remembers it: in the window's storage, and in a cookie too. On loopback each run has a port of its
 * own and so a storage of its own; a cookie goes with the machine's name alone. It says light or dark and nothing else, so
 * no harm is done where another port of this machine receives it.
 */
export function chooseTheme(next: Theme): void {
  theme = next;
  window.localStorage.setItem(storageName, next);
  document.cookie = `${storageName}=${next}; path=/; max-age=34560000; samesite=strict`;
  show();
}

function show(): void {
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}

function read(): Theme {
  const inCookie = document.cookie.split('; ').find((part) => part.startsWith(`${storageName}=`));
  const stored = window.localStorage.getItem(storageName) ?? inCookie?.slice(storageName.length + 1);
  return stored === 'light' || stored === 'dark' ? stored : 'system';
}
