import type { Nail } from '../../takeoff/nails.ts';
import { shearOverGap } from './gap-equations.ts';
import { bendingYield, dowelBearing, singleShear, type YieldValue } from './yield-equations.ts';

/** A face-nailed joint: driven through the side member into the main member. */
export type FaceJoint = {
  readonly nail: Pick<Nail, 'diameterIn' | 'lengthIn'>;
  readonly sideThicknessIn: number;
  /** Between the two members, of something that hands no load on: a filler; 0 where they touch. [in] */
  readonly gapIn?: number;
  readonly mainThicknessIn: number;
  readonly sideGravity: number;
  readonly mainGravity: number;
};

export type JointValue = {
  /** How deep the nail stands in the main member, its point counted. [in] */
  readonly penetrationIn: number;
  /** 6 D: less gives no value; 10 D: from there the whole value. [in] */
  readonly leastPenetrationIn: number;
  readonly fullPenetrationIn: number;
  /** p / 10 D, at most 1; 0 below 6 D. [-] */
  readonly penetrationFactor: number;
  /** With a main member deep enough for 10 D, as the published table gives it. */
  readonly tabulated: YieldValue;
  /** With the bearing length that is really there. */
  readonly actual: YieldValue;
  /** The lesser of tabulated times the penetration factor, and actual. Normal duration, dry. [lb] */
  readonly lb: number;
};

/**
 * Reference lateral value of one nail of a face joint, with its penetration. Not rounded.
 * Source: NDS 2018, 12.1.6.4 and Table 12N note 3 (penetration), 12.3.5.3 (bearing length p - E/2, E = 2 D, point inside);
 * over a gap the general dowel equations (gap-equations.ts).
 * Worked: 16d common through 1-1/2 in. into 1-1/2 in., Douglas fir-larch -> p 1.50, factor 0.926, 140.9 x 0.926 = 130.5 lb.
 * @param joint - nail, thicknesses [in], specific gravities [-].
 */
export function faceJointValue(joint: FaceJoint): JointValue {
  const { nail, sideThicknessIn, mainThicknessIn } = joint;
  const d = nail.diameterIn;
  const gapIn = joint.gapIn ?? 0;
  const throughIn = nail.lengthIn - sideThicknessIn - gapIn;
  const pointInside = throughIn <= mainThicknessIn;
  const penetrationIn = Math.max(0, Math.min(throughIn, mainThicknessIn));
  const leastPenetrationIn = 6 * d;
  const fullPenetrationIn = 10 * d;
  const strengths = {
    diameterIn: d,
    sideIn: sideThicknessIn,
    mainFe: dowelBearing(joint.mainGravity),
    sideFe: dowelBearing(joint.sideGravity),
    fyb: bendingYield(d),
  };
  const bearingIn = Math.max(pointInside ? penetrationIn - d : penetrationIn, d / 1000);
  const shear = (mainIn: number): YieldValue =>
    gapIn > 0 ? shearOverGap({ ...strengths, mainIn }, gapIn) : singleShear({ ...strengths, mainIn });
  const tabulated = shear(Math.max(fullPenetrationIn, throughIn));
  const actual = shear(bearingIn);
  const penetrationFactor =
    penetrationIn < leastPenetrationIn - 1e-9 ? 0 : Math.min(1, penetrationIn / fullPenetrationIn);
  return {
    penetrationIn,
    leastPenetrationIn,
    fullPenetrationIn,
    penetrationFactor,
    tabulated,
    actual,
    lb: penetrationFactor === 0 ? 0 : Math.min(tabulated.lb * penetrationFactor, actual.lb),
  };
}
