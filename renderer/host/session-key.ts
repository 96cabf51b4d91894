const storageName = 'eavewright-key';
const listeners = new Set<() => void>();

/**
 * The key of this run of the host. It comes in the address's fragment (`#t=KEY`), is moved to the session's storage, and
 * the address is cleaned, so that it stands in no history and no copied address.
 */
export function sessionKey(): string {
  takeKey('#/');
  return window.sessionStorage.getItem(storageName) ?? '';
}

/**
 * Takes the key also where the whole address is put into a window that is open already: then the browser changes the
 * fragment alone and loads nothing. The screen stays as it was. To be called before anything else hears of addresses.
 */
export function takeLaterKeys(): void {
  window.addEventListener('hashchange', (event) => {
    if (!takeKey(new URL(event.oldURL).hash)) return;
    for (const listener of listeners) listener();
  });
}

/** Calls back when another key came; returns the function that stops it. */
export function onNewKey(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

/** Moves a key from the address to the storage; false where there is none. */
function takeKey(fragmentAfterwards: string): boolean {
  const key = /^#t=([\w-]+)$/.exec(window.location.hash)?.[1];
  if (key === undefined) return false;
  window.sessionStorage.setItem(storageName, key);
  window.history.replaceState(null, '', `${window.location.pathname}${fragmentAfterwards}`);
  return true;
}
