/** How long an entry may take to come on the screen before the nearest thing that holds it is good enough. [frames] */
const patience = 20;

let frame = 0;

/**
 * Puts the cursor in the entry at a path as soon as it is on the screen, or in the first entry under the path, or in the
 * nearest thing that holds it.
 * @param path - dotted path of the entry, as its element's `data-path` says it.
 */
export function focusEntry(path: string): void {
  window.cancelAnimationFrame(frame);
  let tries = 0;
  const look = (): void => {
    tries += 1;
    const entry = find(path, tries > patience);
    if (entry === null && tries <= patience) {
      frame = window.requestAnimationFrame(look);
      return;
    }
    if (entry !== null) unfold(entry);
    entry?.scrollIntoView({ block: 'center' });
    entry?.focus({ preventScroll: true });
    if (entry instanceof HTMLInputElement) entry.select();
  };
  frame = window.requestAnimationFrame(look);
}

/** Opens every panel that an entry is folded away in. */
function unfold(entry: HTMLElement): void {
  for (let at = entry.closest('details'); at !== null; at = at.parentElement?.closest('details') ?? null)
    at.open = true;
}

function find(path: string, isNearEnough: boolean): HTMLElement | null {
  const exact = document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`);
  if (exact !== null || !isNearEnough) return exact;
  const under = document.querySelector<HTMLElement>(`[data-path^="${CSS.escape(`${path}.`)}"]`);
  const dot = path.lastIndexOf('.');
  return under ?? (dot < 0 ? null : find(path.slice(0, dot), true));
}
