import type { Column, Row } from '../../core/documents/sheet.ts';
import { textWidth } from '../../core/drawings/text-box.ts';

/** Clear room left and right of a cell's text. [pt] */
export const cellPaddingPt = 4;

/**
 * Shares a page's width out over a table's columns: columns of share 0 fit their content, the rest take what is left.
 * @param columns - the columns, with their shares.
 * @param rows - what stands in them.
 * @param roomPt - width of the whole table, paddings included. [pt]
 * @param sizePt - size of the type. [pt]
 * @returns width of each column's text, without padding. [pt]
 */
export function columnWidths(
  columns: readonly Column[],
  rows: readonly Row[],
  roomPt: number,
  sizePt: number,
): readonly number[] {
  const room = roomPt - columns.length * 2 * cellPaddingPt;
  const natural = columns.map((column, index) => {
    const cells = rows
      .filter((row) => row.style !== 'group')
      .map((row) => textWidth(row.cells[index] ?? '', sizePt * styleFactor(row.style ?? 'body')));
    return Math.max(textWidth(column.title, sizePt), ...cells) + 1;
  });
  const fitting = columns.reduce(
    (sum, column, index) => (column.share === 0 ? sum + (natural[index] ?? 0) : sum),
    0,
  );
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  // The sharing columns keep at least what they need, up to a sixth of the page each.
  const kept = columns.reduce(
    (sum, column, index) => (column.share === 0 ? sum : sum + Math.min(natural[index] ?? 0, room / 6)),
    0,
  );
  const squeeze = Math.min(1, (room - kept) / (fitting || 1));
  const left = room - fitting * squeeze;
  return columns.map((column, index) =>
    column.share === 0 ? (natural[index] ?? 0) * squeeze : (left * column.share) / shares,
  );
}

/** Sums are set bold, totals larger as well. */
function styleFactor(style: NonNullable<Row['style']>): number {
  return style === 'body' ? 1 : style === 'total' ? 1.25 : 1.06;
}
