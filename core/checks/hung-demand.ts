import type { Nail } from '../takeoff/nails.ts';
import { speciesGroups } from './data/species.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { holdUpAtBlock, type HungTail } from './hung-tails.ts';
import { windDuration } from './loads/uplift.ts';
import { endGrainFactor, hungJointValues } from './nails/hung-joint.ts';
import type { JointValue } from './nails/joint-value.ts';
import { adjustedNail } from './nails/sister-joint.ts';
import type { CaseForces, ReckonedTail } from './statics/reckon-tail.ts';

/** The two places where a hung tail's load goes through nails. */
export type HungPlace = 'tail' | 'end';

/** What one load asks of the nails at one place, and what one of them may take. */
export type HungDemand = {
  readonly tail: HungTail;
  readonly place: HungPlace;
  /** Of a load case, or null under wind. */
  readonly forces: CaseForces | null;
  readonly duration: number;
  /** At the tail's back end. [lb] */
  readonly reactionLb: number;
  /** The whole reaction into the tail; at an end of the block the nearer end's part of it. [lb] */
  readonly shareLb: number;
  readonly value: JointValue;
  /** One nail, adjusted: Z' = Z C_D C_M C_eg. [lb] */
  readonly nailLb: number;
  /** Share over what the nails take together. [-] */
  readonly ratio: number;
};

/**
 * Part of the reaction that the nearer end of the header block takes. Source: statics (a load on a beam between two ends).
 * Worked: a block from 10 to 30, the tail at 15 -> 15 / 20 = 0.75; in the middle 0.5. [-]
 */
export function nearerShare({ block, centreIn }: Pick<HungTail, 'block' | 'centreIn'>): number {
  const spanIn = block.rightIn - block.leftIn;
  return spanIn > 0 ? Math.max(centreIn - block.leftIn, block.rightIn - centreIn) / spanIn : 1;
}

/**
 * Everything that is asked of a hung tail's nails: each load case and the wind, at both places. Not rounded.
 * Worked: 156 lb at the back end, three nails of 118 lb -> 0.44 into the tail, 78 lb and 0.22 at each end of the block.
 * @param reckoned - the tail, or the same with another shape. [in, lb]
 * @param nails - at each place. [-]
 */
export function hungDemands(
  eave: EaveToCheck,
  tail: HungTail,
  nail: Nail,
  nails: number,
  reckoned: ReckonedTail = tail,
): readonly HungDemand[] {
  const values = hungJointValues({
    nail,
    blockThicknessIn: eave.stock.thicknessIn,
    blockGravity: speciesGroups[eave.lumber.species].gravity,
    rafterThicknessesIn: [tail.left.thicknessIn, tail.right.thicknessIn],
    rafterGravity: speciesGroups[eave.oldSpecies].gravity,
  });
  const shares: Readonly<Record<HungPlace, number>> = { tail: 1, end: nearerShare(tail) };
  const { upliftPsf } = eave.loads;
  const loads = [
    ...reckoned.cases.map((forces) => ({
      forces,
      duration: forces.loadCase.duration,
      reactionLb: forces.holdDownLb,
    })),
    ...(upliftPsf === null
      ? []
      : [{ forces: null, duration: windDuration, reactionLb: holdUpAtBlock(eave, reckoned, upliftPsf) }]),
  ];
  return loads.flatMap((load) =>
    (['tail', 'end'] as const).map((place): HungDemand => {
      const value = values[place];
      const nailLb = adjustedNail(value.lb, load.duration, eave.design.structure.wetService) * endGrainFactor;
      const shareLb = load.reactionLb * shares[place];
      // Nothing asked of nails that take nothing is still nails that take nothing.
      const ratio = nailLb > 0 ? shareLb / (nails * nailLb) : Number.POSITIVE_INFINITY;
      return { tail, place, ...load, shareLb, value, nailLb, ratio };
    }),
  );
}

/** The demand that goes furthest against its nails; of equal ones the first. */
export function worstDemand(demands: readonly HungDemand[]): HungDemand | undefined {
  return demands.reduce<HungDemand | undefined>(
    (worst, one) => (worst === undefined || one.ratio > worst.ratio ? one : worst),
    undefined,
  );
}
