import type { Nail } from '../../takeoff/nails.ts';
import { speciesGroups } from '../data/species.ts';
import type { EaveToCheck } from '../eave-to-check.ts';
import { fillerOf, fillerThicknessIn } from '../filler-words.ts';
import type { Tail } from '../tail-to-check.ts';
import { faceJointValue, type JointValue } from './joint-value.ts';

/** Factor on the lateral value of nails in lumber that is wet in service. [-] Source: NDS 2018, Table 11.3.3, as seen in transcription. */
export const wetLateralFactor = 0.7;

/** The nail of a tail's joint with its rafter, and what one of them is worth. */
export type SisterNail = {
  readonly nail: Nail;
  /** Path of its setting, for the walk back. */
  readonly settingRef: string;
  readonly value: JointValue;
};

/** Names of the nails of these tails' joints that the program does not know. */
export function unknownSisterNails(eave: EaveToCheck, tails: readonly Tail[]): readonly string[] {
  const { sister, throughFillerNail } = eave.input.settings.fastening;
  const asked = tails.map((tail) => (fillerOf(tail) === null ? eave.sisterNail : eave.throughFillerNail));
  return [
    ...new Set(
      tails.flatMap((tail, index) =>
        asked[index] === undefined ? [fillerOf(tail) === null ? sister.nail : throughFillerNail] : [],
      ),
    ),
  ];
}

/**
 * One nail through the extender, and a filler where there is one, into the rafter it lies beside, by that rafter's own
 * thickness. A filler is taken as a gap that hands nothing on. [lb]
 * @param nail - of the joint; @param tail - whose rafter it goes into.
 */
export function sisterJointValue(eave: EaveToCheck, tail: Tail, nail: Nail): JointValue {
  return faceJointValue({
    nail,
    sideThicknessIn: eave.stock.thicknessIn,
    gapIn: fillerThicknessIn(tail),
    mainThicknessIn: tail.rafter.thicknessIn,
    sideGravity: speciesGroups[eave.lumber.species].gravity,
    mainGravity: speciesGroups[eave.oldSpecies].gravity,
  });
}

/** The nail of a tail's joint, which is one of its own where there is a filler; the tail is nailed, and its nail known. */
export function sisterNailOf(eave: EaveToCheck, tail: Tail): SisterNail {
  const filled = fillerOf(tail) !== null;
  const nail = filled ? eave.throughFillerNail : eave.sisterNail;
  if (nail === undefined) throw new Error('the value of a nail that is not known');
  return {
    nail,
    settingRef: filled ? 'setting/fastening.throughFillerNail' : 'setting/fastening.sister.nail',
    value: sisterJointValue(eave, tail, nail),
  };
}

/** Adjusted lateral value Z' = Z C_D C_M. [lb] */
export function adjustedNail(lb: number, duration: number, wet: boolean): number {
  return lb * duration * (wet ? wetLateralFactor : 1);
}
