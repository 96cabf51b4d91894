import { atTail, wholeEave, type Place } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';

/** The longest of the tails' own overhangs, where it is, and what is walked back to. */
export type GreatestOverhang = { readonly overhangIn: number; readonly at: Place; readonly ref: string };

/**
 * The longest of the tails' own overhangs: on a bowed wall that of one tail, else the overhang as designed. [in]
 */
export function greatestOverhang({ layout }: Pick<EaveToCheck, 'layout'>): GreatestOverhang {
  const { most } = layout.lineInPlan;
  const tail = layout.extenders.find(({ id }) => id === most?.extenderId);
  return tail === undefined || !layout.lineInPlan.bowed
    ? { overhangIn: layout.overhangLevelIn, at: wholeEave, ref: `design/${layout.eaveId}/overhangIn` }
    : {
        overhangIn: tail.overhangLevelIn,
        at: atTail(tail),
        ref: `section/${layout.eaveId}/${tail.id}`,
      };
}
