import type { KeyboardEvent } from 'react';

type Cell = HTMLInputElement | HTMLSelectElement;

/**
 * Moves through the rafter grid as through a spreadsheet: up, down and Enter by row; left and right by cell once the
 * cursor stands at the text's end.
 * @returns true where the key was a move.
 */
export function moveInGrid(event: KeyboardEvent): boolean {
  const { target } = event;
  if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return false;
  if (event.altKey || event.ctrlKey || event.metaKey) return false;
  const row = Number(target.dataset['row']);
  const column = Number(target.dataset['column']);
  const grid = target.closest('table');
  if (grid === null || Number.isNaN(row)) return false;
  const step = stepOf(event, target);
  if (step === undefined) return false;
  const next = findCell(grid, row + step[0], column + step[1]);
  if (next === undefined) return event.key === 'Enter';
  next.focus();
  if (next instanceof HTMLInputElement) next.select();
  return true;
}

function stepOf(event: KeyboardEvent, cell: Cell): readonly [number, number] | undefined {
  switch (event.key) {
    case 'ArrowUp':
      return [-1, 0];
    case 'ArrowDown':
      return [1, 0];
    case 'Enter':
      return [event.shiftKey ? -1 : 1, 0];
    case 'ArrowLeft':
      return cursorAt(cell, 'start') ? [0, -1] : undefined;
    case 'ArrowRight':
      return cursorAt(cell, 'end') ? [0, 1] : undefined;
    default:
      return undefined;
  }
}

function cursorAt(cell: Cell, end: 'start' | 'end'): boolean {
  if (cell instanceof HTMLSelectElement) return true;
  const { selectionStart, selectionEnd, value } = cell;
  const all = selectionStart === 0 && selectionEnd === value.length;
  return all || (end === 'start' ? selectionEnd === 0 : selectionStart === value.length);
}

/** The cell at a row and column; in the row under the last rafter only the reading can be typed. */
function findCell(grid: HTMLTableElement, row: number, column: number): Cell | undefined {
  const at = (c: number) => grid.querySelector<Cell>(`[data-row="${row}"][data-column="${c}"]`);
  return at(column) ?? (column > 0 ? (at(0) ?? undefined) : undefined);
}
