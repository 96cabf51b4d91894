import {
  reductionTerm,
  yieldModes,
  type DowelJoint,
  type YieldMode,
  type YieldValue,
} from './yield-equations.ts';

/**
 * Reference lateral value of one nail whose two members stand a gap apart, by the six yield modes. Each mode is the load P
 * at which the dowel is in balance: crushing the wood at F_e D for each inch, or bending at F_b D^3 / 6 inside a member;
 * P = (-B + sqrt(B^2 - 4 A C)) / 2 A. Without a gap they are the equations of the standard. Not rounded.
 * Source: general dowel equations (American Wood Council, Technical Report 12), from memory; held in tests against the
 * standard's equations where the gap is nothing, and against statics of a bent dowel.
 * Worked: 16d common, Fe 4650, 3/4 in. of gap -> mode IV: q 753.3, M 63.77, B = g: P = 136.9, / 2.2 = 62.2 lb.
 * @param joint - as of two members that touch. [in, psi]
 * @param gapIn - between them. [in]
 */
export function shearOverGap(joint: DowelJoint, gapIn: number): YieldValue {
  const { diameterIn: d, mainIn: lm, sideIn: ls } = joint;
  const [qm, qs] = [joint.mainFe * d, joint.sideFe * d];
  const moment = (joint.fyb * d ** 3) / 6;
  const crushed = { main: (qm * lm ** 2) / 4, side: (qs * ls ** 2) / 4 };
  const reduction = reductionTerm(d);
  const loads: Readonly<Record<YieldMode, number>> = {
    Im: qm * lm,
    Is: qs * ls,
    II: balance(1 / (4 * qs) + 1 / (4 * qm), ls / 2 + gapIn + lm / 2, -crushed.side - crushed.main),
    IIIm: balance(1 / (2 * qs) + 1 / (4 * qm), gapIn + lm / 2, -moment - crushed.main),
    IIIs: balance(1 / (4 * qs) + 1 / (2 * qm), ls / 2 + gapIn, -crushed.side - moment),
    IV: balance(1 / (2 * qs) + 1 / (2 * qm), gapIn, -2 * moment),
  };
  const modes = mapModes(loads, (load) => load / reduction);
  const governing = yieldModes.reduce((least, mode) => (modes[mode] < modes[least] ? mode : least));
  return { reduction, modes, governing, lb: modes[governing] };
}

/** The positive root of a P^2 + b P + c = 0. */
function balance(a: number, b: number, c: number): number {
  return (-b + Math.sqrt(b ** 2 - 4 * a * c)) / (2 * a);
}

function mapModes(
  loads: Readonly<Record<YieldMode, number>>,
  of: (load: number) => number,
): Readonly<Record<YieldMode, number>> {
  const { Im, Is, II, IIIm, IIIs, IV } = loads;
  return { Im: of(Im), Is: of(Is), II: of(II), IIIm: of(IIIm), IIIs: of(IIIs), IV: of(IV) };
}
