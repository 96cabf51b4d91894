import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../core/drawings/drawing.ts';
import { paint } from '../../core/drawings/paint.ts';
import { fitToScale, standardScales } from '../../core/drawings/standard-scales.ts';
import { boxesOverlap, textBox } from '../../core/drawings/text-box.ts';
import { paintedPolygons, paintedTexts } from './painted-shapes.ts';

const paper = { pxPerPt: 1 };

function drawing(shapes: readonly Shape[], width = 100, height = 50): Drawing {
  return { title: 't', description: 'd', shapes, minX: 0, minY: 0, maxX: width, maxY: height };
}

const dimension: Shape = { kind: 'dimension', from: [0, 0], to: [100, 0], offsetPt: 20, text: `8' 4"` };

describe('a painted drawing', () => {
  it('shows 12 in. as a quarter of an inch at the scale 1/4" = 1\' 0" (1 in. of paper = 72 points)', () => {
    // Architect's scale: 1/4 in. on paper for 1 ft, a ratio of 1:48. Common practice, no source.
    const scale = standardScales.find(({ name }) => name.startsWith('1/4"'));
    const painted = paint(
      drawing([
        {
          kind: 'polygon',
          points: [
            [0, 0],
            [12, 0],
            [12, 12],
          ],
          pen: 'new',
          fill: 'none',
        },
      ]),
      scale?.ptPerInch ?? 0,
      paper,
    );
    const xs = paintedPolygons(painted)[0]?.points.map(([x]) => x) ?? [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(72 / 4, 9);
  });

  it('every standard scale is what its name says: inches of paper for a foot of the thing', () => {
    for (const { name, ptPerInch } of standardScales.slice(1)) {
      const [, whole, top, bottom] = /^(?:(\d+)-?)??(?:(\d+)\/(\d+))?" = 1' 0"$/.exec(name) ?? [];
      const inches = Number(whole ?? 0) + (top === undefined ? 0 : Number(top) / Number(bottom));
      expect([name, ptPerInch]).toEqual([name, (inches * 72) / 12]);
    }
  });

  it('keeps up as up: a higher point has a smaller y', () => {
    const painted = paint(drawing([{ kind: 'line', from: [0, 0], to: [0, 50], pen: 'old' }]), 1, paper);
    const [line] = painted.primitives;
    expect(line).toMatchObject({ kind: 'line' });
    expect((line as { y1: number }).y1 - (line as { y2: number }).y2).toBeCloseTo(50, 9);
  });

  it('sets a dimension off to the left of a walk along it: above for a walk to the right', () => {
    const painted = paint(drawing([dimension]), 1, paper);
    const [text] = paintedTexts(painted);
    const long = painted.primitives.find(
      (line) => line.kind === 'line' && Math.abs(line.x2 - line.x1) > 99,
    ) as { y1: number; y2: number };
    const bottomY = painted.heightPx - 4;
    expect(bottomY - long.y1).toBeCloseTo(20, 6);
    expect(long.y1).toBe(long.y2);
    expect(text?.rotateDeg).toBe(0);
    expect(text?.y).toBeLessThan(long.y1);
  });

  it('ends a dimension in two ticks that stand on its points', () => {
    const painted = paint(drawing([dimension]), 1, paper);
    const ticks = painted.primitives.filter(
      (line) =>
        line.kind === 'line' &&
        Math.abs(Math.abs(line.x2 - line.x1) - Math.abs(line.y2 - line.y1)) < 1e-9 &&
        line.x1 !== line.x2,
    ) as readonly { x1: number; x2: number }[];
    const long = painted.primitives.find((line) => line.kind === 'line' && line.x2 - line.x1 > 99) as {
      x1: number;
      x2: number;
    };
    expect(ticks.map((tick) => (tick.x1 + tick.x2) / 2)).toEqual([long.x1, long.x2]);
  });

  it('never lets a dimension read upside down, whichever way it runs', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 360, noNaN: true }), (degrees) => {
        const angle = (degrees * Math.PI) / 180;
        const painted = paint(
          drawing([
            {
              kind: 'dimension',
              from: [0, 0],
              to: [90 * Math.cos(angle), 90 * Math.sin(angle)],
              offsetPt: 12,
              text: `7' 6"`,
            },
          ]),
          1,
          paper,
        );
        const turn = paintedTexts(painted)[0]?.rotateDeg ?? Number.NaN;
        expect(turn).toBeGreaterThanOrEqual(-90.0001);
        expect(turn).toBeLessThan(90);
      }),
    );
  });

  it('holds all of its lines and texts inside its own size', () => {
    const anchor = fc.constantFrom('start' as const, 'middle' as const, 'end' as const);
    const text = fc.record({
      kind: fc.constant('text' as const),
      at: fc.tuple(fc.integer({ min: -50, max: 150 }), fc.integer({ min: -50, max: 100 })),
      text: fc.string({ minLength: 1, maxLength: 20 }),
      anchor,
      sizePt: fc.integer({ min: 5, max: 12 }),
      rotateDeg: fc.constantFrom(0, 90, -26.6),
    });
    fc.assert(
      fc.property(fc.array(text, { maxLength: 12 }), (texts) => {
        const painted = paint(drawing([...texts, dimension]), 1.5, paper);
        for (const placed of paintedTexts(painted)) {
          for (const [x, y] of textBox(placed)) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(painted.widthPx);
            expect(y).toBeLessThanOrEqual(painted.heightPx);
          }
        }
      }),
    );
  });

  it('staggers running dimensions that stand too close to be written side by side', () => {
    const stations = [10, 12, 14].map(
      (x): Shape => ({
        kind: 'text',
        at: [x, 50],
        text: `1' 4-11/16"`,
        anchor: 'start',
        sizePt: 6.5,
        rotateDeg: 90,
      }),
    );
    const texts = paintedTexts(paint(drawing(stations), 1.5, paper));
    expect(texts).toHaveLength(3);
    for (const [index, one] of texts.entries()) {
      for (const other of texts.slice(index + 1)) {
        expect(boxesOverlap(textBox(one), textBox(other))).toBe(false);
      }
    }
  });

  it('writes a dimension that is too short for its text beside it, not over its neighbour', () => {
    const chain = [0, 4, 8].map(
      (x): Shape => ({ kind: 'dimension', from: [x, 0], to: [x + 4, 0], offsetPt: 14, text: `0' 4"` }),
    );
    const texts = paintedTexts(paint(drawing(chain), 1.5, paper));
    for (const [index, one] of texts.entries()) {
      for (const other of texts.slice(index + 1)) {
        expect(boxesOverlap(textBox(one), textBox(other))).toBe(false);
      }
    }
  });

  it('is as large on a screen as its scale and its type ask for', () => {
    const small = paint(drawing([dimension]), 1, paper);
    const large = paint(drawing([dimension]), 2, { pxPerPt: 2 });
    expect(large.widthPx).toBeCloseTo(2 * small.widthPx, 6);
    expect(large.heightPx).toBeCloseTo(2 * small.heightPx, 6);
  });
});

describe('fitting to paper', () => {
  it('takes the largest standard scale that fits: 24 ft in 7 in. of paper is 1/4" = 1\' 0"', () => {
    // 24 ft at 1/4 in. a foot is 6 in.; at 3/8 in. it would be 9 in.
    expect(fitToScale(drawing([], 288, 60), 7 * 72, 500).scaleText).toBe(`Scale 1/4" = 1' 0"`);
  });

  it('says so when no standard scale is small enough', () => {
    const fitted = fitToScale(drawing([], 12000, 60), 504, 500);
    expect(fitted.scaleText).toBe('Not to a standard scale');
    expect(fitted.painted.widthPx).toBeLessThanOrEqual(504);
  });
});
