import type { Content } from 'pdfmake/interfaces';
import type { Sheet } from '../../core/documents/sheet.ts';
import { margins } from './paper-size.ts';
import { linesHeightPt, type Setting, wrapText } from './wrap-text.ts';

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
 */
export function pageHead(sheet: Sheet, widthPt: number): PageHead {
  const { shop, job } = sheet;
  const contact = [shop.address, shop.contact].filter((part) => part !== '').join('  ·  ');
  const columnPt = (widthPt - columnGapPt) / 2;
  const left = column(
    [
      { text: shop.name === '' ? 'Shop name not set' : shop.name, bold: true, sizePt: 13 },
      { text: shop.licence === '' ? '' : `Licence ${shop.licence}`, sizePt: 8.5 },
      { text: contact, sizePt: 8, grey: true },
    ],
    columnPt,
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
  const heightPt = Math.max(left.heightPt, right.heightPt);
  return {
    topPt: Math.max(margins.top, headTopPt + heightPt + rulePt + clearPt),
    content: {
      margin: [margins.left, headTopPt, margins.right, 0],
      stack: [
        {
          columns: [
            { width: columnPt, stack: left.lines },
            { width: columnPt, stack: right.lines },
          ],
          columnGap: columnGapPt,
        },
        { canvas: [{ type: 'line', x1: 0, y1: rulePt, x2: widthPt, y2: rulePt, lineWidth: 1.2 }] },
      ],
    },
  };
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
