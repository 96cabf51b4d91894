/** A place in a table, counted from 0. */
export type Place = { readonly row: number; readonly column: number };

/** How large the table is, and how many rows of it are seen at once. */
export type GridSize = { readonly rows: number; readonly columns: number; readonly page: number };

/**
 * Where a key leads in a table.
 * @param key - its name as browsers give it.
 * @param toEnd - Control or Command is held.
 * @returns the place; undefined for a key that does not move.
 */
export function movedBy(key: string, toEnd: boolean, from: Place, size: GridSize): Place | undefined {
  const last = { row: Math.max(0, size.rows - 1), column: size.columns - 1 };
  const at = (row: number, column: number): Place => ({
    row: Math.min(Math.max(row, 0), last.row),
    column: Math.min(Math.max(column, 0), last.column),
  });
  switch (key) {
    case 'ArrowUp':
      return at(toEnd ? 0 : from.row - 1, from.column);
    case 'ArrowDown':
      return at(toEnd ? last.row : from.row + 1, from.column);
    case 'ArrowLeft':
      return at(from.row, toEnd ? 0 : from.column - 1);
    case 'ArrowRight':
      return at(from.row, toEnd ? last.column : from.column + 1);
    case 'Home':
      return at(toEnd ? 0 : from.row, 0);
    case 'End':
      return at(toEnd ? last.row : from.row, last.column);
    case 'PageUp':
      return at(from.row - size.page, from.column);
    case 'PageDown':
      return at(from.row + size.page, from.column);
    default:
      return undefined;
  }
}
