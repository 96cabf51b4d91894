import { useSyncExternalStore } from 'react';

/** Height of the window's inside, also as it changes. [px] */
export function useWindowHeight(): number {
  return useSyncExternalStore(listen, () => window.innerHeight);
}

function listen(changed: () => void): () => void {
  window.addEventListener('resize', changed);
  return () => window.removeEventListener('resize', changed);
}
