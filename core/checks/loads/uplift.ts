import type { EaveToCheck } from '../eave-to-check.ts';
import type { ReckonedTail } from '../statics/reckon-tail.ts';
import { memberWeight } from './dead-load.ts';

/** Dead load that may be counted against uplift, and the duration factor of wind. [-] */
const deadShare = 0.6;
export const windDuration = 1.6;

/** Net uplift on a tail, square to the slope. */
export type Uplift = {
  readonly pressureLb: number;
  readonly deadLb: number;
  /** Net, acting in the middle of the overhang; 0 where the weight outdoes the wind. [lb] */
  readonly netLb: number;
  /** Along the slope: half the overhang; and in to the nails' resultant. [in] */
  readonly armOutIn: number;
  readonly armInIn: number;
};

/**
 * Net uplift on the overhang, 0.6 D + W (W at allowable stress level), square to the slope. Not rounded. [lb]
 * Source: ASCE 7-16, 2.4.1, combination 7 (0.6 D + 0.6 W), from memory.
 * @param upliftPsf - net upward pressure square to the roof, allowable stress level. [psf]
 */
export function upliftOn(
  eave: EaveToCheck,
  tail: Pick<ReckonedTail, 'shape' | 'unit'>,
  upliftPsf: number,
): Uplift {
  const { shape, unit } = tail;
  const factor = Math.hypot(1, shape.slope);
  const alongIn = shape.overhangLevelIn * factor;
  const areaSqFt = (alongIn * shape.tributaryIn) / 144;
  const slopedAreaPsf = eave.loads.dead.slopedPsf + eave.design.structure.soffitWeightPsf / factor;
  const deadLb =
    (slopedAreaPsf * areaSqFt + memberWeight(shape.thicknessIn, shape.depthIn, 1) * alongIn) / factor;
  const pressureLb = upliftPsf * areaSqFt;
  return {
    pressureLb,
    deadLb,
    netLb: Math.max(0, pressureLb - deadShare * deadLb),
    armOutIn: alongIn / 2,
    armInIn: Math.max(0, unit.armIn) * factor,
  };
}
