/** The six ways a single-shear joint of dowels gives way. */
export const yieldModes = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'] as const;
export type YieldMode = (typeof yieldModes)[number];

/** One dowel between two members. */
export type DowelJoint = {
  readonly diameterIn: number;
  /** Bearing length in the main (pointed) and side (headed) member. [in] */
  readonly mainIn: number;
  readonly sideIn: number;
  /** Dowel bearing strength of main and side member. [psi] */
  readonly mainFe: number;
  readonly sideFe: number;
  /** Bending yield strength of the dowel. [psi] */
  readonly fyb: number;
};

export type YieldValue = {
  readonly reduction: number;
  readonly modes: Readonly<Record<YieldMode, number>>;
  readonly governing: YieldMode;
  /** The least of the six. [lb] */
  readonly lb: number;
};

/**
 * Reference lateral value of one nail in single shear, by all six yield modes. Not rounded.
 * Source: NDS 2018, Table 12.3.1A (equations) and 12.3.1B (reduction terms for D below 1/4 in.), as seen in transcription.
 * Worked: 16d common in Douglas fir-larch, 1-1/2 in. side, full penetration -> mode IV, 140.9 lb.
 * @param joint - diameter and bearing lengths [in], strengths [psi]; D below 0.25 in.
 * @returns each mode and the least. [lb]
 */
export function singleShear(joint: DowelJoint): YieldValue {
  const { diameterIn: d, mainIn: lm, sideIn: ls, mainFe, sideFe, fyb } = joint;
  const reduction = reductionTerm(d);
  const re = mainFe / sideFe;
  const rt = lm / ls;
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
  const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * mainFe * lm ** 2));
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * mainFe * ls ** 2));
  const modes: Record<YieldMode, number> = {
    Im: (d * lm * mainFe) / reduction,
    Is: (d * ls * sideFe) / reduction,
    II: (k1 * d * ls * sideFe) / reduction,
    IIIm: (k2 * d * lm * mainFe) / ((1 + 2 * re) * reduction),
    IIIs: (k3 * d * ls * mainFe) / ((2 + re) * reduction),
    IV: (d ** 2 / reduction) * Math.sqrt((2 * mainFe * fyb) / (3 * (1 + re))),
  };
  const governing = yieldModes.reduce((least, mode) => (modes[mode] < modes[least] ? mode : least));
  return { reduction, modes, governing, lb: modes[governing] };
}

/** R_d of dowels thinner than 1/4 in.: 2.2 up to 0.17 in., then 10 D + 0.5. Source: NDS 2018, Table 12.3.1B. [-] */
export function reductionTerm(diameterIn: number): number {
  return diameterIn <= 0.17 ? 2.2 : 10 * diameterIn + 0.5;
}

/**
 * Dowel bearing strength of wood under nails thinner than 1/4 in., the same in every direction to the grain:
 * 16600 G^1.84, rounded to 50 psi as the table does. Source: NDS 2018, Table 12.3.3 and note 2.
 * @param gravity - specific gravity of the species group. [-]
 * @returns e.g. 0.50 -> 4650. [psi]
 */
export function dowelBearing(gravity: number): number {
  return Math.round((16600 * gravity ** 1.84) / 50) * 50;
}

/**
 * Bending yield strength of a common, box or sinker nail by its diameter.
 * Source: NDS 2018, Table I1. @returns e.g. 0.162 in. -> 90,000. [psi]
 */
export function bendingYield(diameterIn: number): number {
  if (diameterIn <= 0.142) return 100_000;
  if (diameterIn <= 0.177) return 90_000;
  if (diameterIn <= 0.236) return 80_000;
  return 70_000;
}
