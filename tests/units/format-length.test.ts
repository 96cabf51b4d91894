import { describe, expect, it } from 'vitest';
import { formatInches, formatLength } from '../../core/units/format-length.ts';
import { nearestSixteenth, sixteenthsDown, sixteenthsUp } from '../../core/units/sixteenths.ts';

describe('a length is written to the nearest sixteenth', () => {
  it.each([
    [66.5, '5\' 6-1/2"'],
    [7.25, '7-1/4"'],
    [96, '8\' 0"'],
    [0, '0"'],
    [0.0625, '1/16"'],
    [11.99, '1\' 0"'],
    [60.5, '5\' 0-1/2"'],
    [-3.5, '-3-1/2"'],
    [-0.01, '0"'],
  ])('%d in. is written %s', (inches, text) => {
    expect(formatLength(inches)).toBe(text);
  });

  it('without feet where the trade counts in inches', () => {
    expect(formatInches(66.5)).toBe('66-1/2"');
    expect(formatInches(-66.5)).toBe('-66-1/2"');
  });
});

describe('rounding to sixteenths', () => {
  it('goes to the nearest, halves away from zero', () => {
    expect(nearestSixteenth(66.53)).toBe(1064);
    expect(nearestSixteenth(1 / 32)).toBe(1);
    expect(nearestSixteenth(-1 / 32)).toBe(-1);
    expect(nearestSixteenth(-0.001)).toBe(0);
  });

  it('up is never shorter, down never longer, and binary dust moves neither', () => {
    expect(sixteenthsUp(10.01)).toBe(161);
    expect(sixteenthsDown(10.06)).toBe(160);
    expect(sixteenthsUp(0.1 + 0.2 + 9.7)).toBe(160);
    expect(sixteenthsDown(10 - 1e-10)).toBe(160);
    expect(sixteenthsUp(0)).toBe(0);
  });
});
