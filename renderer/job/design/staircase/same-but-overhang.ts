import type { JobInput } from '../../../../core/job/job-file.ts';

/**
 * Whether two jobs differ in the overhang of one eave alone, so that a staircase over that overhang holds for both. Edits
 * copy only what they change, so what is unchanged is the same object.
 */
export function sameButOverhang(one: JobInput, other: JobInput, eaveId: string): boolean {
  if (one === other) return true;
  const { design, priceList, job: _job, ...rest } = one;
  const { design: otherDesign, priceList: otherPrices, job: _otherJob, ...otherRest } = other;
  const { eaves, ...choices } = design;
  const { eaves: otherEaves, ...otherChoices } = otherDesign;
  return (
    isAlike(rest, otherRest) &&
    isAlike(choices, otherChoices) &&
    isAlike(priceList, otherPrices) &&
    eaves.length === otherEaves.length &&
    eaves.every((eave, index) => {
      const before = otherEaves[index];
      if (before === undefined || eave.eaveId !== eaveId) return eave === before;
      return isAlike({ ...eave, overhangIn: 0 }, { ...before, overhangIn: 0 });
    })
  );
}

/** Whether two objects or lists have the same entries. */
function isAlike(one: object, other: object): boolean {
  const entries = Object.entries(one);
  const others = new Map<string, unknown>(Object.entries(other));
  return entries.length === others.size && entries.every(([key, value]) => Object.is(value, others.get(key)));
}
