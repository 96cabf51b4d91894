/**
 * Notes where the focus goes when a row of a table is taken out: to the first link or button of the row after it, else of
 * the row before it, else to the heading of the panel. To be asked while the row is there still.
 * @param rowKey - the row's key.
 * @returns puts the focus there, or leaves it on the row where that stayed; to be called once the table is drawn anew.
 */
export function focusAfterRow(rowKey: string): () => void {
  const row = rowOf(rowKey);
  const heading = row?.closest('.panel')?.querySelector<HTMLElement>('.panel-title');
  const neighbour = row?.nextElementSibling ?? row?.previousElementSibling;
  const neighbourKey = neighbour?.getAttribute('data-row') ?? null;
  return () => {
    // The menu or dialog over the table gives the focus back in the next frame; what is done here comes after it.
    window.requestAnimationFrame(() =>
      window.requestAnimationFrame(() => {
        const target = rowOf(rowKey) ?? (neighbourKey === null ? null : rowOf(neighbourKey));
        const handle = target?.querySelector<HTMLElement>('a, button') ?? heading;
        if (handle?.isConnected === true) handle.focus();
        else document.querySelector<HTMLElement>('.screen-title')?.focus();
      }),
    );
  };
}

function rowOf(key: string): HTMLElement | null {
  return document.querySelector<HTMLElement>(`tr[data-row="${CSS.escape(key)}"]`);
}
