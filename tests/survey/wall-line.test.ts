import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plateUpIn, wallMeanOutIn, wallOutIn } from '../../core/survey/wall-line.ts';

const bow = [
  { stationIn: 0, outIn: 0 },
  { stationIn: 60, outIn: 1 },
  { stationIn: 120, outIn: 0 },
];

const anyReadings = fc
  .uniqueArray(
    fc.record({ stationIn: fc.integer({ min: 0, max: 600 }), outIn: fc.integer({ min: -3, max: 3 }) }),
    {
      selector: ({ stationIn }) => stationIn,
      minLength: 1,
      maxLength: 8,
    },
  )
  .map((readings) => readings.map(({ stationIn, outIn }) => ({ stationIn, outIn: outIn / 8 })));

describe('the wall line', () => {
  it('runs straight from reading to reading, and as the outermost one beyond it', () => {
    const readings = [
      { stationIn: 12, outIn: 0.5 },
      { stationIn: 132, outIn: -0.5 },
    ];
    expect(wallOutIn(readings, 0)).toBe(0.5);
    expect(wallOutIn(readings, 12)).toBe(0.5);
    expect(wallOutIn(readings, 42)).toBe(0.25);
    expect(wallOutIn(readings, 72)).toBe(0);
    expect(wallOutIn(readings, 500)).toBe(-0.5);
  });

  it('is straight where nothing was read', () => {
    expect(wallOutIn([], 48)).toBe(0);
    expect(wallMeanOutIn([], 240)).toBe(0);
  });

  it('is the same in whatever order it was read', () => {
    fc.assert(
      fc.property(anyReadings, fc.integer({ min: 0, max: 600 }), (readings, stationIn) => {
        expect(wallOutIn(readings.toReversed(), stationIn)).toBe(wallOutIn(readings, stationIn));
      }),
    );
  });

  it('has the mean of its areas: a triangle 1 in. high is half an inch', () => {
    expect(wallMeanOutIn(bow, 120)).toBeCloseTo(0.5, 12);
    // Half the triangle and a straight inch: (0.5 x 60 + 1 x 60) / 120.
    expect(wallMeanOutIn(bow.slice(0, 2), 120)).toBeCloseTo(0.75, 12);
  });

  it('has the mean that many even steps along it come to', () => {
    fc.assert(
      fc.property(anyReadings, fc.integer({ min: 60, max: 600 }), (readings, lengthIn) => {
        const steps = 4000;
        const sum = Array.from({ length: steps }, (_, step) =>
          wallOutIn(readings, (lengthIn * (step + 0.5)) / steps),
        ).reduce((total, one) => total + one, 0);
        expect(wallMeanOutIn(readings, lengthIn)).toBeCloseTo(sum / steps, 3);
      }),
    );
  });
});

describe("the plate's height", () => {
  it("is told from the plate's top at the wall's left end, from whatever level line it was read", () => {
    const overhead = [
      { stationIn: 0, upIn: -10 },
      { stationIn: 120, upIn: -9.5 },
    ];
    const below = overhead.map(({ stationIn, upIn }) => ({ stationIn, upIn: upIn + 40 }));
    expect(plateUpIn(overhead, 0)).toBe(0);
    expect(plateUpIn(overhead, 60)).toBe(0.25);
    expect(plateUpIn(below, 60)).toBe(0.25);
    expect(plateUpIn(overhead, 240)).toBe(0.5);
    expect(plateUpIn([], 60)).toBe(0);
  });
});
