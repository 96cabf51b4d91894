import type { RakeDesign } from '../../eave/design-document.ts';
import type { JobInput } from '../../job/job-file.ts';
import type { JobResult } from '../../job/job-result.ts';
import type { EaveLayout } from '../../layout/layout-types.ts';
import type { Lookout, RakeLayout } from '../../rake/rake-types.ts';
import type { RakeSurvey } from '../../survey/survey-document.ts';
import type { Answer, Place } from '../answer.ts';
import type { CheckGroup } from '../check-types.ts';

/** A rake with everything that its checks read. */
export type RakeToCheck = {
  readonly rake: RakeLayout;
  readonly survey: RakeSurvey;
  readonly design: RakeDesign;
  readonly layout: EaveLayout;
};

/** One check of a rake. */
export type RakeCheck = {
  readonly check: string;
  readonly group: CheckGroup;
  readonly title: string;
  /** Null where the check has nothing to say of a rake built this way. */
  readonly run: (rake: RakeToCheck) => Answer | null;
};

/** Gathers what the checks of one rake read; undefined where one of its documents is gone (a layout has them all). */
export function rakeToCheck(input: JobInput, result: JobResult, rake: RakeLayout): RakeToCheck | undefined {
  const survey = input.survey.rakes.find(({ id }) => id === rake.rakeId);
  const design = input.design.rakes.find(({ rakeId }) => rakeId === rake.rakeId);
  const layout = result.eaves.find(({ eaveId }) => eaveId === rake.eaveId);
  return survey && design && layout && { rake, survey, design, layout };
}

export function wholeRake({ mark, name }: RakeLayout): Place {
  return { where: `Rake ${mark}, ${name}`, stationIn: null };
}

export function atLookout({ mark: rakeMark }: RakeLayout, { mark }: Lookout): Place {
  return { where: `Rake ${rakeMark}, ${mark}`, stationIn: null };
}

/** Lookouts that hang on their nails alone: a ladder's rungs, and those that are butted to the gable rafter's face. */
export function hangsOnNails({ rake, design }: RakeToCheck): boolean {
  return rake.kind === 'ladder' || design.atGableRafter === 'butted';
}
