import type { Content, CustomTableLayout, TableCell } from 'pdfmake/interfaces';
import type { Align, Block, Column, Row } from '../../core/documents/sheet.ts';
import { cellPaddingPt, columnWidths } from './table-widths.ts';
import { countLines, linesHeightPt } from './wrap-text.ts';

const headingMargin: [number, number, number, number] = [0, 3, 0, 2];

type Table = Extract<Block, { kind: 'table' }>;

/** Size of the type of a table's body and of its head. [pt] */
type Sizes = { readonly bodyPt: number; readonly headPt: number };

/** Wide tables are set smaller, so that their figures stay on one line; those of the crew are large all the same. */
function sizesOf({ columns, large }: Table): Sizes {
  if (large === true) return { bodyPt: 10.5, headPt: 10 };
  return { bodyPt: columns.length > 8 ? 8 : 9, headPt: 8 };
}
const alignments = { left: 'left', right: 'right', centre: 'center' } as const satisfies Record<
  Align,
  string
>;

/**
 * Lays a table out for pdfmake: its head repeats on every page, no row breaks, and neither its title
 * nor a group's heading can stand alone at the foot of a page: the title is part of the head, and a group's heading is
 * part of the group's first row. Its first two rows stay with the head, its last two with each other, and every sum
 * with the row before it, so that no row stands alone.
 * @param title - stands above the head and repeats with it; null for none.
 * @param block - the columns and the rows.
 * @param room - what a page leaves for its content. [pt]
 */
export function makeTable(
  title: string | null,
  block: Table,
  room: { readonly widthPt: number; readonly heightPt: number },
): Content {
  const { columns, rows } = block;
  const { bodyPt: sizePt, headPt } = sizesOf(block);
  const widths = columnWidths(columns, rows, room.widthPt, sizePt);
  const lines = joinGroups(rows);
  const titles = title === null ? 0 : 1;
  // The printer drops what does not fit of a part that it may not break, so a table with a row as high as that may break.
  const whole = lines.every((line) => isLow(line, widths, sizePt, room.heightPt));
  const chunks = whole ? chunksOf(lines) : lines.map((line): Chunk => [line]);
  return {
    table: {
      headerRows: 1 + titles,
      keepWithHeaderRows: whole ? (chunks[0]?.length === 1 ? 2 : 1) : 0,
      dontBreakRows: whole,
      widths: [...widths],
      body: [
        ...(title === null ? [] : [titleRow(title, columns.length)]),
        columns.map(
          (column): TableCell => ({
            text: column.title,
            alignment: alignments[column.align],
            bold: true,
            fontSize: headPt,
            noWrap: column.share === 0,
          }),
        ),
        ...chunks.map((chunk) =>
          chunk.length === 1 ? bodyRow(columns, chunk[0]) : chunkRow(columns, chunk, widths),
        ),
      ],
    },
    fontSize: sizePt,
    layout: layoutOf(chunks, titles + 1),
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

/** Lines that stay on one page. */
type Chunk = readonly [Line, ...Line[]];

/** Joins every sum to the line before it, a line between two sums to both, and the last line to the one before it. */
function chunksOf(lines: readonly Line[]): readonly Chunk[] {
  const chunks: [Line, ...Line[]][] = [];
  for (const [index, line] of lines.entries()) {
    const last = chunks.at(-1);
    const between =
      line.group === null &&
      isSum(lines[index - 1]) &&
      (isSum(lines[index + 1]) || index === lines.length - 1);
    const closing = index === lines.length - 1 && last?.length === 1;
    if (last !== undefined && (isSum(line) || between || closing)) last.push(line);
    else chunks.push([line]);
  }
  return chunks;
}

function isSum(line: Line | undefined): boolean {
  return line?.row.style === 'total' || line?.row.style === 'subtotal';
}

/** No cell of the line takes more than a quarter of a page. */
function isLow({ row }: Line, widths: readonly number[], sizePt: number, pagePt: number): boolean {
  return row.cells.every(
    (cell, index) =>
      /^[ -~]{0,100}$/.test(cell) ||
      linesHeightPt(countLines(cell, { sizePt }, (widths[index] ?? 0) * 0.95), sizePt) < pagePt / 4,
  );
}

/** Several lines as one row of the table: a table of its own, in the same columns, that does not break. */
function chunkRow(columns: readonly Column[], chunk: Chunk, widths: readonly number[]): TableCell[] {
  const cell: TableCell = {
    colSpan: columns.length,
    margin: [-cellPaddingPt, 0, -cellPaddingPt, 0],
    table: {
      widths: [...widths],
      dontBreakRows: true,
      body: chunk.map((line) => bodyRow(columns, line)),
    },
    layout: {
      ...layoutOf(
        chunk.map((line): Chunk => [line]),
        0,
      ),
      hLineWidth: innerLine(chunk),
    },
  };
  return [cell, ...Array.from({ length: columns.length - 1 }, (): TableCell => ({ text: '' }))];
}

/** The lines above and below the chunk belong to the table around it. */
function innerLine(chunk: Chunk): (line: number) => number {
  return (line) => (line === 0 || line === chunk.length ? 0 : ruleBetween(chunk[line - 1], chunk[line]));
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
function layoutOf(chunks: readonly Chunk[], head: number): CustomTableLayout {
  const above = (rule: number): Line | undefined => chunks[rule - head - 1]?.at(-1);
  const below = (rule: number): Line | undefined => chunks[rule - head]?.[0];
  // The rows of a chunk bring their own room.
  const paddingPt = (row: number): number => ((chunks[row - head]?.length ?? 1) > 1 ? 0 : 2.2);
  return {
    hLineWidth: (rule) => (rule < head ? 0 : rule === head ? 0.9 : ruleBetween(above(rule), below(rule))),
    hLineColor: (rule) =>
      rule === head || isSum(below(rule)) || above(rule)?.row.style === 'total' ? '#000000' : '#9a9a9a',
    vLineWidth: () => 0,
    paddingLeft: () => cellPaddingPt,
    paddingRight: () => cellPaddingPt,
    paddingTop: paddingPt,
    paddingBottom: paddingPt,
  };
}

/** Width of the rule between two lines, or under the last. [pt] */
function ruleBetween(above: Line | undefined, below: Line | undefined): number {
  if (below?.row.style === 'total' || above?.row.style === 'total') return 0.9;
  if (below?.row.style === 'subtotal') return 0.5;
  return below !== undefined && below.group !== null ? 0.6 : 0.25;
}
