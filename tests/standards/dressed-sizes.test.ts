import { describe, expect, it } from 'vitest';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';

// Source: PS 20-20, American Softwood Lumber Standard, size tables for boards and dimension, dry (at most 19 %
// moisture), read in public transcriptions. Thickness 1 -> 3/4, 5/4 -> 1, 2 -> 1-1/2; widths as below.
describe('dressed dry sizes of PS 20-20', () => {
  it.each([
    ['1x2', 3 / 4, 1 + 1 / 2],
    ['1x3', 3 / 4, 2 + 1 / 2],
    ['1x4', 3 / 4, 3 + 1 / 2],
    ['1x6', 3 / 4, 5 + 1 / 2],
    ['1x8', 3 / 4, 7 + 1 / 4],
    ['1x10', 3 / 4, 9 + 1 / 4],
    ['1x12', 3 / 4, 11 + 1 / 4],
    ['5/4x6', 1, 5 + 1 / 2],
    ['2x2', 1 + 1 / 2, 1 + 1 / 2],
    ['2x4', 1 + 1 / 2, 3 + 1 / 2],
    ['2x6', 1 + 1 / 2, 5 + 1 / 2],
    ['2x8', 1 + 1 / 2, 7 + 1 / 4],
    ['2x10', 1 + 1 / 2, 9 + 1 / 4],
    ['2x12', 1 + 1 / 2, 11 + 1 / 4],
  ])('a %s is %d by %d in.', (name, thicknessIn, depthIn) => {
    expect(dressedSection(name)).toMatchObject({ thicknessIn, depthIn });
  });
});
