import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout, Finding } from '../layout/layout-types.ts';
import { hundredths } from './quantities.ts';
import { type SoffitPlan, soffitOf } from './soffit.ts';
import { eavesToTakeOff } from './takeoff-context.ts';
import { ventAreaOf } from './vent-area.ts';
import { ventsShort } from './vents.ts';

/**
 * What is not counted of closed soffits. Without an item for its panels a soffit is drawn and not counted: the eave says
 * so until one is chosen, the soffit is entered as a cost of the phase Soffit, or named in the exclusions. With one, vents
 * that are asked for and not chosen are told, and a strip that falls short of what is asked.
 * @param input - the design with its costs and exclusions, price list and survey.
 * @param eaves - the laid-out eaves.
 * @returns no more than one finding an eave.
 */
export function uncountedSoffits(input: JobInput, eaves: readonly EaveLayout[]): readonly Finding[] {
  const named = (words: RegExp): boolean =>
    input.design.exclusions.some((exclusion) => words.test(exclusion)) ||
    input.design.extraCosts.some(({ phase }) => phase === 'Soffit');
  return eavesToTakeOff(input, eaves).flatMap((eave): readonly Finding[] => {
    const { layout, survey, design } = eave;
    if (design.soffit.kind === 'open') return [];
    const told = { eaveId: layout.eaveId, stationIn: null, structural: false };
    const plan = soffitOf(eave, input);
    if (plan === null)
      return named(/soffit/i)
        ? []
        : [
            {
              ...told,
              topic: 'soffit-not-counted',
              text: 'The soffit is drawn, but its material and labour are not counted. Choose its panels in Design, enter it as a cost in the phase Soffit, name the soffit in the exclusions, or leave the eave open.',
            },
          ];
    const wanted = ventAreaOf(input.survey, survey)?.wantedSqIn ?? 0;
    const text = named(/\bvents?\b/i) ? null : ventText(plan, design.soffit.ventItemId, wanted);
    return text === null ? [] : [{ ...told, topic: 'vents', text }];
  });
}

function ventText({ vents }: SoffitPlan, ventItemId: string, wantedSqIn: number): string | null {
  const wanted = hundredths(wantedSqIn);
  if (ventItemId === '')
    return wantedSqIn > 0
      ? `No vent is chosen for the soffit, and ${wanted} sq in. of net free area are asked of this eave. Choose a vent in Design, or name the vents in the exclusions.`
      : null;
  return vents !== null && ventsShort(vents)
    ? `The strip vent along the whole soffit gives ${hundredths(vents.reachedSqIn)} of the ${wanted} sq in. asked of this eave. Choose one with more net free area to the foot, or vent more elsewhere.`
    : null;
}
