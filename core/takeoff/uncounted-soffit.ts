import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout, Finding } from '../layout/layout-types.ts';

/**
 * A closed soffit is drawn but not counted yet. Each eave that has one says so until it is entered as a cost of the
 * phase Soffit or named in the exclusions; the quote then lists it among what the price does not cover.
 * @param input - the design with its costs and exclusions.
 * @param eaves - the laid-out eaves.
 * @returns one finding an eave.
 */
export function uncountedSoffits(input: JobInput, eaves: readonly EaveLayout[]): readonly Finding[] {
  const entered = input.design.extraCosts.some((extra) => extra.phase === 'Soffit');
  const excluded = input.design.exclusions.some((exclusion) => /soffit/i.test(exclusion));
  if (entered || excluded) return [];
  return eaves.flatMap(({ eaveId, extenders }): readonly Finding[] => {
    const kind = input.design.eaves.find((design) => design.eaveId === eaveId)?.soffit.kind ?? 'open';
    if (kind === 'open' || extenders.length === 0) return [];
    return [
      {
        eaveId,
        stationIn: null,
        topic: 'soffit-not-counted',
        text: 'The soffit is drawn, but its material and labour are not counted. Enter them as a cost in the phase Soffit, name the soffit in the exclusions, or leave the eave open.',
        structural: false,
      },
    ];
  });
}
