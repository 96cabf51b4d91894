import type { Content } from 'pdfmake/interfaces';
import type { Block } from '../../core/documents/sheet.ts';
import { drawRuler } from '../../core/drawings/draw-ruler.ts';
import { paint } from '../../core/drawings/paint.ts';
import { tileDrawing } from '../../core/drawings/tile.ts';
import { toSvg } from '../../core/drawings/to-svg.ts';
import { paperFont } from './fonts.ts';
import { countLines, linesHeightPt } from './wrap-text.ts';

type FullSize = Extract<Block, { kind: 'full-size' }>;

/** 72 points an inch: one inch of the thing is one inch of paper. [pt/in] */
const ptPerInch = 72;

const headingPt = 14;
const notePt = 11;

/** Room around a painted drawing for its border, and for the ruler with its line of words. [pt] */
const borderPt = 10;
const rulerRoomPt = 92;

const rulerWords =
  'Print at 100 % ("actual size", no fitting to the page). Measure this ruler first: 6 in. and 150 mm.';

/**
 * The pages of a drawing at full size: heading, note, what of it stands on the page, and the ruler. Every page is one
 * part that does not break, so that nothing is scaled and nothing is lost.
 * @param block - the drawing.
 * @param room - what a page leaves for its content. [pt]
 * @returns one content a page.
 */
export function fullSizePages(
  block: FullSize,
  room: { readonly widthPt: number; readonly heightPt: number },
): readonly Content[] {
  const noteLines = countLines(block.note, { sizePt: notePt }, room.widthPt);
  const headPt = linesHeightPt(2, headingPt) + linesHeightPt(noteLines, notePt) + 8;
  const tiles = tileDrawing(block.drawing, {
    widthIn: (room.widthPt - borderPt) / ptPerInch,
    heightIn: (room.heightPt - headPt - rulerRoomPt - borderPt) / ptPerInch,
  });
  return tiles.map((tile): Content => {
    const part =
      tiles.length === 1
        ? ''
        : `, page ${tile.number} of ${tiles.length}: lay cross over cross with ${neighbours(tile, tiles)}`;
    return {
      unbreakable: true,
      stack: [
        { text: `${block.heading}${part}`, bold: true, fontSize: headingPt },
        { text: block.note, fontSize: notePt, margin: [0, 0, 0, 4] },
        atFullSize(tile.drawing),
        { ...atFullSize(drawRuler()), margin: [0, 6, 0, 0] },
        { text: rulerWords, fontSize: notePt, bold: true },
      ],
    };
  });
}

function atFullSize(drawing: Parameters<typeof paint>[0]) {
  const painted = paint(drawing, ptPerInch, { pxPerPt: 1 });
  return { svg: toSvg(painted, paperFont), width: painted.widthPx };
}

/** The pages that share a strip with this one, by number. */
function neighbours(
  tile: { readonly column: number; readonly row: number },
  tiles: readonly { readonly column: number; readonly row: number; readonly number: number }[],
): string {
  const numbers = tiles
    .filter(({ column, row }) => Math.abs(column - tile.column) + Math.abs(row - tile.row) === 1)
    .map(({ number }) => `${number}`);
  return `${numbers.length === 1 ? 'page' : 'pages'} ${numbers.join(' and ')}`;
}
