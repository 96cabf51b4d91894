import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elasticCentre, turnAboutPlate, type Point } from '../../core/checks/nails/nail-group.ts';
import { reactions, tipSag } from '../../core/checks/statics/overhang-beam.ts';
import { nailPlaces } from '../../core/checks/statics/reckon-tail.ts';
import { bend, solve } from '../checks/beam-by-stiffness.ts';

const heldDownAt = (ratio: number) => reactions(100, 8, ratio * 16).holdDownLb;

const apart = (places: readonly Point[]) =>
  places.map(([x, y]) => Math.hypot(x - (places[0]?.[0] ?? 0), y - (places[0]?.[1] ?? 0)));

describe('a beam with an overhang', () => {
  test.each([
    // Published beam table (even load on the overhang): [backspan over overhang, held down / wa, wall / wa].
    [1, 0.5, 1.5],
    [2, 0.25, 1.25],
    [3, 1 / 6, 7 / 6],
  ])(
    'with a backspan of %d overhangs holds down %d of the load and carries %d at the wall',
    (ratio, held, wall) => {
      const found = reactions(100, 8, ratio * 16);
      expect(found.holdDownLb / 100).toBeCloseTo(held, 10);
      expect(found.wallLb / 100).toBeCloseTo(wall, 10);
    },
  );

  test('has an uplift that goes as 2 over the ratio, as the code scales its balcony table', () => {
    // Source: IRC Table R502.3.3(2), note: uplift for 2 to 1, other ratios times 2 / ratio; as seen in transcription.
    for (const ratio of [1, 1.5, 3, 4]) expect(heldDownAt(ratio) / heldDownAt(2)).toBeCloseTo(2 / ratio, 10);
  });

  test('a worker of 300 lb at the tail pulls the back end up by 300, 200, 150 and 100 lb', () => {
    // Worked by hand: moments about the wall, at 1, 1.5, 2 and 3 to 1.
    expect([1, 1.5, 2, 3].map((ratio) => reactions(300, 18, ratio * 18).holdDownLb)).toEqual([
      300, 200, 150, 100,
    ]);
  });

  test('sags and reacts as an independent beam solution by direct stiffness says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 96, noNaN: true }),
        fc.double({ min: 2, max: 200, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 1e6, max: 1e9, noNaN: true }),
        (overhangIn, backspanIn, lbPerIn, stiffness) => {
          const nodesIn = [
            0,
            backspanIn / 2,
            backspanIn,
            backspanIn + overhangIn / 2,
            backspanIn + overhangIn,
          ];
          const even = { fromIn: backspanIn, toIn: backspanIn + overhangIn, lbPerIn };
          const bent = bend({ nodesIn, stiffness, supports: [0, 2], even });
          const found = reactions(lbPerIn * overhangIn, overhangIn / 2, backspanIn);
          const sag = tipSag({ overhangIn, backspanIn }, lbPerIn, stiffness);
          expect(sag / (bent.sagsIn[4] ?? Number.NaN)).toBeCloseTo(1, 6);
          expect(-found.holdDownLb / (bent.reactionsLb.get(0) ?? Number.NaN)).toBeCloseTo(1, 6);
          expect(found.wallLb / (bent.reactionsLb.get(2) ?? Number.NaN)).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test('rises between its supports by 0.03208 w a^2 b^2 / EI, which the oracle of these tests reproduces', () => {
    // Source: published beam table. The largest rise is at b / sqrt(3) from the back end.
    const [a, b] = [16, 32];
    const bent = bend({
      nodesIn: [0, b / Math.sqrt(3), b, b + a],
      stiffness: 1e6,
      supports: [0, 2],
      even: { fromIn: b, toIn: b + a, lbPerIn: 10 },
    });
    expect(-(bent.sagsIn[1] ?? 0)).toBeCloseTo((0.03208 * 10 * a ** 2 * b ** 2) / 1e6, 4);
  });
});

describe('a group of nails', () => {
  const corners: readonly Point[] = [
    [0, 0],
    [6, 0],
    [6, 8],
    [0, 8],
  ];

  test('takes a moment in proportion to the distance from its centroid', () => {
    // Worked by hand: corners of 6 x 8 in., r = 5, sum r^2 = 100; 1000 lb-in. -> 1000 x 5 / 100 = 50 lb each.
    const forces = elasticCentre(corners, { forceX: 0, forceY: 0, moment: 1000 });
    expect(forces.centroid).toEqual([3, 4]);
    expect(forces.polar).toBe(100);
    for (const lb of forces.eachLb) expect(lb).toBeCloseTo(50, 10);
  });

  test('adds force and moment as arrows', () => {
    // Worked by hand: 100 lb upward gives 25 each; with 1000 lb-in. counter-clockwise the right-hand nails take
    // 50 x 3/5 = 30 up and 50 x 4/5 = 40 sideways: hypot(40, 55) = 68.0; the left-hand ones hypot(40, -5) = 40.3.
    const forces = elasticCentre(corners, { forceX: 0, forceY: 100, moment: 1000 });
    expect(forces.worstLb).toBeCloseTo(Math.hypot(40, 55), 10);
    expect(Math.min(...forces.eachLb)).toBeCloseTo(Math.hypot(40, 5), 10);
  });

  test('that turns about the plate loads each nail by its distance from there', () => {
    // Worked by hand: 30, 22, 14 and 6 in. in, sum of squares 1616; 1616 lb-in. -> 30, 22, 14 and 6 lb, 72 in all at 22.44.
    const nails: readonly Point[] = [30, 22, 14, 6].map((x): Point => [-x, 0]);
    const group = turnAboutPlate(nails, 1616);
    for (const [index, lb] of [30, 22, 14, 6].entries()) expect(group.eachLb[index]).toBeCloseTo(lb, 8);
    expect(group.holdDownLb).toBeCloseTo(72, 8);
    expect(group.armIn).toBeCloseTo(1616 / 72, 8);
  });

  test('agrees with a stiff plate on equal springs, held up at the wall, solved as two equations', () => {
    const nail = fc.tuple(
      fc.double({ min: -90, max: -1, noNaN: true }),
      fc.double({ min: -40, max: 40, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(nail, { minLength: 2, maxLength: 12 }), (places) => {
        const nails: readonly Point[] = places;
        const moment = 1000;
        // Unknown: slide u along the level and turn t about the plate's edge at (0, 0); a nail moves (u - t y, t x).
        const sum = (of: (x: number, y: number) => number) =>
          nails.reduce((all, [x, y]) => all + of(x, y), 0);
        const [u = 0, t = 0] = solve(
          [
            [nails.length, -sum((_, y) => y)],
            [-sum((_, y) => y), sum((x, y) => x * x + y * y)],
          ],
          [0, moment],
        );
        const group = turnAboutPlate(nails, moment);
        for (const [index, [x, y]] of nails.entries())
          expect(group.eachLb[index] ?? Number.NaN).toBeCloseTo(Math.hypot(u - t * y, t * x), 5);
      }),
    );
  });

  const lap = { jointDepthIn: 5.5, backLossIn: 0, longestLapIn: null };

  test('stands in the overlap, on its rows, behind the wall', () => {
    // Worked by hand: 48 in. flat, two rows at 16 in., 2 in. from the ends, 1 in. from the edges of 5-1/2 in.
    const places = nailPlaces(
      { ...lap, slope: 0, backspanIn: 48 },
      { rows: 2, spacingIn: 16, endDistanceIn: 2 },
      1,
    );
    expect(places.map(([x]) => x)).toEqual([-46, -30, -14, -38, -22, -6]);
    expect(places.map(([, y]) => y)).toEqual([-1, -1, -1, -4.5, -4.5, -4.5]);
  });

  test('begins further out behind a plumb back end, and goes no further than a filler', () => {
    // Worked by hand: of 48 in. a plumb back end takes 3 off both edges' lap; the filler is 20 in. long: 2, 10 and 18 in.
    // from its back end at -45.
    const places = nailPlaces(
      { ...lap, slope: 0, backspanIn: 48, backLossIn: 3, longestLapIn: 20 },
      { rows: 2, spacingIn: 16, endDistanceIn: 2 },
      1,
    );
    expect(places.map(([x]) => x)).toEqual([-43, -27, -43, -27]);
  });

  test('on a slope keeps its distances', () => {
    const flat = nailPlaces(
      { ...lap, slope: 0, backspanIn: 40 },
      { rows: 2, spacingIn: 8, endDistanceIn: 2 },
      1,
    );
    const steep = nailPlaces(
      { ...lap, slope: 1, backspanIn: 40 },
      { rows: 2, spacingIn: 8, endDistanceIn: 2 },
      1,
    );
    for (const [index, far] of apart(flat).entries()) expect(apart(steep)[index]).toBeCloseTo(far, 9);
  });
});
