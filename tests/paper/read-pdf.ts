import { inflateSync } from 'node:zlib';

/** A text on a page, where it begins, with y up from the page's foot. [pt] */
export type PlacedText = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly sizePt: number;
  /** Width by the font's own table, without kerning. [pt] */
  readonly widthPt: number;
};

type Glyph = { readonly text: string; readonly width: number };
type Font = ReadonlyMap<number, Glyph>;

/** A straight stroke on a page, y up from its foot. [pt] */
export type PlacedLine = {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
};

export type ReadPage = {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly texts: readonly PlacedText[];
  readonly strokes: readonly PlacedLine[];
  /** Texts of one height joined from left to right, lines from the head down. */
  readonly lines: readonly string[];
};

type Matrix = readonly [number, number, number, number, number, number];

/**
 * Reads back what a PDF of ours says, from its bytes alone: inflates the streams, follows every text through the
 * matrices to its place, each straight path too, and turns glyphs into letters by the font's own ToUnicode map. Source: ISO 32000-1, 7.3
 * (objects), 8.3.4 (matrices), 9.4 (text), 9.10.3 (ToUnicode). Not a reader for PDFs in general.
 */
export function readPdf(pdf: Uint8Array): readonly ReadPage[] {
  const objects = readObjects(Buffer.from(pdf).toString('latin1'));
  const [, kids = ''] =
    /\/Kids \[([^\]]*)\]/.exec([...objects.values()].map(({ head }) => head).join('\n')) ?? [];
  return [...kids.matchAll(/(\d+) 0 R/g)].map(([, id]) => readPage(objects, Number(id)));
}

type PdfObject = { readonly head: string; readonly stream: string };

function readObjects(text: string): ReadonlyMap<number, PdfObject> {
  const objects = new Map<number, PdfObject>();
  for (const [, id, body = ''] of text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const at = body.indexOf('\nstream\n');
    const head = at < 0 ? body : body.slice(0, at);
    const raw = at < 0 ? '' : body.slice(at + 8, body.lastIndexOf('\nendstream'));
    const stream = head.includes('/FlateDecode')
      ? inflateSync(Buffer.from(raw, 'latin1')).toString('latin1')
      : raw;
    objects.set(Number(id), { head, stream });
  }
  return objects;
}

function referred(head: string, key: string): number {
  return Number(new RegExp(String.raw`/${key} (\d+) 0 R`).exec(head)?.[1]);
}

function readPage(objects: ReadonlyMap<number, PdfObject>, id: number): ReadPage {
  const { head } = objects.get(id) ?? { head: '' };
  const [, widthPt, heightPt] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(head) ?? [];
  const resources = objects.get(referred(head, 'Resources'))?.head ?? '';
  const fonts = new Map(
    [...resources.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = '', font]) => [
      name,
      readFont(objects, Number(font)),
    ]),
  );
  const { texts, strokes } = readContent(objects.get(referred(head, 'Contents'))?.stream ?? '', fonts);
  return { widthPt: Number(widthPt), heightPt: Number(heightPt), texts, strokes, lines: linesOf(texts) };
}

/** Letters and widths of a font's glyphs: ToUnicode's `bfrange` lists and the `W` array, as pdfkit writes them. */
function readFont(objects: ReadonlyMap<number, PdfObject>, id: number): Font {
  const { head } = objects.get(id) ?? { head: '' };
  const descendant = Number(/\/DescendantFonts \[(\d+) 0 R\]/.exec(head)?.[1]);
  const [, widthList = ''] = /\/W \[0 \[([^\]]*)\]\]/.exec(objects.get(descendant)?.head ?? '') ?? [];
  const widths = widthList.trim().split(/\s+/).map(Number);
  const map = objects.get(referred(head, 'ToUnicode'))?.stream ?? '';
  const glyphs = new Map<number, Glyph>();
  for (const [, from = '', list = ''] of map.matchAll(/<([0-9a-f]+)> <[0-9a-f]+> \[([^\]]*)\]/gi)) {
    for (const [index, [, codes = '']] of [...list.matchAll(/<([0-9a-f ]*)>/gi)].entries()) {
      const units = codes.replaceAll(' ', '').match(/.{4}/g) ?? [];
      const glyph = Number.parseInt(from, 16) + index;
      glyphs.set(glyph, {
        text: String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))),
        width: (widths[glyph] ?? 0) / 1000,
      });
    }
  }
  return glyphs;
}

function readContent(
  content: string,
  fonts: ReadonlyMap<string, Font>,
): { readonly texts: readonly PlacedText[]; readonly strokes: readonly PlacedLine[] } {
  const texts: PlacedText[] = [];
  const strokes: PlacedLine[] = [];
  let from: readonly [number, number] = [0, 0];
  const saved: Matrix[] = [];
  let place: Matrix = [1, 0, 0, 1, 0, 0];
  let textPlace: Matrix = place;
  let font: Font = new Map();
  let sizePt = 0;
  let operands: string[] = [];
  const numbers = (): Matrix => operands.slice(-6).map(Number) as unknown as Matrix;
  for (const [token] of content.matchAll(/\[[^\]]*\]|<[0-9a-f]*>|\/\S+|[^\s[\]<>/]+/gi)) {
    if (/^[[</]|^[-+.\d]/.test(token)) {
      operands.push(token);
      continue;
    }
    if (token === 'q') saved.push(place);
    else if (token === 'Q') place = saved.pop() ?? place;
    else if (token === 'cm') place = multiply(numbers(), place);
    else if (token === 'm' || token === 'l') {
      const [x = 0, y = 0] = operands.slice(-2).map(Number);
      const [, , , , atX, atY] = multiply([1, 0, 0, 1, x, y], place);
      if (token === 'l') strokes.push({ x1: from[0], y1: from[1], x2: atX, y2: atY });
      from = [atX, atY];
    } else if (token === 'Tm') textPlace = numbers();
    else if (token === 'Tf') {
      font = fonts.get((operands[0] ?? '').slice(1)) ?? new Map();
      sizePt = Number(operands[1]);
    } else if (token === 'TJ' || token === 'Tj') {
      const glyphs = [...(operands.at(-1) ?? '').matchAll(/<([0-9a-f]*)>/gi)].flatMap(
        ([, hex = '']) => hex.match(/.{4}/g) ?? [],
      );
      const [, , , , x, y] = multiply(textPlace, place);
      const drawn = glyphs.map(
        (glyph): Glyph => font.get(Number.parseInt(glyph, 16)) ?? { text: '\ufffd', width: 0 },
      );
      const text = drawn.map((glyph) => glyph.text).join('');
      const widthPt = drawn.reduce((sum, glyph) => sum + glyph.width * sizePt, 0);
      texts.push({ text, x, y, sizePt, widthPt });
    }
    operands = [];
  }
  return { texts, strokes };
}

function multiply([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix {
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

function linesOf(texts: readonly PlacedText[]): readonly string[] {
  const rows = new Map<number, PlacedText[]>();
  for (const text of texts) {
    const key = Math.round(text.y);
    const near = [key, key - 1, key + 1].find((candidate) => rows.has(candidate)) ?? key;
    rows.set(near, [...(rows.get(near) ?? []), text]);
  }
  return [...rows.entries()]
    .sort(([a], [b]) => b - a)
    .map(([, row]) => {
      let line = '';
      let end = Number.NEGATIVE_INFINITY;
      for (const { text, x, widthPt } of row.sort((a, b) => a.x - b.x)) {
        // Words of one text follow each other closely; a wider gap is another column.
        line += x - end > 1.5 ? ` ${text}` : text;
        end = x + widthPt;
      }
      return line.replace(/\s+/g, ' ').trim();
    });
}
