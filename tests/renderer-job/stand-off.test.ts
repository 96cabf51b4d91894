import { expect, test } from 'vitest';
import type { Drawing } from '../../core/drawings/drawing.ts';
import { standOff } from '../../renderer/drawings/stand-off.ts';

const text = (at: readonly [number, number]) =>
  ({ kind: 'text', at, text: '12', anchor: 'middle', sizePt: 6 }) as const;

/** A wall of 100 in. with a text above it, one in it and one below. */
const drawing: Drawing = {
  title: '',
  description: '',
  shapes: [text([50, 24]), text([50, 10]), text([50, -4])],
  minX: 0,
  minY: 0,
  maxX: 100,
  maxY: 20,
};

function heights(pxPerInch: number): readonly number[] {
  return standOff(drawing, pxPerInch, 1).shapes.map((shape) =>
    shape.kind === 'text' ? shape.at[1] : Number.NaN,
  );
}

test('texts around a drawing keep the room that they have at 1/4" = 1\' when it is drawn smaller', () => {
  // At half that scale, of 0.75 px for an inch, 4 in. off become 8; the text inside stays.
  expect(heights(0.75)).toEqual([28, 10, -8]);
});

test('and stand to scale when it is drawn larger', () => {
  expect(heights(3)).toEqual([24, 10, -4]);
});
