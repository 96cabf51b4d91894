import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hatchLines } from '../../core/drawings/hatch.ts';
import { paint } from '../../core/drawings/paint.ts';
import { escapeXml, toSvg } from '../../core/drawings/to-svg.ts';

/** A strict reader of the little XML that drawings use; throws where it is not well formed. */
function readXml(text: string): { readonly tags: readonly string[]; readonly texts: readonly string[] } {
  const open: string[] = [];
  const tags: string[] = [];
  const texts: string[] = [];
  let at = 0;
  const tag = /<(\/?)([a-z]+)((?: [a-zA-Z][a-zA-Z0-9-]*="[^"<]*")*)\s*(\/?)>/y;
  while (at < text.length) {
    if (text[at] === '<') {
      tag.lastIndex = at;
      const match = tag.exec(text);
      if (match === null) throw new Error(`no tag at ${at}: ${text.slice(at, at + 40)}`);
      const [whole, closing, name = '', , empty] = match;
      if (closing === '/') {
        if (open.pop() !== name) throw new Error(`</${name}> closes nothing`);
      } else {
        tags.push(name);
        if (empty !== '/') open.push(name);
      }
      at += whole.length;
    } else {
      const end = text.indexOf('<', at);
      const part = text.slice(at, end < 0 ? text.length : end);
      if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(part)) throw new Error(`bare & in ${part}`);
      texts.push(part);
      at += part.length;
    }
  }
  if (open.length > 0) throw new Error(`left open: ${open.join(' ')}`);
  return { tags, texts };
}

function svgSaying(text: string): string {
  return toSvg(
    paint(
      {
        title: text,
        description: text,
        shapes: [
          { kind: 'text', at: [5, 5], text, anchor: 'start', sizePt: 8 },
          { kind: 'dimension', from: [0, 0], to: [9, 0], offsetPt: 9, text },
          {
            kind: 'polygon',
            points: [
              [0, 0],
              [9, 0],
              [9, 9],
            ],
            pen: 'cut',
            fill: 'joist',
            title: text,
          },
        ],
        minX: 0,
        minY: 0,
        maxX: 10,
        maxY: 10,
      },
      2,
      { pxPerPt: 1 },
    ),
    'SourceSans3',
  );
}

/** A thin line is parted around a long name, so that the count of lines alone may differ. */
const butLines = (svg: string) => readXml(svg).tags.filter((tag) => tag !== 'line');

describe('a drawing as SVG', () => {
  it('stays well formed and keeps its own tags, whatever a name holds', () => {
    const plain = butLines(svgSaying('porch'));
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (name) => {
        expect(butLines(svgSaying(name))).toEqual(plain);
      }),
    );
  });

  it('writes a hostile name as letters, not as a script', () => {
    const svg = svgSaying(`</text><script>alert(1)</script><image href="file:///etc/passwd"/>`);
    const { tags } = readXml(svg);
    expect(tags).not.toContain('script');
    expect(tags).not.toContain('image');
    expect(svg).toContain('&lt;script&gt;');
  });

  it('drops characters that XML cannot hold', () => {
    expect(escapeXml('a\u0000\u0008b\ud800c & "d"')).toBe('abc &amp; &quot;d&quot;');
  });

  it('is the same text for the same drawing', () => {
    expect(svgSaying('same')).toBe(svgSaying('same'));
  });
});

describe('hatching', () => {
  it('stays inside the area and is as dense as asked: a square of 30 at 3 apart, level, has 9 to 11 lines of 30', () => {
    const lines = hatchLines(
      [
        [0, 0],
        [30, 0],
        [30, 30],
        [0, 30],
      ],
      3,
      0,
    );
    expect(lines.length).toBeGreaterThanOrEqual(9);
    expect(lines.length).toBeLessThanOrEqual(11);
    for (const [[x1, y1], [x2, y2]] of lines) {
      expect(Math.abs(x2 - x1)).toBeCloseTo(30, 9);
      expect(y1).toBeCloseTo(y2, 9);
    }
  });
});
