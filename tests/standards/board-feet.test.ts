import { describe, expect, it } from 'vitest';
import { boardFeet } from '../../core/lumber/board-feet.ts';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';

function feetOf(name: string, lengthFt: number) {
  const section = dressedSection(name);
  if (section === undefined) throw new Error(`no section ${name}`);
  return boardFeet(section, lengthFt);
}

describe('board feet', () => {
  it('a 2x6 of 10 ft is 10 BF', () => {
    // Source: US Army EN0069A, "Frame Structures".
    expect(feetOf('2x6', 10).toNumber()).toBe(10);
  });

  it('eight 1x4 of 14 ft are 37-1/3 BF', () => {
    // Source: US Army EN5155, "Carpentry".
    expect(feetOf('1x4', 14).times(8).toDecimalPlaces(6).toNumber()).toBe(37.333333);
  });

  it('a 2x4 of 14 ft is 9-1/3 BF', () => {
    // Computed here from the definition of EN0069A: nominal thickness x nominal width x feet / 12.
    expect(feetOf('2x4', 14).toDecimalPlaces(6).toNumber()).toBe(9.333333);
  });

  it.each([
    ['2x4', 2 / 3],
    ['2x6', 1],
    ['2x8', 4 / 3],
    ['2x10', 5 / 3],
    ['2x12', 2],
  ])('a foot of %s holds its nominal area over 12', (name, expected) => {
    // Computed here from nominal sizes; the definition is that of EN0069A.
    expect(feetOf(name, 1).toNumber()).toBeCloseTo(expected, 12);
  });

  it('a thousand board feet of 2x6 is a thousand feet run', () => {
    // MBF = 1000 BF: definition, from memory.
    expect(feetOf('2x6', 1000).div(1000).toNumber()).toBe(1);
  });
});
