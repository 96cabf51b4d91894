import type { Content } from 'pdfmake/interfaces';
import type { Picture } from '../../core/documents/picture.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import { margins } from './paper-size.ts';
import { linesHeightPt, type Setting, wrapText } from './wrap-text.ts';

/** The shop's picture, as the printer takes it. */
export type PaperLogo = Picture & { readonly base64: string };

/** What the printer calls it; it stands in the file once, however many pages show it. */
export const logoName = 'logo';

/** Largest that it is printed. [pt] */
const logoRoom = { widthPt: 108, heightPt: 44 };
const logoGapPt = 10;

/** The picture as the printer reads it. */
export function logoData({ mediaType, base64 }: PaperLogo): string {
  return `data:${mediaType};base64,${base64}`;
}

/** The head of every page, and how far down it pushes the page's content. */
export type PageHead = { readonly content: Content; readonly topPt: number };

/** One entry of the head. */
type Entry = Setting & { readonly text: string; readonly grey?: boolean };

const headTopPt = 26;
const columnGapPt = 16;
/** Between the lines of type, the rule under them and the page's content. [pt] */
const rulePt = 4;
const clearPt = 8;

/**
 * The shop on the left and the job on the right over a rule. Long names and addresses run on over as many lines as
 * they need, and the page's content begins further down.
 * @param sheet - whose head it is.
 * @param widthPt - width of the page's content. [pt]
 * @param logo - stands left of the shop's name.
 */
export function pageHead(sheet: Sheet, widthPt: number, logo?: PaperLogo): PageHead {
  const { shop, job } = sheet;
  const picture = logo === undefined ? null : fitted(logo);
  const besidePt = picture === null ? 0 : picture.widthPt + logoGapPt;
  const contact = [shop.address, shop.contact].filter((part) => part !== '').join('  ·  ');
  const columnPt = (widthPt - columnGapPt) / 2;
  const left = column(
    [
      { text: shop.name === '' ? 'Shop name not set' : shop.name, bold: true, sizePt: 13 },
      { text: shop.licence === '' ? '' : `Licence ${shop.licence}`, sizePt: 8.5 },
      { text: contact, sizePt: 8, grey: true },
    ],
    columnPt - besidePt,
    'left',
  );
  const right = column(
    [
      { text: sheet.title, bold: true, sizePt: 13 },
      { text: job.name, sizePt: 8.5 },
      { text: job.siteAddress, sizePt: 8, grey: true },
    ],
    columnPt,
    'right',
  );
  const heightPt = Math.max(left.heightPt, right.heightPt, picture?.heightPt ?? 0);
  return {
    topPt: Math.max(margins.top, headTopPt + heightPt + rulePt + clearPt),
    content: {
      margin: [margins.left, headTopPt, margins.right, 0],
      stack: [
        {
          columns: [
            ...(picture === null
              ? []
              : [
                  {
                    width: picture.widthPt,
                    image: logoName,
                    fit: [picture.widthPt, picture.heightPt] as [number, number],
                  },
                ]),
            { width: columnPt - besidePt, stack: left.lines },
            { width: picture === null ? columnPt : columnPt + columnGapPt - logoGapPt, stack: right.lines },
          ],
          // Between picture and name, and between the halves: widths above leave room for both.
          columnGap: picture === null ? columnGapPt : logoGapPt,
        },
        { canvas: [{ type: 'line', x1: 0, y1: rulePt, x2: widthPt, y2: rulePt, lineWidth: 1.2 }] },
      ],
    },
  };
}

/** As large as the room lets it be, its shape kept; never larger than 72 points to the inch would make it. [pt] */
function fitted({ widthPx, heightPx }: Picture): { readonly widthPt: number; readonly heightPt: number } {
  const scale = Math.min(1, logoRoom.widthPt / widthPx, logoRoom.heightPt / heightPx);
  return { widthPt: widthPx * scale, heightPt: heightPx * scale };
}

function column(entries: readonly Entry[], widthPt: number, alignment: 'left' | 'right') {
  const lines: Content[] = [];
  let heightPt = 0;
  for (const { text, sizePt, bold = false, grey = false } of entries) {
    // An empty entry keeps its line, so that the heads of all shops and jobs look alike.
    const wrapped = text.trim() === '' ? [' '] : wrapText(text, { sizePt, bold }, widthPt - 2);
    heightPt += linesHeightPt(wrapped.length, sizePt);
    for (const line of wrapped) {
      lines.push({
        text: line,
        fontSize: sizePt,
        bold,
        alignment,
        noWrap: true,
        ...(grey ? { color: '#333333' } : {}),
      });
    }
  }
  return { lines, heightPt };
}
