import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveSection } from '../../core/eave/solve-section.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

/** Rafters of an old house: each its own pitch, height above plate, and what is clear behind it. */
const oldRafters = fc.array(
  fc.record({
    between: fc.integer({ min: 14, max: 26 }),
    pitchRisePer12: fc.double({ min: 5.5, max: 7, noNaN: true }),
    heightAbovePlateIn: fc.double({ min: 4, max: 6, noNaN: true }),
    clearBackspanIn: fc.option(fc.double({ min: 15, max: 60, noNaN: true })),
  }),
  { minLength: 2, maxLength: 12 },
);

function oldEave(rafters: typeof oldRafters extends fc.Arbitrary<infer T> ? T : never) {
  return makeEave([], {
    lengthIn: 400,
    readingMode: 'bays-centres',
    rafters: rafters.map(({ between, ...rest }, index) => ({ id: `r${index}`, readingIn: between, ...rest })),
  });
}

/** Largest distance of the tails' top corners from the straight line through the first and the last. */
function crookedness({ extenders }: EaveLayout): number {
  const tails = extenders.map(({ centreIn, section }) => ({
    at: centreIn,
    top: section.tailTopAbovePlateIn,
  }));
  const [first, last] = [tails[0], tails.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no tails');
  const rise = (last.top - first.top) / (last.at - first.at);
  return Math.max(...tails.map(({ at, top }) => Math.abs(top - first.top - rise * (at - first.at))));
}

describe('as found', () => {
  it("each tail has the figures of its own rafter's pitch and height above plate, and none is lifted", () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const layout = layOut(oldEave(rafters), makeDesign({ fasciaLine: 'as-found' }));
        expect(layout.extenders).toHaveLength(rafters.length);
        for (const { rafterNumber, section, liftAtTailIn, pitchRisePer12 } of layout.extenders) {
          const rafter = layout.rafters[rafterNumber - 1] ?? {
            pitchRisePer12: Number.NaN,
            heightAbovePlateIn: 0,
            clearBackspanIn: null,
          };
          const alone = solveSection({
            pitchRisePer12: rafter.pitchRisePer12,
            heightAbovePlateIn: rafter.heightAbovePlateIn,
            plateWidthIn: 3.5,
            overhangLevelIn: 16,
            depthIn: 5.5,
            tailCut: 'plumb',
            keptFaceIn: null,
            backEnd: 'parallel',
            backspanRatio: 2,
            spanLevelIn: null,
            clearBackspanIn: rafter.clearBackspanIn,
            trimAllowanceIn: 1,
            fasciaDepthIn: 7.25,
            fasciaDropIn: 0,
            soffit: 'level',
            soffitThicknessIn: 0.375,
            windowHeadBelowPlateIn: null,
            kickedFrom: null,
          });
          expect(liftAtTailIn).toBe(0);
          expect(pitchRisePer12).toBeCloseTo(rafter.pitchRisePer12, 9);
          expect(section.blankLengthIn).toBeCloseTo(alone.blankLengthIn, 8);
          expect(section.throatIn).toBeCloseTo(alone.throatIn, 8);
          expect(section.bearing.kind).toBe(alone.bearing.kind);
          expect(section.tailBottomAbovePlateIn).toBeCloseTo(alone.tailBottomAbovePlateIn, 8);
        }
      }),
    );
  });

  it('identical pieces make a crooked eave: one degree more of pitch drops a 16 in. tail by 3/8 in.', () => {
    // Computed here: 16 (tan 27.565 - tan 26.565) = 0.352 in.
    const pitchRisePer12 = 12 * Math.tan((27.565 * Math.PI) / 180);
    const rafters = [{ readingIn: 20 }, { readingIn: 44, pitchRisePer12 }, { readingIn: 68 }];
    const eave = makeEave([], { rafters: rafters.map((rafter, index) => ({ id: `r${index}`, ...rafter })) });
    expect(crookedness(layOut(eave, makeDesign({ fasciaLine: 'as-found' })))).toBeCloseTo(0.352, 3);
  });
});

describe.each(['parallel', 'best-fit'] as const)('a %s fascia line', (fasciaLine) => {
  it('has every tail on one straight line', () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const layout = layOut(oldEave(rafters), makeDesign({ fasciaLine }));
        expect(crookedness(layout)).toBeLessThan(1e-9);
        const { atStartIn, risePerInch } = layout.fasciaLine;
        for (const { centreIn, section } of layout.extenders) {
          expect(section.tailTopAbovePlateIn).toBeCloseTo(atStartIn + risePerInch * centreIn, 9);
        }
      }),
    );
  });

  it("leaves the back end of every piece flush with its rafter's top edge, and within the clear backspan", () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const layout = layOut(oldEave(rafters), makeDesign({ fasciaLine }));
        for (const { rafterNumber, section } of layout.extenders) {
          const rafter = layout.rafters[rafterNumber - 1] ?? {
            pitchRisePer12: Number.NaN,
            heightAbovePlateIn: 0,
            clearBackspanIn: null,
          };
          const [x = Number.NaN, y = Number.NaN] = section.outline[0] ?? [];
          expect(y).toBeCloseTo(rafter.heightAbovePlateIn - (rafter.pitchRisePer12 / 12) * x, 8);
          expect(section.backspanIn).toBeLessThanOrEqual((rafter.clearBackspanIn ?? 1000) + 1e-9);
        }
      }),
    );
  });

  it('lifts as much as it lowers: the lifts add up to nothing', () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const { extenders } = layOut(oldEave(rafters), makeDesign({ fasciaLine }));
        expect(extenders.reduce((sum, { liftAtTailIn }) => sum + liftAtTailIn, 0)).toBeCloseTo(0, 8);
      }),
    );
  });

  it('tells the largest lift and lowering as its scatter', () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const { extenders, fasciaLine: line } = layOut(oldEave(rafters), makeDesign({ fasciaLine }));
        const lifts = extenders.map(({ liftAtTailIn }) => liftAtTailIn);
        expect(line.highestIn).toBeCloseTo(-Math.min(...lifts), 8);
        expect(line.lowestIn).toBeCloseTo(-Math.max(...lifts), 8);
      }),
    );
  });
});

describe('the two straight lines', () => {
  it('parallel is level at the mean, best fit comes at least as close to the tails', () => {
    fc.assert(
      fc.property(oldRafters, (rafters) => {
        const squares = (fasciaLine: 'parallel' | 'best-fit') => {
          const layout = layOut(oldEave(rafters), makeDesign({ fasciaLine }));
          return layout.extenders.reduce((sum, { liftAtTailIn }) => sum + liftAtTailIn ** 2, 0);
        };
        expect(squares('best-fit')).toBeLessThanOrEqual(squares('parallel') + 1e-9);
        expect(layOut(oldEave(rafters)).fasciaLine.risePerInch).toBe(0);
      }),
    );
  });

  it('best fit finds the fall of a plate that falls evenly: 1/2 in. in 10 ft', () => {
    const rafters = [12, 36, 60, 84, 108, 132].map((readingIn, index) => ({
      id: `r${index}`,
      readingIn,
      heightAbovePlateIn: 5 - (0.5 / 120) * readingIn,
    }));
    const layout = layOut(makeEave([], { rafters }), makeDesign({ fasciaLine: 'best-fit' }));
    expect(layout.fasciaLine.risePerInch).toBeCloseTo(-0.5 / 120, 10);
    expect(layout.fasciaLine.highestIn).toBeCloseTo(0, 9);
  });

  it('the worked number: a tail lifted 0.48 in. turns a 6/12 edge to 5.88/12 about its back end', () => {
    // Back end at (-32, 21), tail at (16, -2.52): slope (21 + 2.52) / 48 = 0.49; HAP -2.52 + 16 x 0.49 = 5.32.
    const rafters = [
      { id: 'r1', readingIn: 40, heightAbovePlateIn: 5 },
      { id: 'r2', readingIn: 80, heightAbovePlateIn: 5.96 },
    ];
    const [first] = layOut(makeEave([], { rafters })).extenders;
    expect(first?.liftAtTailIn).toBeCloseTo(0.48, 9);
    expect(first?.pitchRisePer12).toBeCloseTo(5.88, 9);
    expect(first?.section.deepestInsertIn).toBeCloseTo(5.32 / Math.hypot(1, 0.49), 9);
  });
});
