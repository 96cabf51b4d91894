import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KickedFrom, SectionInput } from '../../core/eave/section-types.ts';
import { solveSection } from '../../core/eave/solve-section.ts';
import { areaOf, between, meet, type Line, type Point } from './coordinates.ts';
import { plainInput } from './section-input.ts';

const roof: KickedFrom = {
  pitchRisePer12: 8,
  heightAbovePlateIn: 6,
  rafterDepthIn: 5.5,
  leastLapIn: 2,
};

/** A roof of 8/12 whose 2x6 tail, 18 in. out, goes on at 4/12. */
const kicked: SectionInput = {
  ...plainInput,
  pitchRisePer12: 4,
  heightAbovePlateIn: 6,
  overhangLevelIn: 18,
  kickedFrom: roof,
};

const anyKick = fc
  .record({
    roofRise: fc.double({ min: 5, max: 16, noNaN: true }),
    flatter: fc.double({ min: 1, max: 4.5, noNaN: true }),
    height: fc.double({ min: 4, max: 8, noNaN: true }),
    raise: fc.double({ min: 0, max: 6, noNaN: true }),
    overhang: fc.double({ min: 8, max: 24, noNaN: true }),
    rafterDepthIn: fc.constantFrom(3.625, 5.5, 5.75, 7.25),
    depthIn: fc.constantFrom(3.5, 5.5, 7.25),
  })
  .map(
    ({ roofRise, flatter, height, raise, overhang, rafterDepthIn, depthIn }): SectionInput => ({
      ...plainInput,
      pitchRisePer12: roofRise - flatter,
      heightAbovePlateIn: height + raise,
      overhangLevelIn: overhang,
      depthIn,
      kickedFrom: { pitchRisePer12: roofRise, heightAbovePlateIn: height, rafterDepthIn, leastLapIn: 2 },
    }),
  );

/** A board's top edge and lower edge, by its angle. */
function edges(
  risePer12: number,
  heightIn: number,
  depthIn: number,
): { readonly top: Line; readonly bottom: Line } {
  const angle = Math.atan2(risePer12, 12);
  const along = { x: Math.cos(angle), y: -Math.sin(angle) };
  const below = { x: -depthIn * Math.sin(angle), y: heightIn - depthIn * Math.cos(angle) };
  return { top: { through: { x: 0, y: heightIn }, along }, bottom: { through: below, along } };
}

/** Height of a line at x. */
function heightAt(line: Line, x: number): number {
  return meet(line, { through: { x, y: 0 }, along: { x: 0, y: 1 } }).y;
}

describe('a kicked-up tail', () => {
  it('leaves the roof where their top edges cross', () => {
    fc.assert(
      fc.property(anyKick, (input) => {
        const from = input.kickedFrom ?? roof;
        const { kickUp, outline, slopeFactor } = solveSection(input);
        const tail = edges(input.pitchRisePer12, input.heightAbovePlateIn, input.depthIn);
        const rafter = edges(from.pitchRisePer12, from.heightAbovePlateIn, from.rafterDepthIn ?? 0);
        const crossing = meet(tail.top, rafter.top);
        expect(kickUp?.breakOutIn).toBeCloseTo(crossing.x, 6);
        expect(kickUp?.breakAbovePlateIn).toBeCloseTo(crossing.y, 6);
        const [, tailTop = [0, 0]] = outline;
        const toTail = between(crossing, { x: tailTop[0], y: tailTop[1] });
        expect(kickUp?.breakToTailIn).toBeCloseTo(toTail, 6);
        expect(slopeFactor).toBeCloseTo(Math.hypot(1, input.pitchRisePer12 / 12), 12);
      }),
    );
  });

  it('is nailed where the two boards overlap by the least lap, found by walking up the slope', () => {
    fc.assert(
      fc.property(anyKick, (input) => {
        const from = input.kickedFrom ?? roof;
        // So steep a ratio that nothing but the lap ends the piece.
        const { kickUp } = solveSection({ ...input, backspanRatio: 60 });
        const tail = edges(input.pitchRisePer12, input.heightAbovePlateIn, input.depthIn);
        const rafter = edges(from.pitchRisePer12, from.heightAbovePlateIn, from.rafterDepthIn ?? 0);
        const rafterCos = Math.cos(Math.atan2(from.pitchRisePer12, 12));
        const tailCos = Math.cos(Math.atan2(input.pitchRisePer12, 12));
        const overlap = (x: number): number =>
          (Math.min(heightAt(tail.top, x), heightAt(rafter.top, x)) -
            Math.max(heightAt(tail.bottom, x), heightAt(rafter.bottom, x))) *
          rafterCos;
        const lapped: number[] = [];
        for (let inIn = 0; inIn <= 300; inIn += 0.25) if (overlap(-inIn) >= 2) lapped.push(inIn);
        // Where there is no lap the walk finds none, or one place that just touches.
        const lap = kickUp?.lap ?? { fromIn: (lapped[0] ?? 0) / tailCos, toIn: (lapped[0] ?? 0) / tailCos };
        const ends = [(lapped[0] ?? 0) - lap.fromIn * tailCos, lap.toIn * tailCos - (lapped.at(-1) ?? 0)];
        expect(Math.max(...ends)).toBeLessThan(0.251);
        expect(Math.min(...ends)).toBeGreaterThan(-1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it('has the figures worked by hand', () => {
    // Break at the wall line; slopes 2/3 and 1/3, factors 1.20185 and 1.05409. The tail drops 6, not 12.
    const flat = solveSection(kicked);
    expect(flat.kickUp).toMatchObject({
      raiseAtWallIn: 0,
      breakOutIn: expect.closeTo(0, 12),
      breakAbovePlateIn: 6,
    });
    expect(flat.tailDropIn).toBeCloseTo(6, 12);
    // 5.5 x 1.05409 = 5.7975: it clears the plate by 6 - 5.7975 and wants a packer of that.
    expect(flat.bearing).toEqual({ kind: 'shimmed', shimIn: expect.closeTo(0.2025, 4) });
    // Lap to where 5.5 x 1.20185 - u/3 = 2 x 1.20185: u = 12.6194, 13.302 along the tail; 2:1 wants 37.947.
    expect(flat.kickUp?.lap).toEqual({ fromIn: 0, toIn: expect.closeTo(13.302, 3) });
    expect(flat.backspanIn).toBeCloseTo(13.302, 3);
    expect(flat.backspanWantedIn).toBeCloseTo(37.947, 3);
  });

  it('raised 4 in. on its packer laps longer, and breaks the roof 12 in. inside the wall', () => {
    const raised = solveSection({ ...kicked, heightAbovePlateIn: 10 });
    // 4 / (2/3 - 1/3) = 12; there the roof stands 6 + 8 = 14 above the plate. Packer 10 - 5.7975.
    expect(raised.kickUp).toMatchObject({
      raiseAtWallIn: 4,
      breakOutIn: expect.closeTo(-12, 12),
      breakAbovePlateIn: expect.closeTo(14, 12),
      breakToTailIn: expect.closeTo(30 * Math.hypot(1, 1 / 3), 9),
    });
    expect(raised.bearing).toEqual({ kind: 'shimmed', shimIn: expect.closeTo(4.2025, 4) });
    // u = (3.5 x 1.20185 + 4) x 3 = 24.6194, and from (4 - (5.7975 - 2.4037)) x 3 = 1.8186.
    expect(raised.kickUp?.lap?.toIn).toBeCloseTo(24.6194 * 1.05409, 3);
    expect(raised.kickUp?.lap?.fromIn).toBeCloseTo(1.8186 * 1.05409, 3);
  });

  it('ends its lap at its back end where something stands in its way before it leaves the rafter', () => {
    const short = solveSection({ ...kicked, heightAbovePlateIn: 10, clearBackspanIn: 20 });
    expect(short.backspanIn).toBe(20);
    expect(short.kickUp?.lap?.toIn).toBe(20);
    expect(short.kickUp?.leavesRafterIn).toBeCloseTo(24.6194 * 1.05409, 3);
    const shorter = solveSection({ ...kicked, heightAbovePlateIn: 10, clearBackspanIn: 1.5 });
    expect(shorter.kickUp?.lap).toBeNull();
  });

  it('hung between two rafters has no lap, and reaches back as it likes', () => {
    const hung = solveSection({ ...kicked, kickedFrom: { ...roof, rafterDepthIn: null } });
    expect(hung.kickUp?.lap).toBeNull();
    expect(hung.backspanIn).toBeCloseTo(37.947, 3);
  });
});

describe("a tail's underside cut level", () => {
  it('has the figures worked by hand: 4 in. kept of a 6.149 in. face', () => {
    const section = solveSection({ ...plainInput, keptFaceIn: 4 });
    expect(section).toMatchObject({
      tailFaceIn: 4,
      tailBottomAbovePlateIn: -7,
      levelCutIn: expect.closeTo(4.2984, 4),
      fasciaNeededIn: 4.5,
      soffitBelowPlateIn: 7.375,
    });
    const corners = section.outline.map(([x, y]): Point => ({ x, y }));
    expect(corners[2]).toEqual({ x: 16, y: -7 });
    expect(corners[3]).toEqual({ x: expect.closeTo(11.7016, 4), y: -7 });
    // It takes a triangle off: 4.2984 x 2.1492 / 2.
    const whole = solveSection(plainInput).outline.map(([x, y]): Point => ({ x, y }));
    expect(areaOf(corners) - areaOf(whole)).toBeCloseTo(4.6191, 3);
  });

  it('keeps the blank as it was, since it is sawn after the tail', () => {
    expect(solveSection({ ...plainInput, keptFaceIn: 4 }).blankLengthIn).toBe(
      solveSection(plainInput).blankLengthIn,
    );
  });

  it('goes no further in than the wall line, and does nothing where the face is no deeper', () => {
    const steep = { ...plainInput, pitchRisePer12: 12, overhangLevelIn: 4, keptFaceIn: 1.5 };
    // d s - m P = 7.778 - 4: less cannot be kept without cutting into the seat.
    expect(solveSection(steep)).toMatchObject({
      tailFaceIn: expect.closeTo(3.7782, 4),
      levelCutIn: expect.closeTo(4, 9),
    });
    expect(solveSection({ ...plainInput, keptFaceIn: 7 })).toMatchObject({ levelCutIn: 0 });
  });
});
