import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../core/drawings/drawing.ts';
import { inchesOf, sixteenthsUp } from '../../core/units/sixteenths.ts';
import { expectCut, makeRake, rakePartsOf, readings } from './make-rake.ts';

/** The second construction: corners of a board found by cutting lines with lines, in the gable's own level and plumb axes. */
type Line = { readonly at: Point; readonly along: Point };

function cut(one: Line, other: Line): Point {
  const [ax, ay] = one.along;
  const [bx, by] = other.along;
  const turn = ax * by - ay * bx;
  const far = ((other.at[0] - one.at[0]) * by - (other.at[1] - one.at[1]) * bx) / turn;
  return [one.at[0] + ax * far, one.at[1] + ay * far];
}

const plumbAt = (x: number): Line => ({ at: [x, 0], along: [0, 1] });
const middle = ([ax, ay]: Point, [bx, by]: Point): Point => [(ax + bx) / 2, (ay + by) / 2];
const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);

/** The four corners of a board by its top line: lower end plumb or square at a point, plumb at the ridge. */
function corners(
  topLine: Line,
  depthIn: number,
  lower: { readonly at: Point; readonly cut: 'plumb' | 'square' },
  ridgeX: number,
) {
  const [dx, dy] = topLine.along;
  const length = Math.hypot(dx, dy);
  // Square to the slope and downward; x runs outward, y up, and the line falls outward.
  const down: Point = [dy / length, -dx / length];
  const square: Point = down[1] < 0 ? down : [-down[0], -down[1]];
  const bottomLine: Line = {
    at: [topLine.at[0] + square[0] * depthIn, topLine.at[1] + square[1] * depthIn],
    along: topLine.along,
  };
  const lowerLine: Line = lower.cut === 'plumb' ? plumbAt(lower.at[0]) : { at: lower.at, along: square };
  return {
    lowerTop: cut(topLine, lowerLine),
    lowerBottom: cut(bottomLine, lowerLine),
    ridgeTop: cut(topLine, plumbAt(ridgeX)),
    ridgeBottom: cut(bottomLine, plumbAt(ridgeX)),
  };
}

/** Overall length of a board: the extent of its corners along the slope. */
function overall(points: readonly Point[], along: Point): number {
  const length = Math.hypot(...along);
  const places = points.map(([x, y]) => (x * along[0] + y * along[1]) / length);
  return Math.max(...places) - Math.min(...places);
}

const rakes = fc.record({
  pitch: fc.double({ min: 2, max: 14, noNaN: true }),
  heightAbovePlateIn: fc.double({ min: 4, max: 9, noNaN: true }),
  runIn: fc.double({ min: 60, max: 200, noNaN: true }),
  ridgeThicknessIn: fc.constantFrom(0, 0.75, 1.5),
  overhangIn: fc.double({ min: 8, max: 24, noNaN: true }),
  tailCut: fc.constantFrom('plumb' as const, 'square' as const),
  barge: fc.constantFrom('2x6', '2x8'),
  end: fc.constantFrom('left' as const, 'right' as const),
});

const changeOf = (one: typeof rakes extends fc.Arbitrary<infer T> ? T : never) => ({
  survey: { runIn: one.runIn, ridgeThicknessIn: one.ridgeThicknessIn, end: one.end },
  design: { barge: { section: one.barge } },
  eave: { pitchRisePer12: one.pitch, heightAbovePlateIn: one.heightAbovePlateIn },
  eaveDesign: { overhangIn: one.overhangIn, tailCut: one.tailCut },
});

describe('a barge rafter', () => {
  test('of 12 ft of run at 6/12 with a 16 in. eave is 15 ft 0-13/16 in. long, 2-3/4 of it slant', () => {
    // By hand: 144 - 3/4 + 16 = 159-1/4 level x 1.118034 = 178.047; plumb tail 5-1/2 x 1/2 = 2-3/4; 180.797 up to 180-13/16.
    const { barge, alongIn, ridgeTopIn, tailTopIn } = makeRake();
    expect(barge).toHaveLength(1);
    expect(inchesOf(barge[0]!.lengthSixteenths)).toBe(180.8125);
    expect(inchesOf(barge[0]!.slantSixteenths!)).toBe(2.75);
    expect(ridgeTopIn).toBeCloseTo(77, 9);
    expect(tailTopIn).toBeCloseTo(-3, 9);
    expect(alongIn).toBeCloseTo(160 * Math.sqrt(1.25), 9);
  });

  test('is as long as its corners lie apart, found by cutting its top, bottom, tail and ridge lines', () => {
    fc.assert(
      fc.property(rakes, (one) => {
        const rake = makeRake(changeOf(one));
        const slope = one.pitch / 12;
        const ridge: Point = [-one.runIn, one.heightAbovePlateIn + slope * one.runIn];
        const tail: Point = [one.overhangIn, one.heightAbovePlateIn - slope * one.overhangIn];
        const top: Line = { at: tail, along: [ridge[0] - tail[0], ridge[1] - tail[1]] };
        const found = corners(
          top,
          rake.bargeSize.depthIn,
          { at: tail, cut: one.tailCut },
          -one.runIn + one.ridgeThicknessIn / 2,
        );
        expect(rake.alongIn).toBeCloseTo(apart(ridge, tail), 6);
        expectCut(rake.barge[0]!, overall(Object.values(found), top.along));
        const cutIn = inchesOf(rake.barge[0]!.lengthSixteenths);
        // Nested, a plumb-ended piece costs its mid-line: from the middle of one cut to the middle of the other.
        const midLine = apart(
          middle(found.lowerTop, found.lowerBottom),
          middle(found.ridgeTop, found.ridgeBottom),
        );
        const slantIn = inchesOf(rake.barge[0]!.slantSixteenths ?? sixteenthsUp(0));
        const nestedIn = one.tailCut === 'plumb' ? midLine : cutIn;
        expect(Math.abs(cutIn - slantIn - nestedIn)).toBeLessThan(1 / 16 + 1e-6);
      }),
    );
  });

  test("keeps its top edge in the plane of the sheathing: on the gable rafter's line, and on the eave's fascia line", () => {
    fc.assert(
      fc.property(rakes, (one) => {
        const rake = makeRake(changeOf(one));
        expect(rake.aboveGableIn).toBeCloseTo(0, 6);
        expect(rake.pitchRisePer12).toBeCloseTo(one.pitch, 6);
      }),
    );
  });

  test('is brought to the fascia line where the gable rafter alone is steeper than the others', () => {
    // Rafter 1 at 7/12 among ten at 6/12: its own tail comes 1.33 in. low, and the barge runs straight to the line.
    const change = {
      eave: {
        rafters: [0.75, 16, 40, 64, 88].map((readingIn, index) => ({
          id: `r${index + 1}`,
          readingIn,
          ...(index === 0 ? { pitchRisePer12: 7 } : {}),
        })),
      },
    };
    const rake = makeRake(change);
    const line = rakePartsOf(change).layout.fasciaLine;
    expect(rake.tailTopIn).toBeCloseTo(line.atStartIn, 6);
    expect(rake.ridgeTopIn).toBeCloseTo(5 + 84, 9);
    const pitch = ((rake.ridgeTopIn - rake.tailTopIn) / 160) * 12;
    expect(rake.pitchRisePer12).toBeCloseTo(pitch, 9);
    // Straight between both: at the wall it stands off the gable rafter by its share of the lift.
    expect(rake.aboveGableIn).toBeCloseTo(((line.atStartIn - (5 - (7 / 12) * 16)) * 144) / 160, 6);
    expect(rake.findings.map(({ text }) => text).join(' ')).toMatch(/above the gable rafter at the wall/);
  });

  test('takes the pitch measured at the gable before that of the eave', () => {
    const rake = makeRake({ survey: { pitchRisePer12: 6.5 } });
    expect(rake.ridgeTopIn).toBeCloseTo(5 + (6.5 / 12) * 144, 9);
  });

  test('longer than any board is jointed on a lookout, and says so', () => {
    const rake = makeRake({ longestIn: 119 });
    expect(rake.barge).toHaveLength(2);
    const joint = rake.barge[1]!.fromIn;
    expect(rake.lookouts.some(({ alongIn }) => Math.abs(alongIn - joint) < 1e-9)).toBe(true);
    expect(rake.barge.every(({ lengthSixteenths }) => lengthSixteenths <= 119 * 16)).toBe(true);
    expect(rake.barge.map(({ slantSixteenths }) => slantSixteenths)).toEqual([undefined, undefined]);
    const together = rake.barge.reduce((sum, { lengthSixteenths }) => sum + lengthSixteenths, 0) / 16;
    expect(together).toBeGreaterThanOrEqual(180.797);
    expect(together).toBeLessThan(180.797 + 2 / 16);
    expect(rake.findings.map(({ text }) => text).join(' ')).toMatch(/jointed on a lookout/);
  });
});

describe('the corner of eave and rake', () => {
  test('is a mitre of 45 degrees where both fascias are as thick, with their long points at one place', () => {
    const rake = makeRake();
    expect(rake.corner.mitreDeg).toBeCloseTo(45, 9);
    // In plan, x level out from the eave wall and z out from the gable: faces cut faces, backs cut backs.
    const eaveFace: Line = plumbAt(16 + 0.75);
    const rakeFace: Line = { at: [0, 12 + 0.75], along: [1, 0] };
    const [x, z] = cut(eaveFace, rakeFace);
    expect(rake.corner.eaveLongOutIn).toBeCloseTo(z, 9);
    expect(rake.corner.rakeLongAlongIn).toBeCloseTo((x - 16) * Math.sqrt(1.25), 9);
    expect(rake.corner.eaveShortOutIn).toBe(12);
    expect(rake.corner.rakeShortAlongIn).toBe(0);
  });

  test('turns flatter into the thicker board: 26.6 degrees off square on a 1x rake at a 2x eave', () => {
    const { corner } = makeRake({ eaveDesign: { fascia: { stock: { section: '2x8' } } } });
    expect(corner.mitreDeg).toBeCloseTo((Math.atan(0.5) * 180) / Math.PI, 9);
    expect(corner.rakeLongAlongIn).toBeCloseTo(1.5 * Math.sqrt(1.25), 9);
  });

  test('starts the mitre behind a sub-fascia, which runs past the barge rafter square', () => {
    const { corner } = makeRake({
      eaveDesign: {
        fascia: { stock: { section: '1x8' }, subFascia: { wanted: true, stock: { section: '2x6' } } },
      },
    });
    expect(corner.rakeShortAlongIn).toBeCloseTo(1.5 * Math.sqrt(1.25), 9);
    expect(corner.rakeLongAlongIn).toBeCloseTo(2.25 * Math.sqrt(1.25), 9);
  });

  test('on a square tail adds the thickness of the board along the slope', () => {
    const { corner, fascia } = makeRake({
      eaveDesign: { fascia: { stock: { section: '1x8' } }, tailCut: 'square' },
    });
    expect(corner.rakeLongAlongIn).toBe(0.75);
    expect(fascia[0]!.slantSixteenths).toBeUndefined();
  });

  test('ends the eave fascia square on the barge rafter where the rake gets no fascia', () => {
    const { corner, fascia } = makeRake({ design: { fascia: { wanted: false } } });
    expect(fascia).toEqual([]);
    expect(corner).toMatchObject({ mitred: false, eaveShortOutIn: 12, eaveLongOutIn: 12 });
  });

  test('tells that a rake fascia of the same board is cut taller than the eave fascia: 8-1/8 against 7-1/4 at 6/12', () => {
    const rake = makeRake();
    expect(rake.corner.rakeTallerIn).toBeCloseTo(7.25 * Math.sqrt(1.25) - 7.25, 9);
    expect(rake.findings.map(({ text }) => text).join(' ')).toMatch(/end cut is 7\/8" taller/);
  });
});

describe('a rake fascia', () => {
  test("runs from the corner's long point to the ridge's centre line, plumb at both ends", () => {
    const rake = makeRake();
    const slope = 0.5;
    const top: Line = { at: [16, -3], along: [-1, slope] };
    const lower: Point = cut(top, plumbAt(16.75));
    const found = corners(top, 7.25, { at: lower, cut: 'plumb' }, -144);
    expect(rake.fascia).toHaveLength(1);
    expectCut(rake.fascia[0]!, overall(Object.values(found), top.along));
  });

  test('longer than any board is jointed with bevels over lookouts: each side of a joint is half a thickness longer', () => {
    const rake = makeRake({ longestIn: 119 });
    expect(rake.fascia).toHaveLength(2);
    const [lower, upper] = rake.fascia;
    const lowestIn = -0.75 * Math.sqrt(1.25) - 7.25 / 2;
    expectCut(lower!, upper!.fromIn - lowestIn + 0.375);
    expectCut(upper!, rake.alongIn - upper!.fromIn + 0.375);
  });
});

describe('a rake at the right end', () => {
  test('is the mirror image of one at the left end of the mirrored eave', () => {
    const left = makeRake();
    const right = makeRake({
      readings: readings.map((station) => 240 - station).toReversed(),
      survey: { end: 'right' },
      eaveDesign: { fascia: { stock: { section: '1x8' } }, preferredSide: 'left' },
    });
    const figures = (rake: typeof left) =>
      rake.lookouts.map(({ alongIn, lengthIn, backspanIn, overhangIn, crosses }) => ({
        alongIn,
        lengthIn,
        backspanIn,
        overhangIn,
        crossed: crosses.map(({ kind, outerInsideIn, innerInsideIn }) => ({
          kind,
          outerInsideIn,
          innerInsideIn,
        })),
      }));
    expect(figures(right)).toEqual(figures(left));
    expect(right.barge).toEqual(left.barge);
    expect(right.fascia).toEqual(left.fascia);
    expect(right.corner).toEqual(left.corner);
  });
});
