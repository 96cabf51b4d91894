import type { Tail } from './tail-to-check.ts';
import type { CaseForces } from './statics/reckon-tail.ts';

/** Where a check governs: a tail, the load case, and how far the value goes against its limit. */
export type Governing = { readonly tail: Tail; readonly forces: CaseForces; readonly ratio: number };

/**
 * Finds the tail and load case with the largest ratio. A ratio that is no number counts as beyond all.
 * @param tails - one or more.
 * @param ratioOf - value over limit of one tail under one case. [-]
 * @throws where there is no tail, which a caller has to rule out.
 */
export function governingCase(
  tails: readonly Tail[],
  ratioOf: (tail: Tail, forces: CaseForces) => number,
): Governing {
  let governing: Governing | undefined;
  for (const tail of tails) {
    for (const forces of tail.cases) {
      const told = ratioOf(tail, forces);
      const ratio = Number.isNaN(told) ? Number.POSITIVE_INFINITY : told;
      if (governing === undefined || ratio > governing.ratio) governing = { tail, forces, ratio };
    }
  }
  if (governing === undefined) throw new Error('a check of an eave without a tail');
  return governing;
}

/** The tail with the largest figure; a figure that is no number counts as the largest. */
export function governingTail(tails: readonly Tail[], figureOf: (tail: Tail) => number): Tail {
  let most = Number.NEGATIVE_INFINITY;
  let governing = tails[0];
  for (const tail of tails) {
    const told = figureOf(tail);
    const figure = Number.isNaN(told) ? Number.POSITIVE_INFINITY : told;
    if (figure > most) [most, governing] = [figure, tail];
  }
  if (governing === undefined) throw new Error('a check of an eave without a tail');
  return governing;
}
