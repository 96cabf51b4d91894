import { describe, expect, it } from 'vitest';
import { dressedSection, dressedSections } from '../../core/lumber/dressed-sizes.ts';

describe('the sections known here', () => {
  it('are found by their trade name, and others are not made up', () => {
    expect(dressedSection('2x6')?.depthIn).toBe(5.5);
    expect(dressedSection('2x7')).toBeUndefined();
    expect(dressedSection('6x2')).toBeUndefined();
    expect(dressedSection('')).toBeUndefined();
    expect(dressedSection('constructor')).toBeUndefined();
  });

  it('are named once each and dressed smaller than nominal', () => {
    expect(new Set(dressedSections.map(({ section }) => section)).size).toBe(dressedSections.length);
    for (const section of dressedSections) {
      expect(section.thicknessIn).toBeLessThan(section.nominalThicknessIn);
      expect(section.depthIn).toBeLessThan(section.nominalWidthIn);
    }
  });
});
