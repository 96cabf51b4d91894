import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RafterSection, SectionInput } from '../../core/eave/section-types.ts';
import { solveSection } from '../../core/eave/solve-section.ts';
import {
  areaOf,
  between,
  insideBelowPlate,
  meet,
  squareDistance,
  turned,
  type Line,
  type Point,
} from './coordinates.ts';
import { plainInput } from './section-input.ts';

const plateTop: Line = { through: { x: 0, y: 0 }, along: { x: 1, y: 0 } };
const wallFace: Line = { through: { x: 0, y: 0 }, along: { x: 0, y: 1 } };

/** The section of an input, drawn with lines: slope by angle, bottom edge by offsetting the top edge squarely. */
function construct(input: SectionInput) {
  const angle = Math.atan2(input.pitchRisePer12, 12);
  const along = { x: Math.cos(angle), y: -Math.sin(angle) };
  const square = { x: -Math.sin(angle), y: -Math.cos(angle) };
  const top: Line = { through: { x: 0, y: input.heightAbovePlateIn }, along };
  const bottomPoint = {
    x: square.x * input.depthIn,
    y: input.heightAbovePlateIn + square.y * input.depthIn,
  };
  const bottom: Line = { through: bottomPoint, along };
  const plumbAtTail: Line = { through: { x: input.overhangLevelIn, y: 0 }, along: { x: 0, y: 1 } };
  const tailTop = meet(top, plumbAtTail);
  const tailCut = input.tailCut === 'plumb' ? plumbAtTail : { through: tailTop, along: turned(along) };
  const heel = meet(bottom, wallFace);
  const uncutBottom = meet(bottom, tailCut);
  const { tailBottom, levelEnd } = levelCut(input.keptFaceIn, {
    tailTop,
    tailCut,
    uncutBottom,
    bottom,
    heel,
  });
  return { along, top, bottom, tailTop, uncutBottom, tailBottom, levelEnd, heel };
}

/** Where a level saw kerf under the tail begins and ends: both at the uncut corner where the whole face is kept. */
function levelCut(
  keptIn: number | null,
  {
    tailTop,
    tailCut,
    uncutBottom,
    bottom,
    heel,
  }: Readonly<Record<'tailTop' | 'uncutBottom' | 'heel', Point>> &
    Readonly<Record<'tailCut' | 'bottom', Line>>,
) {
  const wholeIn = between(tailTop, uncutBottom);
  if (keptIn === null || keptIn >= wholeIn) return { tailBottom: uncutBottom, levelEnd: uncutBottom };
  const share = keptIn / wholeIn;
  const kept = {
    x: tailTop.x + share * (uncutBottom.x - tailTop.x),
    y: tailTop.y + share * (uncutBottom.y - tailTop.y),
  };
  const levelEnd = meet(levelThrough(kept), bottom);
  return levelEnd.x >= 0
    ? { tailBottom: kept, levelEnd }
    : { tailBottom: meet(levelThrough(heel), tailCut), levelEnd: heel };
}

function levelThrough(through: Point): Line {
  return { through, along: { x: 1, y: 0 } };
}

/** The back end's cut through its top corner. */
function backCutOf(input: SectionInput, backTop: Point): Line {
  const { along } = construct(input);
  return { through: backTop, along: input.backEnd === 'parallel' ? { x: 0, y: 1 } : turned(along) };
}

function cornersOf({ outline }: RafterSection): readonly Point[] {
  return outline.map(([x, y]) => ({ x, y }));
}

const anyInput: fc.Arbitrary<SectionInput & { readonly windowHeadBelowPlateIn: number }> = fc.record({
  pitchRisePer12: fc.double({ min: 1, max: 24, noNaN: true }),
  heightAbovePlateIn: fc.double({ min: 1, max: 14, noNaN: true }),
  plateWidthIn: fc.constantFrom(3.5, 4, 5.5),
  // Longer than a square tail's setback on the steepest roof, so that every tail ends outside the wall.
  overhangLevelIn: fc.double({ min: 11, max: 60, noNaN: true }),
  depthIn: fc.constantFrom(3.5, 5.5, 5.625, 7.25, 9.25),
  tailCut: fc.constantFrom('plumb' as const, 'square' as const),
  keptFaceIn: fc.option(fc.double({ min: 1.5, max: 12, noNaN: true })),
  backEnd: fc.constantFrom('parallel' as const, 'square' as const),
  backspanRatio: fc.double({ min: 1, max: 4, noNaN: true }),
  spanLevelIn: fc.option(fc.double({ min: 40, max: 240, noNaN: true }), { freq: 8 }),
  clearBackspanIn: fc.option(fc.double({ min: 12, max: 300, noNaN: true })),
  trimAllowanceIn: fc.constantFrom(0, 1, 2),
  fasciaDepthIn: fc.constantFrom(5.5, 7.25, 9.25),
  fasciaDropIn: fc.constantFrom(0, 0.5),
  soffit: fc.constantFrom('level' as const, 'sloped' as const, 'open' as const),
  soffitThicknessIn: fc.constantFrom(0, 0.375, 0.75),
  windowHeadBelowPlateIn: fc.double({ min: 0, max: 40, noNaN: true }),
  kickedFrom: fc.constant(null),
});

describe('the section agrees with an independent construction by coordinates', () => {
  it('in overhang along the slope, tail corners and the tail face', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const section = solveSection(input);
        const { top, tailTop, tailBottom } = construct(input);
        expect(section.overhangAlongIn).toBeCloseTo(between(top.through, tailTop), 8);
        expect(section.tailTopAbovePlateIn).toBeCloseTo(tailTop.y, 8);
        expect(section.tailBottomAbovePlateIn).toBeCloseTo(tailBottom.y, 8);
        expect(section.tailFaceIn).toBeCloseTo(between(tailTop, tailBottom), 8);
        expect(section.tailDropIn).toBeCloseTo(input.heightAbovePlateIn - tailTop.y, 8);
        expect(section.squareTailSetbackIn).toBeCloseTo(tailTop.x - tailBottom.x, 8);
        const angle = Math.atan2(-construct(input).along.y, construct(input).along.x);
        expect(section.slopeAngleDeg).toBeCloseTo((angle * 180) / Math.PI, 8);
      }),
    );
  });

  it('in the seat, heel and notch where the piece is deeper than the height above plate', () => {
    const notched = anyInput.filter((input) => construct(input).heel.y < -0.01);
    fc.assert(
      fc.property(notched, (input) => {
        const { bearing, throatIn, backspanIn } = solveSection(input);
        const { top, bottom, heel, along } = construct(input);
        const backTop = { x: -backspanIn * along.x, y: input.heightAbovePlateIn - backspanIn * along.y };
        const backCut = backCutOf(input, backTop);
        // The level cut ends at the bottom edge, or at the back end where it gets so far.
        const seatEnd = { x: Math.max(meet(bottom, plateTop).x, meet(backCut, plateTop).x) };
        const corner = { x: 0, y: 0 };
        expect(bearing).toMatchObject({
          kind: 'notched',
          heelCutIn: expect.closeTo(-heel.y, 8),
          seatIn: expect.closeTo(-seatEnd.x, 6),
          bearingLengthIn: expect.closeTo(Math.min(-seatEnd.x, input.plateWidthIn), 6),
          notchDepthIn: expect.closeTo(squareDistance(corner, bottom), 8),
        });
        expect(throatIn).toBeCloseTo(squareDistance(corner, top), 8);
      }),
    );
  });

  it('in the shim where the piece clears the plate', () => {
    const clear = anyInput.filter((input) => construct(input).heel.y > 0.01);
    fc.assert(
      fc.property(clear, (input) => {
        const { bearing, throatIn } = solveSection(input);
        expect(bearing).toEqual({ kind: 'shimmed', shimIn: expect.closeTo(construct(input).heel.y, 8) });
        expect(throatIn).toBe(input.depthIn);
      }),
    );
  });

  it('in length: the blank is as long as the outline before a level cut, along the slope, and the trimming allowance', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const section = solveSection(input);
        const { along, uncutBottom } = construct(input);
        const reaches = [...cornersOf(section), uncutBottom].map(({ x, y }) => x * along.x + y * along.y);
        expect(section.finishedLengthIn).toBeCloseTo(Math.max(...reaches) - Math.min(...reaches), 6);
        expect(section.blankLengthIn).toBeCloseTo(section.finishedLengthIn + input.trimAllowanceIn, 9);
      }),
    );
  });

  it('in length too where a piece rises outward: the blank reaches the tail corner that lies furthest out', () => {
    const rising = fc.record({
      pitchRisePer12: fc.double({ min: -6, max: -0.01, noNaN: true }),
      heightAbovePlateIn: fc.double({ min: 40, max: 80, noNaN: true }),
      overhangLevelIn: fc.double({ min: 11, max: 30, noNaN: true }),
      depthIn: fc.constantFrom(3.5, 5.5, 9.25),
    });
    fc.assert(
      fc.property(rising, (change) => {
        const input: SectionInput = { ...plainInput, ...change };
        const section = solveSection(input);
        const { along, tailTop, tailBottom } = construct(input);
        const reach = ({ x, y }: Point): number => x * along.x + y * along.y;
        const back = Math.min(...cornersOf(section).map(reach));
        expect(section.finishedLengthIn).toBeCloseTo(Math.max(reach(tailTop), reach(tailBottom)) - back, 6);
        expect(section.finishedLengthIn).toBeGreaterThanOrEqual(
          section.backspanIn + section.overhangAlongIn - 1e-9,
        );
      }),
    );
  });

  it('in area: board less notch, and the corners run clockwise from the back end along the top edge', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const section = solveSection(input);
        const { top, bottom, tailTop, tailBottom, levelEnd } = construct(input);
        const corners = cornersOf(section);
        const [backTop = tailTop] = corners;
        expect(squareDistance(backTop, top)).toBeCloseTo(0, 8);
        expect(between(backTop, top.through)).toBeCloseTo(section.backspanIn, 8);
        expect(corners[1]).toEqual({ x: expect.closeTo(tailTop.x, 8), y: expect.closeTo(tailTop.y, 8) });
        expect(corners[2]).toEqual({
          x: expect.closeTo(tailBottom.x, 8),
          y: expect.closeTo(tailBottom.y, 8),
        });
        const backBottom = meet(bottom, backCutOf(input, backTop));
        const board = [backTop, backBottom, levelEnd, tailBottom, tailTop];
        const notch = section.bearing.kind === 'notched' ? areaOf(insideBelowPlate(board)) : 0;
        expect(-areaOf(corners)).toBeCloseTo(areaOf(board) - notch, 5);
        expect(areaOf(corners)).toBeLessThan(0);
      }),
    );
  });

  it('in the soffit: width from the wall to the lowest corner, level or along the slope, and how low it hangs', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { bottom, tailBottom, levelEnd, heel } = construct(input);
        const section = solveSection(input);
        const level = solveSection({ ...input, soffit: 'level' });
        const sloped = solveSection({ ...input, soffit: 'sloped' });
        expect(level.soffitWidthIn).toBeCloseTo(tailBottom.x, 8);
        expect(level.soffitBelowPlateIn).toBeCloseTo(input.soffitThicknessIn - tailBottom.y, 8);
        expect(sloped.soffitWidthIn).toBeCloseTo(between(heel, levelEnd) + between(levelEnd, tailBottom), 8);
        expect(section.levelCutIn).toBeCloseTo(between(levelEnd, tailBottom), 8);
        expect(sloped.soffitBelowPlateIn).toBeNull();
        const { along } = bottom;
        const underside: Line = {
          through: {
            x: heel.x + along.y * input.soffitThicknessIn,
            y: heel.y - along.x * input.soffitThicknessIn,
          },
          along,
        };
        const lowestAtWall = {
          level: tailBottom.y - input.soffitThicknessIn,
          sloped: meet(underside, wallFace).y,
          open: heel.y,
        }[input.soffit];
        const room = section.windowHeadClearanceIn ?? Number.NaN;
        expect(room).toBeCloseTo(input.windowHeadBelowPlateIn + lowestAtWall, 8);
      }),
    );
  });

  it('in what slides in: the room between the plate and the underside of the old deck, square to the slope', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { top } = construct(input);
        expect(solveSection(input).deepestInsertIn).toBeCloseTo(squareDistance({ x: 0, y: 0 }, top), 8);
      }),
    );
  });
});

describe('the section of a 2x6 at 6/12, 5 in. above the plate, 16 in. out', () => {
  // Worked by hand from trade.md 1: s = sqrt(1.25) = 1.118034, cos t = 0.894427.
  const section = solveSection(plainInput);

  it('has the figures worked by hand', () => {
    expect(section).toMatchObject({
      overhangAlongIn: expect.closeTo(17.8885, 4),
      plumbDepthIn: expect.closeTo(6.1492, 4),
      bearing: {
        kind: 'notched',
        heelCutIn: expect.closeTo(1.1492, 4),
        seatIn: expect.closeTo(2.2984, 4),
        bearingLengthIn: expect.closeTo(2.2984, 4),
        notchDepthIn: expect.closeTo(1.0279, 4),
      },
      throatIn: expect.closeTo(4.4721, 4),
      backspanIn: expect.closeTo(35.7771, 4),
      backspanRatio: 2,
      finishedLengthIn: expect.closeTo(56.4156, 4),
      blankLengthIn: expect.closeTo(57.4156, 4),
      tailDropIn: 8,
      tailTopAbovePlateIn: -3,
      tailBottomAbovePlateIn: expect.closeTo(-9.1492, 4),
      fasciaNeededIn: expect.closeTo(6.6492, 4),
      fasciaSpareIn: expect.closeTo(0.6008, 4),
      soffitWidthIn: 16,
      soffitBelowPlateIn: expect.closeTo(9.5242, 4),
      windowHeadClearanceIn: expect.closeTo(2.4758, 4),
    });
  });

  it('leaves the throat and the notch together as deep as the board', () => {
    const notch = section.bearing.kind === 'notched' ? section.bearing.notchDepthIn : Number.NaN;
    expect(notch + section.throatIn).toBeCloseTo(5.5, 12);
  });
});

describe('at the limits', () => {
  it('a seat longer than the plate bears on the plate alone', () => {
    const { bearing } = solveSection({ ...plainInput, pitchRisePer12: 3, heightAbovePlateIn: 3 });
    // d s - HAP = 5.5 x 1.030776 - 3 = 2.6693; over 0.25 = 10.677
    expect(bearing).toMatchObject({ seatIn: expect.closeTo(10.677, 3), bearingLengthIn: 3.5 });
  });

  it('a bottom edge that meets the plate corner exactly is neither notched nor shimmed', () => {
    const heightAbovePlateIn = 5.5 * Math.hypot(1, 0.5);
    expect(solveSection({ ...plainInput, heightAbovePlateIn }).bearing).toEqual({ kind: 'on-corner' });
  });

  it('a pitch near 0, or 0, gives finite figures everywhere', () => {
    for (const pitchRisePer12 of [0, 1e-12, 1e-6, 0.01]) {
      for (const heightAbovePlateIn of [0, 5, 5.5, 8]) {
        for (const tailCut of ['plumb', 'square'] as const) {
          const section = solveSection({ ...plainInput, pitchRisePer12, heightAbovePlateIn, tailCut });
          // A figure that is no number is written as null; the kick-up is one truly.
          expect(JSON.stringify({ ...section, kickUp: 0 })).not.toMatch(/null/);
          expect(section.blankLengthIn).toBeCloseTo(49, 0);
        }
      }
    }
  });

  it('a piece level with the plate is cut along as far as it reaches back', () => {
    const { bearing } = solveSection({ ...plainInput, pitchRisePer12: 0 });
    expect(bearing).toMatchObject({ heelCutIn: 0.5, seatIn: 32, bearingLengthIn: 3.5 });
  });

  it('a clear backspan shorter than wanted shortens the piece, and a longer one does not lengthen it', () => {
    const short = solveSection({ ...plainInput, clearBackspanIn: 20 });
    expect(short.backspanIn).toBe(20);
    expect(short.backspanWantedIn).toBeCloseTo(35.7771, 4);
    expect(short.backspanRatio).toBeCloseTo(20 / 17.8885, 4);
    expect(short.finishedLengthIn).toBeCloseTo(20 + 17.8885 + 2.75, 4);
    expect(solveSection({ ...plainInput, clearBackspanIn: 80 }).backspanIn).toBeCloseTo(35.7771, 4);
  });

  it('a window head that was not measured gives no clearance instead of a made-up one', () => {
    expect(solveSection({ ...plainInput, windowHeadBelowPlateIn: null }).windowHeadClearanceIn).toBeNull();
  });

  it('a sloped soffit leaves more room over a window than a level one', () => {
    const level = solveSection(plainInput).windowHeadClearanceIn ?? Number.NaN;
    const sloped = solveSection({ ...plainInput, soffit: 'sloped' }).windowHeadClearanceIn ?? Number.NaN;
    expect(sloped - level).toBeGreaterThan(7);
  });
});
