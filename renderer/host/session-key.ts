const storageName = 'eavewright-key';

/**
 * The key of this run of the host. It comes once in the address's fragment (`#t=KEY`), is moved to the session's
 * storage, and the address is cleaned, so that it stands in no history and no copied address.
 */
export function sessionKey(): string {
  const match = /^#t=([\w-]+)$/.exec(window.location.hash);
  if (match?.[1] !== undefined) {
    window.sessionStorage.setItem(storageName, match[1]);
    window.history.replaceState(null, '', `${window.location.pathname}#/`);
  }
  return window.sessionStorage.getItem(storageName) ?? '';
}
