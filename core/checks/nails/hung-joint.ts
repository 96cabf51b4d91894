import type { Nail } from '../../takeoff/nails.ts';
import { faceJointValue, type JointValue } from './joint-value.ts';

/**
 * Factor on the lateral value of a nail that stands in end grain, along the fibres. [-]
 * Source: NDS 2018, end grain factor C_eg, as seen in transcription; its paragraph, 12.5.2.2, from memory.
 */
export const endGrainFactor = 0.67;

/** A tail between two rafters, its back end nailed to a header block, the block's ends to the rafters. */
export type HungJoint = {
  readonly nail: Pick<Nail, 'diameterIn' | 'lengthIn'>;
  /** Block and tail are of one stock. [in, -] */
  readonly blockThicknessIn: number;
  readonly blockGravity: number;
  /** The rafters at the block's ends; the thicker one leaves less of the nail in the block. [in, -] */
  readonly rafterThicknessesIn: readonly [left: number, right: number];
  readonly rafterGravity: number;
};

/**
 * Reference lateral value of one nail at both places, before the end grain factor. Not rounded.
 * `tail`: through the block's face into the end grain of the tail, which is long enough for the whole nail.
 * `end`: through the rafter into the end grain of the block, at the end where it is worth less.
 * Source: NDS 2018, chapter 12 (joint-value.ts). Worked: 16d common in Douglas fir-larch, all 1-1/2 in. thick -> 2.00 in. deep,
 * 140.9 lb at both; x 0.67 = 94.4 lb.
 */
export function hungJointValues(joint: HungJoint): {
  readonly tail: JointValue;
  readonly end: JointValue;
} {
  const { nail, blockThicknessIn, blockGravity, rafterThicknessesIn, rafterGravity } = joint;
  // Along the grain both tail and block reach further than a nail does.
  const intoEnd = { nail, mainThicknessIn: nail.lengthIn, mainGravity: blockGravity };
  const through = (sideThicknessIn: number, sideGravity: number): JointValue =>
    faceJointValue({ ...intoEnd, sideThicknessIn, sideGravity });
  const left = through(rafterThicknessesIn[0], rafterGravity);
  const right = through(rafterThicknessesIn[1], rafterGravity);
  return { tail: through(blockThicknessIn, blockGravity), end: right.lb < left.lb ? right : left };
}
