import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutAroundText } from '../../core/drawings/cut-around-text.ts';
import type { PaintedText } from '../../core/drawings/painted.ts';
import { textBox } from '../../core/drawings/text-box.ts';

const level = (y: number) => ({ kind: 'line', x1: 0, y1: y, x2: 100, y2: y, pen: 'dimension' }) as const;

const text = (x: number, y: number, rotateDeg: number): PaintedText => ({
  kind: 'text',
  x,
  y,
  text: '3-1/2"',
  anchor: 'middle',
  sizePx: 10,
  rotateDeg,
  bold: false,
});

describe('a thin line', () => {
  it('that meets no text stays as it is', () => {
    expect(cutAroundText(level(50), [textBox(text(50, 20, 0))])).toEqual([level(50)]);
  });

  it('through a figure is parted around it', () => {
    const box = textBox(text(50, 53, 0));
    const [left, right, ...more] = cutAroundText(level(50), [box]);
    expect(more).toEqual([]);
    expect(left?.x1).toBe(0);
    expect(left?.x2).toBeCloseTo(box[0][0], 9);
    expect(right?.x1).toBeCloseTo(box[1][0], 9);
    expect(right?.x2).toBe(100);
  });

  it('wholly under a figure goes', () => {
    expect(cutAroundText({ ...level(50), x1: 48, x2: 52 }, [textBox(text(50, 53, 0))])).toEqual([]);
  });

  it('keeps just the points that lie in no box, however the texts are turned', () => {
    const turned = fc.record({
      x: fc.integer({ min: 0, max: 100 }),
      y: fc.integer({ min: 30, max: 70 }),
      angle: fc.integer({ min: -180, max: 180 }),
    });
    fc.assert(
      fc.property(
        fc.array(turned, { maxLength: 4 }),
        fc.integer({ min: 1, max: 999 }),
        (texts, thousandths) => {
          const boxes = texts.map(({ x, y, angle }) => textBox(text(x, y, angle)));
          const x = thousandths / 10;
          const depths = boxes.map((box) => depthInside(box, x, 50));
          fc.pre(depths.every((depth) => Math.abs(depth) > 1e-6));
          const kept = cutAroundText(level(50), boxes).some((part) => part.x1 <= x && x <= part.x2);
          expect(kept).toBe(depths.every((depth) => depth < 0));
        },
      ),
    );
  });
});

/** How far inside a box a point lies, by its distance to the nearest side; negative outside. */
function depthInside(box: ReturnType<typeof textBox>, x: number, y: number): number {
  const distances = box.map((corner, index) => {
    const next = box[(index + 1) % box.length] ?? corner;
    const length = Math.hypot(next[0] - corner[0], next[1] - corner[1]);
    return ((next[0] - corner[0]) * (y - corner[1]) - (next[1] - corner[1]) * (x - corner[0])) / length;
  });
  return Math.min(...distances);
}
