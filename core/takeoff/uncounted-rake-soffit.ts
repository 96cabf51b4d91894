import type { JobInput } from '../job/job-file.ts';
import type { Finding } from '../layout/layout-types.ts';
import type { RakeSurvey } from '../survey/survey-document.ts';

/**
 * The rakes whose eave gets a closed soffit. Nothing closes them from below, unless a soffit
 * is chosen for the rake, entered as a cost of its phase, or named in the exclusions.
 * @param input - survey and design.
 */
export function rakesLeftOpen({
  survey,
  design,
}: Pick<JobInput, 'survey' | 'design'>): readonly RakeSurvey[] {
  const named =
    design.exclusions.some((exclusion) => /soffit/i.test(exclusion)) ||
    design.extraCosts.some(({ phase }) => phase === 'Soffit');
  if (named) return [];
  return survey.rakes.filter(({ id, eaveId }) => {
    const rake = design.rakes.find(({ rakeId }) => rakeId === id);
    const eave = design.eaves.find((one) => one.eaveId === eaveId);
    return (
      rake !== undefined &&
      rake.kind !== 'none' &&
      rake.soffit.itemId === '' &&
      eave !== undefined &&
      eave.soffit.kind !== 'open'
    );
  });
}

/** One finding for each rake that is left open below beside a closed eave. */
export function uncountedRakeSoffits(input: Pick<JobInput, 'survey' | 'design'>): readonly Finding[] {
  return rakesLeftOpen(input).map(({ id, name, eaveId }) => ({
    eaveId,
    rakeId: id,
    stationIn: null,
    topic: 'soffit-not-counted',
    text: `${name.trim()}: its eave gets a closed soffit, and what closes the rake from below is not counted. Choose its soffit in Design, enter it as a cost in the phase Soffit, or name the soffit of the rake in the exclusions.`,
    structural: false,
  }));
}
