import type { EaveDesign, RakeDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey, RakeSurvey } from '../survey/survey-document.ts';

/** Everything that a rake is laid out from. */
export type RakeParts = {
  readonly survey: RakeSurvey;
  readonly design: RakeDesign;
  /** Places in the documents, for the paths of problems. */
  readonly surveyIndex: number;
  readonly designIndex: number;
  readonly eave: EaveSurvey;
  readonly eaveDesign: EaveDesign;
  readonly layout: EaveLayout;
};

/** Faces into the house from the gable wall's framing face, of what lies between two stations. [in] */
export function insideFaces(
  { survey, layout }: Pick<RakeParts, 'survey' | 'layout'>,
  { leftIn, rightIn }: { readonly leftIn: number; readonly rightIn: number },
): { readonly outerInsideIn: number; readonly innerInsideIn: number } {
  return survey.end === 'left'
    ? { outerInsideIn: leftIn, innerInsideIn: rightIn }
    : { outerInsideIn: layout.wallLengthIn - rightIn, innerInsideIn: layout.wallLengthIn - leftIn };
}

/** The old rafter at the gable: the first or the last of its eave; undefined where none was read. */
export function gableRafterOf({
  survey,
  layout,
}: Pick<RakeParts, 'survey' | 'layout'>): PlacedRafter | undefined {
  return survey.end === 'left' ? layout.rafters[0] : layout.rafters.at(-1);
}

/** The tails that are fastened to the gable rafter, or stand in its place: lookouts cross them. */
export function gableTailsOf(parts: Pick<RakeParts, 'survey' | 'layout'>): readonly Extender[] {
  const gable = gableRafterOf(parts);
  return parts.layout.extenders.filter(
    ({ rafterId, method }) => rafterId === gable?.id && method !== 'block-hung',
  );
}

/**
 * The gable rafter's faces, from the gable wall's framing face into the house. A thickness measured at the gable counts
 * from the middle that the eave's reading gives. [in]
 */
export function gableFaces(
  parts: Pick<RakeParts, 'survey' | 'layout'>,
  gable: PlacedRafter,
): ReturnType<typeof insideFaces> {
  const thicknessIn = parts.survey.endRafterThicknessIn ?? gable.thicknessIn;
  return insideFaces(parts, {
    leftIn: gable.centreIn - thicknessIn / 2,
    rightIn: gable.centreIn + thicknessIn / 2,
  });
}
