import { describe, expect, it } from 'vitest';
import { drawFasciaLine, waveExaggeration } from '../../core/drawings/draw-fascia-line.ts';
import { drawWallBow } from '../../core/drawings/draw-wall-bow.ts';
import { exaggerationOf } from '../../core/drawings/exaggeration.ts';
import type { Drawing } from '../../core/drawings/drawing.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';

const rafters = [20, 44, 68, 92].map((readingIn, index) => ({
  id: `r${index + 1}`,
  readingIn,
  heightAbovePlateIn: [5, 5.5, 4.75, 5][index] ?? 5,
}));
const wallReadings = [
  { id: 'w1', stationIn: 0, outIn: 0 },
  { id: 'w2', stationIn: 60, outIn: 0.5 },
  { id: 'w3', stationIn: 120, outIn: -0.25 },
];

/** Middles of the polygons with a tail's ref, by mark. */
function places({ shapes }: Drawing): ReadonlyMap<string, readonly [number, number]> {
  return new Map(
    shapes.flatMap((shape) => {
      if (shape.kind !== 'polygon' || shape.ref === undefined) return [];
      const middle = (axis: 0 | 1): number =>
        shape.points.reduce((sum, point) => sum + point[axis], 0) / shape.points.length;
      return [[shape.title?.split(':')[0] ?? '', [middle(0), middle(1)]] as const];
    }),
  );
}

function lines({ shapes }: Drawing, pen: string) {
  return shapes.flatMap((shape) => (shape.kind === 'line' && shape.pen === pen ? [shape] : []));
}

describe('the wave of the tails', () => {
  it('draws each tail at its own height before, exaggerated against the line it is brought to', () => {
    const layout = layOut(makeEave([], { rafters }), makeDesign({ layout: { largestGapIn: 48 } }));
    const drawing = drawFasciaLine(layout);
    const exaggeration = waveExaggeration(layout);
    const at = places(drawing);
    const line = lines(drawing, 'new')[0]?.from[1] ?? Number.NaN;
    for (const { mark, centreIn, liftAtTailIn } of layout.extenders) {
      const [x, y] = at.get(mark) ?? [];
      expect(x).toBeCloseTo(centreIn, 9);
      expect(y).toBeCloseTo(line - liftAtTailIn * exaggeration, 9);
    }
    expect(drawing.description).toMatch(/After, with seats and shims cut to a sixteenth, they stand within/);
  });

  it('shows the scatter where the tails stay as found, and no line to bring them to', () => {
    const design = makeDesign({ fasciaLine: 'as-found', layout: { largestGapIn: 48 } });
    const layout = layOut(makeEave([], { rafters }), design);
    const drawing = drawFasciaLine(layout);
    const heights = [...places(drawing).values()].map(([, y]) => y);
    // The second rafter stands half an inch higher than the first.
    expect((heights[1] ?? 0) - (heights[0] ?? 0)).toBeCloseTo(0.5 * waveExaggeration(layout), 9);
    expect(lines(drawing, 'new')).toEqual([]);
    expect(drawing.description).toMatch(/They stay so/);
  });

  it('shows the fall of a plate that was read in the tails before', () => {
    const plateReadings = [
      { id: 'p1', stationIn: 0, upIn: 0 },
      { id: 'p2', stationIn: 120, upIn: -1 },
    ];
    const even = makeEave([20, 44, 68, 92], { lengthIn: 120, plateReadings });
    const drawing = drawFasciaLine(
      layOut(even, makeDesign({ fasciaLine: 'level', layout: { largestGapIn: 48 } })),
    );
    const heights = [...places(drawing).values()];
    const [first, second] = heights;
    expect((second?.[1] ?? 0) - (first?.[1] ?? 0)).toBeCloseTo((-24 / 120) * 10, 9);
  });
});

describe("the wall's bow in plan", () => {
  const layout = layOut(
    makeEave([20, 44, 68, 92], { lengthIn: 120, wallReadings }),
    makeDesign({ layout: { largestGapIn: 48 } }),
  );
  const drawing = drawWallBow(layout, wallReadings);

  it('draws the wall through its readings, outward down, ten times exaggerated here', () => {
    expect(lines(drawing, 'old').map(({ from, to }) => [from, to])).toEqual([
      [
        [0, -0],
        [60, -5],
      ],
      [
        [60, -5],
        [120, 2.5],
      ],
    ]);
    expect(lines(drawing, 'centre')).toMatchObject([{ from: [0, 0], to: [120, 0] }]);
  });

  it('draws a straight line of tails straight, clear of the wall, and writes each own overhang', () => {
    const ends = [...places(drawing).values()].map(([, y]) => y);
    for (const y of ends) expect(y).toBeCloseTo(ends[0] ?? Number.NaN, 9);
    expect(ends[0]).toBeLessThan(-5);
    const written = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(written).toContain('1/2" out');
    expect(written).toContain('1/4" in');
    // At 21.5: 0.179 out, so 15.82 of 16.
    expect(written).toContain('15-13/16"');
  });

  it('draws a line that follows the wall as far from it everywhere', () => {
    const followed = layOut(
      makeEave([20, 44, 68, 92], { lengthIn: 120, wallReadings }),
      makeDesign({ fasciaInPlan: 'follow', layout: { largestGapIn: 48 } }),
    );
    const ends = [...places(drawWallBow(followed, wallReadings)).values()];
    const apart = ends.map(([, y], index) => y + (followed.extenders[index]?.wallOutIn ?? 0) * 10);
    for (const distance of apart) expect(distance).toBeCloseTo(apart[0] ?? Number.NaN, 9);
  });
});

describe('what is drawn exaggerated', () => {
  it('is drawn as large as keeps within a twelfth of its length', () => {
    expect(exaggerationOf(5 / 16, 412)).toBe(40);
    expect(exaggerationOf(1, 240)).toBe(20);
    expect(exaggerationOf(2, 240)).toBe(10);
    expect(exaggerationOf(3, 240)).toBe(5);
    expect(exaggerationOf(60, 240)).toBe(1);
    expect(exaggerationOf(0, 240)).toBe(40);
  });
});
