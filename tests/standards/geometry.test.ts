import { describe, expect, it } from 'vitest';
import { solveSection } from '../../core/eave/solve-section.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { slopeAngleDeg, slopeFactor } from '../../core/units/pitch.ts';
import { plainInput } from '../eave/section-input.ts';

// Common practice, no source: the piece reaches back twice as far as it sticks out, measured along the rafter.
function alongRafter(outIn: number, pitchRisePer12: number) {
  return solveSection({
    ...plainInput,
    pitchRisePer12,
    overhangLevelIn: outIn / slopeFactor(pitchRisePer12),
    tailCut: 'square',
    trimAllowanceIn: 0,
  });
}

describe('lengths per foot of run, as framing squares carry them', () => {
  // Source: first line of the framing square's rafter table. 13.89 (7/12) and 20.00 (16/12) as printed in NAVEDTRA
  // 14044 and US Army EN0069A; 13.42 (6/12) seen on a secondary page; the others are the same table from memory, and
  // all are rounded to hundredths there.
  it.each([
    [2, 12.17],
    [3, 12.37],
    [4, 12.65],
    [5, 13.0],
    [6, 13.42],
    [7, 13.89],
    [8, 14.42],
    [9, 15.0],
    [10, 15.62],
    [12, 16.97],
    [16, 20.0],
  ])('at %d in 12 a foot of run is %d in. along the slope', (rise, perFoot) => {
    expect(Math.round(12 * slopeFactor(rise) * 100) / 100).toBe(perFoot);
  });

  // Source: US Army EN0069A and NAVEDTRA 14044 print 13 in 12 -> 17.69.
  it('at 13 in 12 it is 17.69 in.', () => {
    expect(12 * slopeFactor(13)).toBeCloseTo(17.69, 2);
  });

  // Angles of common pitches: roofing handbooks, from memory; the atan is computed here.
  it.each([
    [4, 18.43],
    [6, 26.57],
    [8, 33.69],
    [12, 45.0],
  ])('%d in 12 is %d degrees', (rise, degrees) => {
    expect(slopeAngleDeg(rise)).toBeCloseTo(degrees, 2);
  });
});

describe('published rafter lengths', () => {
  it('7-in. rise and a span of 16 ft give a rafter of 9 ft 3-1/8 in.', () => {
    // Source: NAVEDTRA 14044: run 8 ft x 13.89 = 111.12 in. -> 9 ft 3-1/8 in.
    expect(formatLength(8 * 12 * slopeFactor(7))).toBe('9\' 3-1/8"');
  });

  it('6-in. rise and a span of 25 ft give 167.7 in.', () => {
    // Source: NAVEDTRA 14044 poses it; the table value 12.5 x 13.42 = 167.75 and the exact 167.71 are computed here.
    const exact = 12.5 * 12 * slopeFactor(6);
    expect(exact).toBeCloseTo(167.71, 2);
    expect(Math.abs(exact - 167.75)).toBeLessThan(1 / 16);
  });

  it.each([
    [6, 16, 17.89],
    [6, 24, 26.83],
    [4, 24, 25.3],
    [12, 24, 33.94],
  ])('at %d in 12 a tail of %d in. run is %d in. long', (pitchRisePer12, overhangLevelIn, along) => {
    // Computed here from the square's table: run x length per foot of run / 12.
    const section = solveSection({ ...plainInput, pitchRisePer12, overhangLevelIn });
    expect(section.overhangAlongIn).toBeCloseTo(along, 2);
  });
});

describe('the familiar round lengths of extenders', () => {
  it.each([4, 6, 9, 12])(
    '16 in. along the slope is a 4 ft piece and 24 in. a 6 ft piece, at %d in 12',
    (pitch) => {
      expect(alongRafter(16, pitch).blankLengthIn).toBeCloseTo(48, 9);
      expect(alongRafter(24, pitch).blankLengthIn).toBeCloseTo(72, 9);
    },
  );

  it('hold along the rafter, not level: 24 in. level at 12 in 12 wants 8 ft 6 in.', () => {
    // Common practice, no source, with the slope factor of the square: 3 x 33.94 = 101.82 in.
    const steep = solveSection({
      ...plainInput,
      pitchRisePer12: 12,
      overhangLevelIn: 24,
      tailCut: 'square',
      trimAllowanceIn: 0,
    });
    expect(formatLength(Math.ceil(steep.blankLengthIn))).toBe('8\' 6"');
  });
});

describe('notches over the plate', () => {
  it.each([
    [4, 4.35],
    [6, 3.07],
    [12, 1.94],
  ])('a 2x6 notched a quarter of its depth at %d in 12 has a seat of %d in.', (pitchRisePer12, seat) => {
    // Computed here from s sin t = d / 4 with d = 5-1/2; the quarter at an end is IRC R802.7.1 (seen on secondary pages).
    const heightAbovePlateIn = 0.75 * 5.5 * slopeFactor(pitchRisePer12);
    const { bearing } = solveSection({ ...plainInput, pitchRisePer12, heightAbovePlateIn });
    expect(bearing).toMatchObject({
      notchDepthIn: expect.closeTo(1.375, 9),
      seatIn: expect.closeTo(seat, 2),
    });
  });

  it('a seat of 3-1/2 in. at 6 in 12 leaves 3.935 in. of a 2x6, more than the 3-1/2 in. of the cantilever rule', () => {
    // Computed here: d - s sin t = 5.5 - 3.5 x 0.44721; the 3-1/2 in. is IRC R802.7.1.1 (read in a transcription).
    const heightAbovePlateIn = 5.5 * slopeFactor(6) - 3.5 * 0.5;
    const { throatIn, bearing } = solveSection({ ...plainInput, heightAbovePlateIn });
    expect(bearing).toMatchObject({
      seatIn: expect.closeTo(3.5, 9),
      bearingLengthIn: expect.closeTo(3.5, 9),
    });
    expect(throatIn).toBeCloseTo(3.935, 3);
  });
});
