import { describe, expect, it } from 'vitest';
import { drawElevation, tailAt } from '../../core/drawings/draw-elevation.ts';
import { lineHeightIn } from '../../core/layout/fascia-line.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { oldHouse } from './old-house.ts';
import { extent, polygonsTitled, polygonTitled, textsOf } from './painted-shapes.ts';

const house = oldHouse();
const { layout, survey, design } = house;
const drawing = drawElevation(layout, survey, design, { panelJointsIn: [96] });

describe('the fascia from outside', () => {
  it('has every board from joint to joint, as deep as its section: 7-1/4 in. for a 1x8 (PS 20-20, Table 3)', () => {
    const boards = polygonsTitled(drawing, /^Fascia /);
    expect(boards).toHaveLength(layout.fascia.length);
    for (const [index, { points }] of boards.entries()) {
      const piece = layout.fascia[index];
      expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(piece?.fromIn ?? Number.NaN, 9);
      expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(piece?.toIn ?? Number.NaN, 9);
      expect(extent(points.map(([, y]) => y))).toBeCloseTo(7.25, 9);
    }
  });

  it('has its upper edge on the line that the tails are brought to', () => {
    for (const { points } of polygonsTitled(drawing, /^Fascia /))
      expect(Math.max(...points.map(([, y]) => y))).toBeCloseTo(lineHeightIn(layout.fasciaLine, 0), 9);
  });

  it('shows every tail behind as hidden lines, at its station, with its top on the line', () => {
    for (const extender of layout.extenders) {
      const { points, pen } = polygonTitled(drawing, new RegExp(`^Tail ${extender.mark}$`));
      expect(pen).toBe('hidden');
      expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(extender.leftIn, 9);
      expect(extent(points.map(([x]) => x))).toBeCloseTo(1.5, 9);
      expect(Math.max(...points.map(([, y]) => y))).toBeCloseTo(
        lineHeightIn(layout.fasciaLine, extender.centreIn),
        6,
      );
      expect(extent(points.map(([, y]) => y))).toBeCloseTo(extender.section.tailFaceIn, 9);
    }
  });

  it('shows the sub-fascia behind, hidden, as deep as its section: 5-1/2 in. for a 2x6 (PS 20-20, Table 3)', () => {
    const boards = polygonsTitled(drawing, /^Sub-fascia /);
    expect(boards.map(({ pen }) => pen)).toEqual(layout.subFascia.map(() => 'hidden'));
    for (const { points } of boards) expect(extent(points.map(([, y]) => y))).toBeCloseTo(5.5, 9);
  });

  it('names with each joint the tail that it lands on, at its station, and with no other', () => {
    const joints = layout.fascia.slice(1).map(({ fromIn }) => fromIn);
    expect(joints.length).toBeGreaterThan(0);
    const texts = textsOf(drawing);
    for (const at of joints) {
      const mark = tailAt(layout, at)?.mark;
      expect(mark).toBeDefined();
      expect(texts).toContain(`joint  ${mark}  ${formatLength(at)}`);
    }
    expect(texts.filter((text) => text.startsWith('joint '))).toHaveLength(joints.length);
    for (const { mark } of layout.extenders)
      expect(texts.filter((text) => text.includes(mark))).toHaveLength(1);
  });

  it('follows each tail where no line was fitted', () => {
    const found = oldHouse(
      {
        rafters: [
          { id: 'a', readingIn: 20 },
          { id: 'b', readingIn: 42, heightAbovePlateIn: 6 },
          { id: 'c', readingIn: 64 },
        ],
        lengthIn: 84,
        wallReadings: [],
      },
      { fasciaLine: 'as-found' },
    );
    const bent = drawElevation(found.layout, found.survey, found.design);
    const tops = found.layout.extenders.map((extender) => {
      const { points } = polygonTitled(bent, new RegExp(`^Tail ${extender.mark}$`));
      return Math.max(...points.map(([, y]) => y));
    });
    // Each as its own rafter leaves it: HAP - 16/2.
    expect(tops).toEqual([5 - 8, 6 - 8, 5 - 8].map((top) => expect.closeTo(top, 9)));
    const corners = polygonsTitled(bent, /^Fascia /).flatMap(({ points }) => points);
    for (const { centreIn } of found.layout.extenders)
      expect(corners.some(([x]) => Math.abs(x - centreIn) < 1e-9)).toBe(true);
  });

  it('leans with a square tail, so that its face shows shorter by the cosine of the slope', () => {
    const square = oldHouse({}, { tailCut: 'square' });
    const leaning = drawElevation(square.layout, square.survey, square.design);
    const [board] = polygonsTitled(leaning, /^Fascia /);
    // 6/12: the cosine is 12 / sqrt(12^2 + 6^2) = 0.894.
    expect(extent((board?.points ?? []).map(([, y]) => y))).toBeCloseTo(7.25 * (12 / Math.sqrt(180)), 9);
  });
});
