import { Decimal } from 'decimal.js';
import type { DressedSection } from './dressed-sizes.ts';

/**
 * Board feet of a piece, from nominal size: T x W x L / 12.
 * Source: US Army EN0069A, "Frame Structures"; a 2x6 of 10 ft is 10 BF.
 * @param section - the section; stock thinner than 1 in. counts as 1 in. [in]
 * @param lengthFt - length. [ft]
 * @returns exact board feet. [BF]
 */
export function boardFeet(section: DressedSection, lengthFt: Decimal.Value): Decimal {
  return new Decimal(Math.max(1, section.nominalThicknessIn))
    .times(section.nominalWidthIn)
    .times(lengthFt)
    .div(12);
}
