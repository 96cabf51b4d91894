import type { Content, CustomTableLayout, TableCell } from 'pdfmake/interfaces';
import type { Align, Column, Row } from '../../core/documents/sheet.ts';
import { cellPaddingPt, columnWidths } from './table-widths.ts';

const sizePt = 9;
const alignments = { left: 'left', right: 'right', centre: 'center' } as const satisfies Record<
  Align,
  string
>;

/** Marks text that must not stand alone at the foot of a page. */
export const headlineLevel = 1;

/**
 * Lays a table out for pdfmake: its head repeats on every page, no row breaks, no group's heading stands alone.
 * @param columns - the columns.
 * @param rows - the rows.
 * @param widthPt - width of the page's content. [pt]
 */
export function makeTable(columns: readonly Column[], rows: readonly Row[], widthPt: number): Content {
  const styles = rows.map((row) => row.style ?? 'body');
  return {
    table: {
      headerRows: 1,
      keepWithHeaderRows: Math.min(2, rows.length),
      dontBreakRows: true,
      widths: [...columnWidths(columns, rows, widthPt, sizePt)],
      body: [
        columns.map(
          (column): TableCell => ({
            text: column.title,
            alignment: alignments[column.align],
            bold: true,
            fontSize: 8,
          }),
        ),
        ...rows.map((row) => bodyRow(columns, row)),
      ],
    },
    fontSize: sizePt,
    layout: layoutOf(styles),
    margin: [0, 0, 0, 10],
  };
}

function bodyRow(columns: readonly Column[], row: Row): TableCell[] {
  const style = row.style ?? 'body';
  if (style === 'group') {
    const text = row.cells.filter((cell) => cell !== '').join('  ');
    return [
      { text, bold: true, colSpan: columns.length, headlineLevel, margin: [0, 3, 0, 0] },
      ...columns.slice(1).map((): TableCell => ({ text: '' })),
    ];
  }
  return columns.map(
    (column, index): TableCell => ({
      text: row.cells[index] ?? '',
      alignment: alignments[column.align],
      bold: style !== 'body',
      ...(style === 'total' ? { fontSize: 10.5 } : {}),
    }),
  );
}

/** Rules under the head, thin between rows, stronger above sums: no boxes, no colour. */
function layoutOf(styles: readonly string[]): CustomTableLayout {
  const last = styles.length;
  return {
    hLineWidth: (line) => {
      if (line === 0) return 0;
      if (line === 1) return 0.9;
      const above = styles[line - 2];
      const below = styles[line - 1];
      if (below === 'total' || above === 'total') return 0.9;
      if (below === 'subtotal') return 0.5;
      return line === last + 1 ? 0.5 : 0.25;
    },
    hLineColor: (line) => {
      const strong =
        line <= 1 ||
        styles[line - 1] === 'total' ||
        styles[line - 2] === 'total' ||
        styles[line - 1] === 'subtotal';
      return strong ? '#000000' : '#9a9a9a';
    },
    vLineWidth: () => 0,
    paddingLeft: () => cellPaddingPt,
    paddingRight: () => cellPaddingPt,
    paddingTop: () => 2.2,
    paddingBottom: () => 2.2,
  };
}
