import type { Drawing, Shape } from './drawing.ts';

/** Length of the ruler in inches, and in millimetres (25.4 mm an inch, international yard, 1959). */
export const rulerIn = 6;
export const rulerMm = 150;
const mmPerIn = 25.4;

/** Height of the longest tick. [in] */
const tickIn = 0.2;

/** Draws a ruler of 6 in. above and 150 mm below one line, to be measured before anything is cut from a page. */
export function drawRuler(): Drawing {
  const millimetres = rulerMm / mmPerIn;
  return {
    title: 'Ruler, 6 in. and 150 mm',
    description:
      'A ruler at full size: six inches in eighths above the line, 150 millimetres in fives below it.',
    shapes: [
      { kind: 'line', from: [0, 0], to: [rulerIn, 0], pen: 'new' },
      ...Array.from({ length: rulerIn * 8 + 1 }, (_, eighth): Shape => {
        const high = eighth % 8 === 0 ? tickIn : eighth % 4 === 0 ? tickIn * 0.7 : tickIn * 0.4;
        return { kind: 'line', from: [eighth / 8, 0], to: [eighth / 8, high], pen: 'old' };
      }),
      ...Array.from({ length: rulerMm / 5 + 1 }, (_, five): Shape => {
        const x = (five * 5) / mmPerIn;
        return { kind: 'line', from: [x, 0], to: [x, five % 2 === 0 ? -tickIn : -tickIn * 0.5], pen: 'old' };
      }),
      ...Array.from({ length: rulerIn + 1 }, (_, inch) =>
        label(inch, tickIn + 0.05, inch === rulerIn ? '6 in.' : `${inch}`),
      ),
      ...[0, 50, 100, 150].map((mm) =>
        label(mm / mmPerIn, -tickIn - 0.16, mm === rulerMm ? '150 mm' : `${mm}`),
      ),
    ],
    minX: 0,
    maxX: Math.max(rulerIn, millimetres),
    minY: -tickIn - 0.16,
    maxY: tickIn + 0.16,
  };
}

function label(x: number, y: number, words: string): Shape {
  return { kind: 'text', at: [x, y], text: words, anchor: 'middle', sizePt: 9 };
}
