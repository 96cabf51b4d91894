import { describe, expect, test } from 'vitest';
import { endGrainFactor, hungJointValues } from '../../core/checks/nails/hung-joint.ts';
import { toenailPenetrationIn, withdrawalPerInch } from '../../core/checks/nails/toenail.ts';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { findNail } from '../../core/takeoff/nails.ts';
import { headerNailsEach } from '../../core/takeoff/header-nails.ts';

/** Douglas fir-larch: NDS 2018, Table 12.3.3A, as seen in transcription. */
const gravityOfFir = 0.5;

function hungBetween(rafterThicknessesIn: readonly [number, number]) {
  const nail = findNail('16d common');
  if (nail === undefined) throw new Error('no such nail');
  return hungJointValues({
    nail,
    blockThicknessIn: 1.5,
    blockGravity: gravityOfFir,
    rafterThicknessesIn,
    rafterGravity: gravityOfFir,
  });
}

describe('nails in end grain', () => {
  test('three 16d common of a header block take 283 lb, and 326 under snow', () => {
    // Worked by hand: 141 lb (NDS 2018, Table 12N) x 0.67 (end grain, lateral: as seen in transcription; its paragraph,
    // 12.5.2.2, from memory) x 3 (common practice, no source) = 283.4; x 1.15 (Table 2.3.2) = 325.9.
    const { tail, end } = hungBetween([1.5, 1.5]);
    expect(endGrainFactor).toBe(0.67);
    for (const { lb } of [tail, end]) {
      expect(Math.abs(lb * endGrainFactor * 3 - 283.4)).toBeLessThan(1);
      expect(Math.abs(lb * endGrainFactor * 3 * 1.15 - 325.9)).toBeLessThan(1);
    }
  });

  test('through the thicker of two rafters count for less, and stand 1.25 in. deep behind 2-1/4', () => {
    // NDS 2018, 12.1.6.4: 3-1/2 - 2-1/4 = 1.25; 1.25 / 1.62 = 0.772 of 140.89 = 108.7.
    for (const end of [hungBetween([1.5, 2.25]).end, hungBetween([2.25, 1.5]).end]) {
      expect(end.penetrationIn).toBeCloseTo(1.25, 10);
      expect(end.lb).toBeCloseTo((140.89 * 1.25) / 1.62, 1);
    }
  });

  test('are two for a 2x4 and three for a 2x6, through each end of a header block and into the tail', () => {
    // Common practice, no source: the settings as they come.
    const { fastening } = shopSettingsSchema.parse({});
    const each = (section: string) => headerNailsEach(fastening, dressedSection(section)?.depthIn ?? 0);
    expect(['2x4', '2x6', '2x8', '2x12'].map(each)).toEqual([2, 3, 3, 3]);
  });
});

describe('nails drawn out', () => {
  test('an 8d common holds 32 lb an inch in Douglas fir-larch, a 16d common 26 in spruce-pine-fir', () => {
    // Source: NDS 2018, Eq. 12.2-3 and Table 12.2C, cells seen in transcription.
    expect(Math.round(withdrawalPerInch(0.5, 0.131))).toBe(32);
    expect(Math.round(withdrawalPerInch(0.42, 0.162))).toBe(26);
  });

  test('a 16d toenail stands 2.153 in. in the plate', () => {
    // Worked by hand: NDS 2018, 12.1.6.3: started L/3 = 1.1667 from the end, at 30 degrees: 3.5 - 1.1667 / 0.8660.
    expect(toenailPenetrationIn({ lengthIn: 3.5 })).toBeCloseTo(2.1528, 4);
  });
});
