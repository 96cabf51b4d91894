import { hasUnsaved } from './autosave.ts';

/**
 * Lets the browser ask before a window is closed in which something is not saved yet. Returns the function that stops it.
 * Under Electron a window that says no would simply not close, so there it is left alone.
 */
export function askBeforeLeaving(): () => void {
  if (window.eavewright !== undefined) return () => undefined;
  window.addEventListener('beforeunload', ask);
  return () => window.removeEventListener('beforeunload', ask);
}

function ask(event: BeforeUnloadEvent): void {
  if (hasUnsaved()) event.preventDefault();
}
