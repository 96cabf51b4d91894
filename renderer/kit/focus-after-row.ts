/** How long the focus is watched over: the list comes back and is drawn in much less. [ms] */
const watchMs = 1000;

/**
 * Notes where the focus goes when the row that holds it is taken out of a table: to the first link or button of the row
 * after it, else of the row before it, else to the heading of the panel. To be asked while the row is there still.
 * @param rowKey - the row's key.
 * @returns watches for a second: whenever the focus is lost, because a row, a menu or a dialog went, it is put there. To
 * be called once the row is taken out.
 */
export function focusAfterRow(rowKey: string): () => void {
  const row = rowOf(rowKey);
  const heading = row?.closest('.panel')?.querySelector<HTMLElement>('.panel-title');
  const neighbour = row?.nextElementSibling ?? row?.previousElementSibling;
  const neighbourKey = neighbour?.getAttribute('data-row') ?? null;
  const place = (): void => {
    const target = rowOf(rowKey) ?? (neighbourKey === null ? null : rowOf(neighbourKey));
    const handle = target?.querySelector<HTMLElement>('a, button');
    if (handle !== null && handle !== undefined) return handle.focus();
    heading?.setAttribute('tabindex', '-1');
    heading?.focus();
  };
  return () => {
    const until = performance.now() + watchMs;
    const watch = (): void => {
      const { activeElement } = document;
      if (activeElement === null || activeElement === document.body) place();
      if (performance.now() < until) window.requestAnimationFrame(watch);
    };
    window.requestAnimationFrame(watch);
  };
}

function rowOf(key: string): HTMLElement | null {
  return document.querySelector<HTMLElement>(`tr[data-row="${CSS.escape(key)}"]`);
}
