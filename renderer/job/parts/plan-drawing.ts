import { drawPlan, type PlanOptions, planSizes } from '../../../core/drawings/draw-plan.ts';
import type { Drawing } from '../../../core/drawings/drawing.ts';
import type { JobInput } from '../../../core/job/job-file.ts';
import type { JobResult } from '../../../core/job/job-result.ts';
import type { EaveSurvey } from '../../../core/survey/survey-document.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import type { MeasuredEave } from '../compute/measured-eave.ts';

/** The plan of an eave with its new work; null where the figures know no such eave. */
export function designedPlan(
  good: { readonly input: JobInput; readonly result: JobResult },
  eaveId: string,
): Drawing | null {
  const layout = good.result.eaves.find((eave) => eave.eaveId === eaveId);
  if (layout === undefined) return null;
  const survey = good.input.survey.eaves.find((eave) => eave.id === eaveId);
  const design = good.input.design.eaves.find((eave) => eave.eaveId === eaveId);
  return survey === undefined || design === undefined
    ? null
    : drawPlan(layout, { ...planSizes(survey, design), tailsBy: 'mark' });
}

/**
 * The plan of the old framing alone, as it was measured.
 * @returns null until the wall and a rafter are measured.
 */
export function measuredPlan(eave: EaveSurvey, measured: MeasuredEave): Drawing | null {
  const { wallIn, placed } = measured;
  if (wallIn === null || placed.rafters.length === 0) return null;
  const options: PlanOptions = {
    plateWidthIn: eave.plateWidthIn,
    wallReadings: eave.wallReadings,
  };
  const drawing = drawPlan(
    {
      eaveId: eave.id,
      name: eave.name,
      wallLengthIn: wallIn,
      overhangLevelIn: 0,
      ...placed,
      extenders: [],
      unplaced: [],
      bays: [],
      fascia: [],
      fasciaLengthIn: 0,
      subFascia: [],
    },
    options,
  );
  const rafters = placed.rafters.length === 1 ? '1 old rafter' : `${placed.rafters.length} old rafters`;
  return {
    ...drawing,
    title: `Plan of ${eave.name} as measured`,
    description: `Plan of the old framing of ${eave.name} at the plate, outside below, station 0 at the left as seen from outside. Wall ${formatLength(wallIn)}, ${rafters}.`,
  };
}
