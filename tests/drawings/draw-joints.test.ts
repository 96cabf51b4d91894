import { describe, expect, it } from 'vitest';
import { drawHeaderDetail } from '../../core/drawings/draw-header-detail.ts';
import { drawNailPattern, type LapNails } from '../../core/drawings/draw-nail-pattern.ts';
import { toPieceAxes } from '../../core/drawings/piece-axes.ts';
import { staggeredNails } from '../../core/takeoff/stagger.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { oldHouse, tailBy } from './old-house.ts';
import { extent, polygonsTitled, polygonTitled, textsOf } from './painted-shapes.ts';

const pattern = { rows: 2, spacingIn: 16, endDistanceIn: 2.5 };

function lapOf(toIn: number): LapNails {
  return {
    nail: '16d common',
    rows: 2,
    edgeDistanceIn: 1,
    lap: { fromIn: 0, toIn },
    nails: staggeredNails(toIn, pattern),
  };
}

describe('the axes of a piece', () => {
  it('put the top edge level through the wall line, and the plate corner under it (6/12, HAP 5: 2.236, -4.472)', () => {
    const turn = toPieceAxes({ pitchRisePer12: 6, slopeFactor: Math.hypot(1, 0.5), heightAbovePlateIn: 5 });
    expect(turn([0, 5])).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
    expect(turn([16, -3])).toEqual([expect.closeTo(16 * Math.hypot(1, 0.5), 9), expect.closeTo(0, 9)]);
    expect(turn([0, 0])).toEqual([
      expect.closeTo(5 / Math.sqrt(5), 9),
      expect.closeTo(-10 / Math.sqrt(5), 9),
    ]);
  });
});

function centre(values: readonly number[]): number {
  return (Math.min(...values) + Math.max(...values)) / 2;
}

/** Whether a point lies in a polygon, by counting the edges that a level line from it crosses. */
function inside([x, y]: readonly [number, number], polygon: readonly (readonly [number, number])[]): boolean {
  return (
    polygon.filter(([x1, y1], index) => {
      const [x2, y2] = polygon[(index + 1) % polygon.length] ?? [x1, y1];
      return y1 > y !== y2 > y && x < x1 + ((x2 - x1) * (y - y1)) / (y2 - y1);
    }).length %
      2 ===
    1
  );
}

describe('the nails of a lap', () => {
  const house = oldHouse({}, { layout: { allowFiller: true } });
  const extender = tailBy(house, 'side');
  const joint = lapOf(extender.section.backspanIn);
  const drawing = drawNailPattern({ ...house, extender }, joint);

  it('stand where the pattern has them, counted from the back end, in their rows', () => {
    const heads = polygonsTitled(drawing, /^Row /);
    expect(heads).toHaveLength(joint.nails.length);
    for (const [index, { points }] of heads.entries()) {
      const nail = joint.nails[index];
      expect(centre(points.map(([x]) => x)) + joint.lap.toIn).toBeCloseTo(nail?.alongIn ?? Number.NaN, 9);
      // Two rows in a 2x6, 1 in. from each edge, within what the tail is turned to the line by.
      expect(Math.abs(centre(points.map(([, y]) => y)) - (nail?.row === 1 ? -1 : -4.5))).toBeLessThan(0.15);
    }
  });

  it('are told as running dimensions of each row, and rows tell apart by the shape of their heads', () => {
    for (const { alongIn } of joint.nails) expect(textsOf(drawing)).toContain(formatLength(alongIn));
    // What is left behind the last nail is the end distance.
    expect(textsOf(drawing)).toContain(formatLength(joint.lap.toIn));
    const [odd, even] = [1, 2].map(
      (row) =>
        new Set(polygonsTitled(drawing, new RegExp(`^Row ${row},`)).map(({ points }) => points.length)),
    );
    expect([odd, even]).toEqual([new Set([12]), new Set([4])]);
  });

  it('lie inside the piece: the extender drawn is as deep as its stock and reaches back to the lap', () => {
    const { points } = polygonTitled(drawing, /^Extender/);
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(-extender.section.backspanIn, 6);
    expect(extent(points.map(([, y]) => y))).toBeCloseTo(5.5, 6);
  });

  it('stay in the wood that laps where the old rafter is shallower, or a kicked-up tail lies across it', () => {
    const shallow = oldHouse({ rafterDepthIn: 3.5, heightAbovePlateIn: 3 });
    const kicked = oldHouse({ pitchRisePer12: 9 }, { kickUpPitchRisePer12: 5, kickUpRaiseIn: 3 });
    for (const one of [shallow, kicked]) {
      const tail = tailBy(one, 'side');
      const { kickUp, backspanIn } = tail.section;
      const [fromIn, toIn] =
        kickUp?.lap === null || kickUp === null ? [0, backspanIn] : [kickUp.lap.fromIn, kickUp.lap.toIn];
      const pattern = drawNailPattern(
        { ...one, extender: tail },
        {
          ...lapOf(toIn),
          lap: { fromIn, toIn },
          nails: staggeredNails(toIn - fromIn, { rows: 2, spacingIn: 6, endDistanceIn: 2.5 }),
        },
      );
      const rafter = polygonTitled(pattern, /^Old rafter/).points;
      const heads = polygonsTitled(pattern, /^Row /);
      expect(heads.length).toBeGreaterThan(3);
      for (const { points } of heads) {
        for (const point of points) {
          expect(point[1]).toBeLessThanOrEqual(0);
          expect(point[1]).toBeGreaterThanOrEqual(-5.5);
          expect(inside(point, rafter)).toBe(true);
        }
      }
    }
  });

  it('show the filler behind, at the back end and as long as it is cut', () => {
    const filled = tailBy(house, 'filler');
    const { points } = polygonTitled(
      drawNailPattern({ ...house, extender: filled }, lapOf(filled.section.backspanIn)),
      /^Filler/,
    );
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(-filled.section.backspanIn, 9);
    expect(extent(points.map(([x]) => x))).toBeCloseTo(
      inchesOf(filled.filler?.lengthSixteenths ?? (0 as never)),
      9,
    );
  });
});

describe('the header block of a hung tail', () => {
  const house = oldHouse();
  const extender = tailBy(house, 'block-hung');
  const [header] = extender.headers;
  const drawing = drawHeaderDetail(house.layout, extender, { nail: '16d common', eachEnd: 3, intoTail: 3 });

  it('fills the clear distance between its two members, with the tail where it is laid out', () => {
    const block = polygonTitled(drawing, /^Header block/);
    expect(extent(block.points.map(([x]) => x))).toBeCloseTo(
      (header?.rightIn ?? 0) - (header?.leftIn ?? 0),
      9,
    );
    const tail = polygonTitled(drawing, /^Tail/);
    expect(Math.min(...tail.points.map(([x]) => x))).toBeCloseTo(extender.leftIn, 9);
    expect(textsOf(drawing)).toContain(formatLength(extender.leftIn - (header?.leftIn ?? 0)));
    for (const member of polygonsTitled(drawing, /^(Rafter|Extender)/)) {
      const xs = member.points.map(([x]) => x);
      const touches = [Math.max(...xs) - (header?.leftIn ?? 0), Math.min(...xs) - (header?.rightIn ?? 0)];
      expect(Math.min(...touches.map(Math.abs))).toBeLessThan(1 / 32);
    }
    expect(polygonsTitled(drawing, /^(Rafter|Extender)/)).toHaveLength(2);
  });

  it('shows three nails through each end and three into the tail (common practice, no source: 2x6)', () => {
    const long = drawing.shapes.filter(
      (shape) => shape.kind === 'line' && Math.abs(shape.from[0] - shape.to[0]) > 2,
    );
    expect(long).toHaveLength(6);
    const heads = drawing.shapes.filter((shape) => shape.kind === 'polygon' && shape.points.length === 12);
    expect(heads).toHaveLength(3);
  });
});
