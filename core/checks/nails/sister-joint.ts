import { speciesGroups } from '../data/species.ts';
import type { EaveToCheck, Tail } from '../eave-to-check.ts';
import type { Nail } from '../../takeoff/nails.ts';
import { faceJointValue, type JointValue } from './joint-value.ts';

/** Factor on the lateral value of nails in lumber that is wet in service. [-] Source: NDS 2018, Table 11.3.3, as seen in transcription. */
export const wetLateralFactor = 0.7;

/**
 * One nail through the extender into the rafter it lies beside, by that rafter's own thickness. [lb]
 * @param nail - of the joint; @param tail - whose rafter it goes into.
 */
export function sisterNailValue(eave: EaveToCheck, tail: Tail, nail: Nail): JointValue {
  return faceJointValue({
    nail,
    sideThicknessIn: eave.stock.thicknessIn,
    mainThicknessIn: tail.rafter.thicknessIn,
    sideGravity: speciesGroups[eave.lumber.species].gravity,
    mainGravity: speciesGroups[eave.oldSpecies].gravity,
  });
}

/** Adjusted lateral value Z' = Z C_D C_M. [lb] */
export function adjustedNail(lb: number, duration: number, wet: boolean): number {
  return lb * duration * (wet ? wetLateralFactor : 1);
}
