import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../core/drawings/drawing.ts';
import { paint } from '../../core/drawings/paint.ts';
import type { Primitive } from '../../core/drawings/painted.ts';
import { spread } from '../../core/drawings/spread.ts';
import { boxesOverlap, textBox } from '../../core/drawings/text-box.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { paintedPolygons, paintedTexts } from './painted-shapes.ts';

type Running = Extract<Shape, { kind: 'running' }>;
type Line = Extract<Primitive, { kind: 'line' }>;

function painted(stops: readonly number[], change: Partial<Running> = {}, others: readonly Shape[] = []) {
  const running: Running = {
    kind: 'running',
    origin: [0, 0],
    direction: [1, 0],
    fromIn: 0,
    toIn: 240,
    offsetPt: 10,
    stops: stops.map((atIn) => ({ atIn, text: formatLength(atIn) })),
    ...change,
  };
  const drawing: Drawing = {
    title: 't',
    description: 'd',
    shapes: [...others, running],
    minX: 0,
    minY: 0,
    maxX: 240,
    maxY: 40,
  };
  return paint(drawing, 1.5, { pxPerPt: 1 });
}

/** Short lines square to a level line: its ticks. */
function ticks(lines: readonly Primitive[]): readonly Line[] {
  return lines.filter(
    (line): line is Line =>
      line.kind === 'line' && line.x1 === line.x2 && Math.abs(Math.abs(line.y1 - line.y2) - 5.2) < 1e-6,
  );
}

describe('running dimensions', () => {
  it('have a tick at each stop, as far from the origin as the stop is in the thing, and its own figure', () => {
    const stops = [16, 40.5, 63.75, 120];
    const result = painted(stops);
    const [circle] = paintedPolygons(result);
    const zero = (circle?.points ?? []).reduce((sum, [x]) => sum + x, 0) / (circle?.points.length ?? 1);
    expect(ticks(result.primitives).map((tick) => tick.x1 - zero)).toEqual(
      stops.map((stop) => expect.closeTo(stop * 1.5, 6)),
    );
    expect(paintedTexts(result).map(({ text }) => text)).toEqual([
      `1' 4"`,
      `3' 4-1/2"`,
      `5' 3-3/4"`,
      `10' 0"`,
    ]);
  });

  it('mark their origin by a circle, and none where the drawn stretch leaves the origin out', () => {
    expect(paintedPolygons(painted([16]))).toHaveLength(1);
    expect(paintedPolygons(painted([160], { fromIn: 120 }))).toHaveLength(0);
  });

  it('write their figures square to the line, away from the thing, on whichever side they stand', () => {
    for (const [offsetPt, sign] of [
      [10, -1],
      [-10, 1],
    ] as const) {
      const result = painted([60, 120], { offsetPt });
      const line = result.primitives.find((one): one is Line => one.kind === 'line' && one.x2 - one.x1 > 300);
      for (const text of paintedTexts(result)) {
        expect(Math.abs(text.rotateDeg)).toBe(90);
        for (const [, y] of textBox(text)) expect((y - (line?.y1 ?? 0)) * sign).toBeGreaterThan(0);
      }
    }
  });

  it('never let two figures cover one another, however close the stops stand, nor another text', () => {
    const station = fc.integer({ min: 0, max: 240 * 16 }).map((sixteenths) => sixteenths / 16);
    fc.assert(
      fc.property(fc.uniqueArray(station, { minLength: 1, maxLength: 14 }), (stops) => {
        const label: Shape = { kind: 'text', at: [100, 46], text: 'chimney', anchor: 'middle', sizePt: 8 };
        const sorted = stops.toSorted((a, b) => a - b);
        const texts = paintedTexts(painted(sorted, {}, [label]));
        for (const [index, one] of texts.entries())
          for (const other of texts.slice(index + 1))
            expect(boxesOverlap(textBox(one), textBox(other)), `${one.text}, ${other.text}`).toBe(false);
      }),
    );
  });
});

describe('labels spread along a line', () => {
  it('keep their order and the gap, stay where they have room, and move as little as can be', () => {
    expect(spread([0, 1, 30], 10)).toEqual([-4.5, 5.5, 30]);
    const places = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 8 });
    fc.assert(
      fc.property(places, fc.double({ min: 0.5, max: 20, noNaN: true }), (unordered, gap) => {
        const wanted = unordered.toSorted((a, b) => a - b);
        const spreadOut = spread(wanted, gap);
        const squares = (at: readonly number[]): number =>
          at.reduce((sum, place, index) => sum + (place - (wanted[index] ?? 0)) ** 2, 0);
        for (const [index, place] of spreadOut.slice(1).entries())
          expect(place - (spreadOut[index] ?? 0)).toBeGreaterThanOrEqual(gap - 1e-9);
        // Pushing every label to the right of the one before it is another way; it never moves them less.
        const pushed: number[] = [];
        for (const place of wanted)
          pushed.push(Math.max(place, (pushed.at(-1) ?? Number.NEGATIVE_INFINITY) + gap));
        expect(squares(spreadOut)).toBeLessThanOrEqual(squares(pushed) + 1e-6);
      }),
    );
  });
});
