import type { Content, CustomTableLayout, TableCell } from 'pdfmake/interfaces';
import type { Align, Column, Row } from '../../core/documents/sheet.ts';
import { cellPaddingPt, columnWidths } from './table-widths.ts';

const headingMargin: [number, number, number, number] = [0, 3, 0, 2];

/** Wide tables are set smaller, so that their figures stay on one line. */
function sizeOf(columns: readonly Column[]): number {
  return columns.length > 8 ? 8 : 9;
}
const alignments = { left: 'left', right: 'right', centre: 'center' } as const satisfies Record<
  Align,
  string
>;

/**
 * Lays a table out for pdfmake: its head repeats on every page, no row breaks, and neither its title
 * nor a group's heading can stand alone at the foot of a page: the title is part of the head, and a group's heading is
 * part of the group's first row.
 * @param title - stands above the head and repeats with it; null for none.
 * @param columns - the columns.
 * @param rows - the rows.
 * @param widthPt - width of the page's content. [pt]
 */
export function makeTable(
  title: string | null,
  columns: readonly Column[],
  rows: readonly Row[],
  widthPt: number,
): Content {
  const sizePt = sizeOf(columns);
  const lines = joinGroups(rows);
  const titles = title === null ? 0 : 1;
  return {
    table: {
      headerRows: 1 + titles,
      keepWithHeaderRows: Math.min(1, lines.length),
      dontBreakRows: true,
      widths: [...columnWidths(columns, rows, widthPt, sizePt)],
      body: [
        ...(title === null ? [] : [titleRow(title, columns.length)]),
        columns.map(
          (column): TableCell => ({
            text: column.title,
            alignment: alignments[column.align],
            bold: true,
            fontSize: 8,
            noWrap: column.share === 0,
          }),
        ),
        ...lines.map((line) => bodyRow(columns, line)),
      ],
    },
    fontSize: sizePt,
    layout: layoutOf(lines, titles),
    margin: [0, title === null ? 0 : 6, 0, 10],
  };
}

function titleRow(title: string, columns: number): TableCell[] {
  const cell: TableCell = {
    text: title,
    bold: true,
    fontSize: 12,
    colSpan: columns,
    margin: [-cellPaddingPt, 0, 0, 1],
  };
  return [cell, ...Array.from({ length: columns - 1 }, (): TableCell => ({ text: '' }))];
}

/** A row of the table with the group's heading that stands over it, if it is the first of a group. */
type Line = { readonly row: Row; readonly group: string | null };

function joinGroups(rows: readonly Row[]): readonly Line[] {
  const lines: Line[] = [];
  let group: string | null = null;
  for (const row of rows) {
    if (row.style === 'group') {
      group = row.cells.filter((cell) => cell !== '').join('  ');
    } else {
      lines.push({ row, group });
      group = null;
    }
  }
  return lines;
}

function bodyRow(columns: readonly Column[], { row, group }: Line): TableCell[] {
  const style = row.style ?? 'body';
  return columns.map((column, index): TableCell => {
    const cell = {
      text: row.cells[index] ?? '',
      alignment: alignments[column.align],
      bold: style !== 'body',
      noWrap: column.share === 0,
      ...(style === 'total' ? { fontSize: 10.5 } : {}),
    };
    if (group === null) return cell;
    // The heading runs on over the columns to its right, which keep a line of the same height free.
    const heading = { text: index === 0 ? group : ' ', bold: true, noWrap: true, margin: headingMargin };
    return { stack: [heading, cell] };
  });
}

/** Rules under the head, thin between rows, stronger above sums: no boxes, no colour. */
function layoutOf(lines: readonly Line[], titles: number): CustomTableLayout {
  const head = titles + 1;
  const styleAt = (index: number) => lines[index - head]?.row.style;
  const isSum = (index: number) => styleAt(index) === 'total' || styleAt(index) === 'subtotal';
  return {
    hLineWidth: (line) => {
      if (line < head) return 0;
      if (line === head || styleAt(line) === 'total' || styleAt(line - 1) === 'total') return 0.9;
      if (styleAt(line) === 'subtotal') return 0.5;
      const first = lines[line - head];
      return first !== undefined && first.group !== null ? 0.6 : 0.25;
    },
    hLineColor: (line) =>
      line === head || isSum(line) || styleAt(line - 1) === 'total' ? '#000000' : '#9a9a9a',
    vLineWidth: () => 0,
    paddingLeft: () => cellPaddingPt,
    paddingRight: () => cellPaddingPt,
    paddingTop: () => 2.2,
    paddingBottom: () => 2.2,
  };
}
