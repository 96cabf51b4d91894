import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPitch, parsePitch, slopeAngleDeg, slopeFactor } from '../../core/units/pitch.ts';

describe('a pitch', () => {
  it.each([
    ['6/12', 6],
    ['6 / 12', 6],
    ['6 in 12', 6],
    ['6:12', 6],
    ['6', 6],
    ['6.5/12', 6.5],
    ['6 1/2 / 12', 6.5],
    ['6-1/2:12', 6.5],
    ['6½/12', 6.5],
    ['7 1/2', 7.5],
    ['7-1/4', 7.25],
    ['7½', 7.5],
    ['7 1/2" in 12"', 7.5],
    ['0 1/2', 0.5],
    ['50 %', 6],
    ['50%', 6],
    ['45°', 12],
    ['45 deg', 12],
    ['45 degrees', 12],
    ['26.57 deg', 12 * Math.tan((26.57 * Math.PI) / 180)],
    ['24/12', 24],
    ['1/2', 6],
  ])('%s is read as rise in 12', (text, rise) => {
    const read = parsePitch(text);
    expect(read.ok && read.value).toBeCloseTo(rise, 9);
  });

  it.each(['0', '0/12', '0 deg', '25/12', '64 deg', '90 deg', '201 %'])(
    '%s cannot be built and is out of range',
    (typed) => {
      expect(parsePitch(typed)).toEqual({ ok: false, problem: { code: 'pitch-out-of-range', typed } });
    },
  );

  it.each(['', 'steep', '-6/12', '6/0', '6 6/12 12', '6/12/1', '6 6/12', '7 5/4', '7 1/0'])(
    '"%s" is no pitch',
    (typed) => {
      expect(parsePitch(typed)).toEqual({ ok: false, problem: { code: 'pitch-unreadable', typed } });
    },
  );

  it('given in degrees or per cent means the same slope as rise in 12', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 24, noNaN: true }), (rise) => {
        const degrees = parsePitch(`${slopeAngleDeg(rise).toFixed(10)} deg`);
        const percent = parsePitch(`${((rise / 12) * 100).toFixed(10)} %`);
        expect(degrees.ok && degrees.value).toBeCloseTo(rise, 6);
        expect(percent.ok && percent.value).toBeCloseTo(rise, 6);
        // s = 1 / cos t, by trigonometry instead of Pythagoras
        expect(slopeFactor(rise)).toBeCloseTo(1 / Math.cos((slopeAngleDeg(rise) * Math.PI) / 180), 9);
      }),
    );
  });

  it('is written with two decimals at most', () => {
    expect(formatPitch(6)).toBe('6/12');
    expect(formatPitch(6.25)).toBe('6.25/12');
    expect(formatPitch(5.99479)).toBe('5.99/12');
  });
});
