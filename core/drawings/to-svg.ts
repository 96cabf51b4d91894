import { assertNever } from '../result.ts';
import type { Fill, Pen } from './drawing.ts';
import { hatches, hatchLines } from './hatch.ts';
import type { Painted, Primitive } from './painted.ts';

type Stroke = { readonly width: number; readonly colour: string; readonly dash?: string };

/** Widths and dashes on paper; every pen differs in more than tone. [pt] */
const strokes: Readonly<Record<Pen, Stroke>> = {
  old: { width: 0.6, colour: '#333333' },
  new: { width: 1.2, colour: '#000000' },
  hidden: { width: 0.6, colour: '#333333', dash: '4 2.5' },
  cut: { width: 0.9, colour: '#000000', dash: '1.2 1.6' },
  dimension: { width: 0.45, colour: '#000000' },
  centre: { width: 0.45, colour: '#333333', dash: '8 2 1.5 2' },
  ground: { width: 1.6, colour: '#000000' },
  light: { width: 0.35, colour: '#777777' },
};

const tones: Readonly<Record<Fill, string>> = {
  none: 'none',
  old: '#f0f0f0',
  new: '#c4c4c4',
  joist: '#ffffff',
  plate: '#dedede',
  offcut: '#ffffff',
  waste: '#ffffff',
  paper: '#ffffff',
  hung: '#e2e2e2',
  header: '#ffffff',
  filler: '#ffffff',
  whole: '#c4c4c4',
};

/**
 * Writes a painted drawing as an SVG document for paper, in black and greys, with every text escaped.
 * @param painted - the drawing at 1 px = 1 pt. [pt]
 * @param fontFamily - name of the font that the paper embeds.
 */
export function toSvg(painted: Painted, fontFamily: string): string {
  const body = painted.primitives.map((primitive) => element(primitive, fontFamily)).join('\n');
  const width = round(painted.widthPx);
  const height = round(painted.heightPx);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeXml(painted.title)}</title>`,
    `<desc>${escapeXml(painted.description)}</desc>`,
    body,
    '</svg>',
  ].join('\n');
}

/** Escapes a text for XML and drops the control characters that XML cannot hold. */
export function escapeXml(text: string): string {
  return Array.from(text)
    .filter((character) => {
      const code = character.codePointAt(0) ?? 0;
      const control = code < 0x20 && code !== 9 && code !== 10 && code !== 13;
      return !control && code !== 0xfffe && code !== 0xffff && !(code >= 0xd800 && code <= 0xdfff);
    })
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

function element(primitive: Primitive, fontFamily: string): string {
  switch (primitive.kind) {
    case 'line':
      return `<line x1="${round(primitive.x1)}" y1="${round(primitive.y1)}" x2="${round(primitive.x2)}" y2="${round(primitive.y2)}" ${strokeOf(primitive.pen)}/>`;
    case 'polygon': {
      const points = primitive.points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');
      const outline = `<polygon points="${points}" fill="${tones[primitive.fill]}" ${strokeOf(primitive.pen)}/>`;
      const lines = (hatches[primitive.fill] ?? [])
        .flatMap(({ spacingPt, degrees }) => hatchLines(primitive.points, spacingPt, degrees))
        .map(([[x1, y1], [x2, y2]]) => `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`)
        .join('');
      return lines === '' ? outline : `${outline}\n<path d="${lines}" fill="none" ${strokeOf('light')}/>`;
    }
    case 'text': {
      const turn =
        primitive.rotateDeg === 0
          ? ''
          : ` transform="rotate(${round(primitive.rotateDeg)} ${round(primitive.x)} ${round(primitive.y)})"`;
      const weight = primitive.bold ? ' font-weight="bold"' : '';
      return `<text x="${round(primitive.x)}" y="${round(primitive.y)}" font-family="${escapeXml(fontFamily)}" font-size="${round(primitive.sizePx)}"${weight} text-anchor="${primitive.anchor}" fill="#000000"${turn}>${escapeXml(primitive.text)}</text>`;
    }
    default:
      return assertNever(primitive);
  }
}

function strokeOf(pen: Pen): string {
  const { width, colour, dash } = strokes[pen];
  return `stroke="${colour}" stroke-width="${width}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}`;
}

/** Two decimals of a point: finer than any printer, and the same bytes each time. */
function round(value: number): number {
  return Math.round(value * 100) / 100 || 0;
}
