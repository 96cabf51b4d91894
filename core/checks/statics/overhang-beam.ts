/** A beam on two supports that runs out past one of them: load on the overhang alone. */
export type Overhang = {
  /** Overhang a and backspan b. [in] */
  readonly overhangIn: number;
  readonly backspanIn: number;
};

/**
 * Reactions of a beam with an overhang under a load whose resultant lies on the overhang: the back end is pulled up and has
 * to be held down by W e / b, the wall carries W (1 + e / b). Not rounded.
 * Source: moments about the supports; for an even load e = a/2, w a^2 / (2 b) and w a (2 b + a) / (2 b), as published.
 * Worked: 100 lb on 16 in. with 32 in. behind: e = 8 -> 25 lb held down, 125 lb on the wall.
 * @param loadLb - resultant W. [lb]
 * @param armIn - its distance e out from the wall. [in]
 */
export function reactions(
  loadLb: number,
  armIn: number,
  backspanIn: number,
): { readonly holdDownLb: number; readonly wallLb: number } {
  const holdDownLb = backspanIn > 0 ? (loadLb * armIn) / backspanIn : 0;
  return { holdDownLb, wallLb: loadLb + holdDownLb };
}

/**
 * Sag of the tip under an even load on the overhang, w a^3 (4 b + 3 a) / (24 E I). Not rounded.
 * Source: published beam formula (a^3; some pages print x^3, which is wrong at the tip).
 * @param loadLbPerIn - w, square to the beam. [lb/in]
 * @param stiffness - E I. [lb sq in]
 * @returns square to the beam, downward positive. [in]
 */
export function tipSag(
  { overhangIn: a, backspanIn: b }: Overhang,
  loadLbPerIn: number,
  stiffness: number,
): number {
  return (loadLbPerIn * a ** 3 * (4 * b + 3 * a)) / (24 * stiffness);
}
