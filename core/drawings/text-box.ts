import type { PaintedText, Pixel } from './painted.ts';

/** The four corners of a text's box. [px] */
export type TextBox = readonly [Pixel, Pixel, Pixel, Pixel];

/** Widths of characters in the paper's font, as a share of its size (Source Sans 3, rounded up). */
const narrow = new Set<string>(`'".,:;|!ijltI -/()[]`);
const wide = new Set<string>('mwMWQO@%&');

/**
 * Estimates the width of a text, on the generous side.
 * @param text - what is written.
 * @param sizePx - size of the font. [px]
 * @returns width. [px]
 */
export function textWidth(text: string, sizePx: number): number {
  let shares = 0;
  for (const character of text) {
    shares += /\d/.test(character) ? 0.51 : narrow.has(character) ? 0.34 : wide.has(character) ? 0.86 : 0.56;
  }
  return shares * sizePx;
}

/** The box that a painted text covers, turned with it. */
export function textBox(text: PaintedText): TextBox {
  const width = textWidth(text.text, text.sizePx);
  const left = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width;
  const top = -0.74 * text.sizePx;
  const bottom = 0.22 * text.sizePx;
  const angle = (text.rotateDeg * Math.PI) / 180;
  const turn = (x: number, y: number): Pixel => [
    text.x + x * Math.cos(angle) - y * Math.sin(angle),
    text.y + x * Math.sin(angle) + y * Math.cos(angle),
  ];
  return [turn(left, top), turn(left + width, top), turn(left + width, bottom), turn(left, bottom)];
}

/** Tells whether two boxes overlap, by looking for a side that separates them. */
export function boxesOverlap(one: TextBox, other: TextBox): boolean {
  return !separated(one, other) && !separated(other, one);
}

function separated(one: TextBox, other: TextBox): boolean {
  return one.some((corner, index) => {
    const next = one[(index + 1) % one.length] ?? corner;
    const axis: Pixel = [corner[1] - next[1], next[0] - corner[0]];
    const [oneLow, oneHigh] = span(one, axis);
    const [otherLow, otherHigh] = span(other, axis);
    return oneHigh <= otherLow || otherHigh <= oneLow;
  });
}

function span(box: TextBox, axis: Pixel): readonly [number, number] {
  const along = box.map(([x, y]) => x * axis[0] + y * axis[1]);
  return [Math.min(...along), Math.max(...along)];
}
