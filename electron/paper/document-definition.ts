import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Block, Sheet } from '../../core/documents/sheet.ts';
import { fitToScale } from '../../core/drawings/standard-scales.ts';
import { toSvg } from '../../core/drawings/to-svg.ts';
import { assertNever } from '../../core/result.ts';
import { cardSheet } from './cards.ts';
import { paperFont } from './fonts.ts';
import { fullSizePages } from './full-size.ts';
import { makeTable } from './make-table.ts';
import { logoData, logoName, pageHead, type PaperLogo } from './page-head.ts';
import { margins, pageSize, type PaperSize } from './paper-size.ts';
import { unprintableCharacters, unprintableSentence } from './unprintable.ts';
import { countLines, leading, linesHeightPt } from './wrap-text.ts';

/** How much larger than drawn the type of a crew's drawing is: 7.5 pt come out as 10. [-] */
const largeType = 4 / 3;

/** What a page leaves for its content. [pt] */
type Room = { readonly widthPt: number; readonly heightPt: number };

/** Turns a sheet into what pdfmake lays out: black on white, header and page x of y on each page. */
export function documentDefinition(
  sheet: Sheet,
  paperSize: PaperSize,
  logo?: PaperLogo,
): TDocumentDefinitions {
  const { widthPt, heightPt } = pageSize(sheet, paperSize);
  const contentPt = widthPt - margins.left - margins.right;
  const stamp = new Date(`${sheet.date}T12:00:00Z`);
  const head = pageHead(sheet, contentPt, logo);
  const room = { widthPt: contentPt, heightPt: heightPt - head.topPt - margins.bottom };
  return {
    pageSize: { width: widthPt, height: heightPt },
    pageMargins: [margins.left, head.topPt, margins.right, margins.bottom],
    defaultStyle: { font: paperFont, fontSize: 10, lineHeight: leading },
    language: 'en-US',
    displayTitle: true,
    version: '1.7',
    info: {
      title: `${sheet.title} - ${sheet.job.name}`,
      author: sheet.shop.name,
      creator: 'Eavewright',
      producer: 'Eavewright',
      creationDate: stamp,
      modDate: stamp,
    },
    ...(logo === undefined ? {} : { images: { [logoName]: logoData(logo) } }),
    header: () => head.content,
    footer: (page, pages) => pageFoot(sheet, page, pages),
    content: [...unprintableLine(sheet), ...makeContent(sheet.blocks, room)],
  };
}

/** Says what shows as boxes, so that nobody takes a box for a figure or a name. */
function unprintableLine(sheet: Sheet): readonly Content[] {
  const characters = unprintableCharacters(sheet);
  return characters.length === 0
    ? []
    : [{ text: unprintableSentence(characters), fontSize: 8.5, margin: [0, 0, 0, 7] }];
}

/**
 * Joins blocks that must not be parted by a page: a heading with what follows it, signatures with the caution before
 * them, so that nobody signs a page that says nothing.
 */
function makeContent(blocks: readonly Block[], room: Room): Content[] {
  const content: Content[] = [];
  for (let index = 0; index < blocks.length; index += 1) {
    const block = blocks[index];
    const next = blocks[index + 1];
    if (block === undefined) break;
    if (block.kind === 'new-page') {
      const rest = makeContent(blocks.slice(index + 1), room);
      const [first, ...others] = rest;
      return first === undefined ? content : [...content, { stack: [first], pageBreak: 'before' }, ...others];
    }
    if (block.kind === 'full-size') {
      const pages = fullSizePages(block, room);
      content.push(...pages.map((page): Content => ({ stack: [page], pageBreak: 'before' })));
    } else if (block.kind === 'cards') {
      content.push(...cardSheet(block.cards, room.widthPt));
    } else if (block.kind === 'heading' && next?.kind === 'table') {
      content.push(makeTable(block.text, next, room));
      index += 1;
    } else if (block.kind === 'heading' && next?.kind === 'list' && !staysWhole(next, room)) {
      const first = next.items.slice(0, 2);
      const list = { kind: 'list' as const, items: next.items.slice(first.length) };
      content.push(
        {
          unbreakable: staysWhole({ kind: 'list', items: first }, room),
          stack: [makeBlock(block, next, room), { ...bullets(first), margin: [0, 0, 0, 0] }],
        },
        makeBlock(list, blocks[index + 2], room),
      );
      index += 1;
    } else {
      const count = keptTogether(blocks.slice(index, index + 3), room);
      const together = blocks
        .slice(index, index + count)
        .map((kept, step) => makeBlock(kept, blocks[index + step + 1], room));
      content.push(count === 1 ? (together[0] ?? '') : { unbreakable: true, stack: together });
      index += count - 1;
    }
  }
  return content;
}

/** How many of these blocks, from the first, must stand on one page. */
function keptTogether([first, second, third]: readonly Block[], room: Room): 1 | 2 | 3 {
  if (first?.kind === 'caution') return second?.kind === 'signatures' ? 2 : 1;
  if (first?.kind !== 'heading' || second === undefined || !staysWhole(second, room)) return 1;
  return second.kind === 'paragraph' && third?.kind === 'drawing' ? 3 : 2;
}

/**
 * Short enough to be kept on one page with its heading: the printer drops what does not fit of a part that it may not
 * break, so nothing that might be longer than a third of a page is held together.
 */
function staysWhole(block: Block, { widthPt, heightPt }: Room): boolean {
  const heightOf = (texts: readonly string[], sizePt: number): number =>
    texts.reduce(
      (sum, text) => sum + linesHeightPt(countLines(text, { sizePt }, widthPt - 20), sizePt) + 1.5,
      0,
    );
  switch (block.kind) {
    case 'heading':
    case 'table':
    case 'new-page':
    case 'full-size':
    case 'cards':
      return false;
    case 'list':
      return block.items.length <= 8 && heightOf(block.items, 10) < heightPt / 3;
    case 'paragraph':
      return heightOf([block.text], 10) < heightPt / 3;
    default:
      return true;
  }
}

function pageFoot(sheet: Sheet, page: number, pages: number): Content {
  const { footCaution } = sheet;
  const line: Content = {
    columns: [
      { text: `${sheet.title}  ·  ${sheet.date}`, fontSize: 8, color: '#333333' },
      { text: `page ${page} of ${pages}`, fontSize: 8, alignment: 'right' },
    ],
  };
  return {
    margin: [margins.left, footCaution === undefined ? 16 : 6, margins.right, 0],
    stack: footCaution === undefined ? [line] : [{ text: footCaution, fontSize: 8, bold: true }, line],
  };
}

function makeBlock(block: Block, next: Block | undefined, room: Room): Content {
  const { widthPt } = room;
  switch (block.kind) {
    case 'heading':
      return { text: block.text, bold: true, fontSize: 12, margin: [0, 8, 0, 3] };
    case 'paragraph':
      return {
        text: block.text,
        unbreakable: staysWhole(block, room),
        fontSize: block.small === true ? 8.5 : 10,
        margin: [0, 0, 0, next?.kind === 'paragraph' ? 3 : 7],
      };
    case 'facts':
      return facts(block.pairs, widthPt);
    case 'list':
      return { ...bullets(block.items), margin: [0, 0, 0, 8] };
    case 'table':
      return makeTable(null, block, room);
    case 'drawing': {
      // Room for the line under the drawing and a heading above it on the same page.
      const { painted, scaleText } = fitToScale(
        block.drawing,
        widthPt,
        (room.heightPt - 60) * block.heightShare,
        block.large === true ? largeType : 1,
      );
      return {
        unbreakable: true,
        stack: [
          { svg: toSvg(painted, paperFont), width: painted.widthPx, alignment: 'center' },
          {
            text: `${block.drawing.title}  ·  ${scaleText}`,
            fontSize: block.large === true ? 10 : 8,
            alignment: 'center',
            margin: [0, 2, 0, 8],
          },
        ],
      };
    }
    case 'caution':
      return caution(block.text, widthPt);
    case 'signatures':
      return signatures(block.parties, widthPt);
    case 'new-page':
    case 'full-size':
    case 'cards':
      throw new Error(`a ${block.kind} block makes pages or rows of its own where the blocks are joined`);
    default:
      return assertNever(block);
  }
}

function bullets(items: readonly string[]) {
  return { ul: items.map((text): Content => ({ text, margin: [0, 0, 0, 1.5] })) };
}

function facts(pairs: readonly (readonly [string, string])[], widthPt: number): Content {
  const half = Math.ceil(pairs.length / 2);
  const labelPt = 84;
  const valuePt = widthPt / 2 - labelPt - 12;
  return {
    table: {
      widths: [labelPt, valuePt, labelPt, valuePt],
      body: Array.from({ length: half }, (_, index) => [...fact(pairs[index]), ...fact(pairs[half + index])]),
      dontBreakRows: true,
    },
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingLeft: (column) => (column === 0 ? 0 : 4),
      paddingRight: () => 4,
      paddingTop: () => 1.2,
      paddingBottom: () => 1.2,
    },
    margin: [0, 0, 0, 8],
  };
}

function fact(pair: readonly [string, string] | undefined): readonly Content[] {
  return [
    { text: pair?.[0] ?? '', fontSize: 8.5, color: '#333333', margin: [0, 1.2, 0, 0] },
    { text: pair?.[1] ?? '', fontSize: 10 },
  ];
}

/** A caution stands in a box with a heavy left edge, so that it shows without colour. */
function caution(text: string, widthPt: number): Content {
  return {
    unbreakable: true,
    table: {
      widths: [widthPt - 20],
      body: [[{ text: [{ text: 'Caution. ', bold: true }, text], fontSize: 9 }]],
    },
    layout: {
      hLineWidth: () => 0.5,
      vLineWidth: (line) => (line === 0 ? 3 : 0.5),
      paddingLeft: () => 8,
      paddingRight: () => 8,
      paddingTop: () => 5,
      paddingBottom: () => 5,
    },
    margin: [0, 4, 0, 10],
  };
}

function signatures(parties: readonly string[], widthPt: number): Content {
  const gapPt = 28;
  const width = (widthPt - gapPt * (parties.length - 1)) / Math.max(1, parties.length);
  return {
    unbreakable: true,
    margin: [0, 24, 0, 0],
    columnGap: gapPt,
    columns: parties.map((party) => ({
      width,
      stack: [
        { canvas: [{ type: 'line', x1: 0, y1: 0, x2: Math.min(width, 225), y2: 0, lineWidth: 0.8 }] },
        { text: party, fontSize: 8.5, margin: [0, 3, 0, 0] },
        { text: 'Date', fontSize: 8.5, margin: [0, 14, 0, 0] },
      ],
    })),
  };
}
