import { drawElevation } from '../drawings/draw-elevation.ts';
import { drawFasciaLine } from '../drawings/draw-fascia-line.ts';
import { drawPlan, planSizes } from '../drawings/draw-plan.ts';
import { drawPlateDetail } from '../drawings/draw-plate-detail.ts';
import { drawSection } from '../drawings/draw-section.ts';
import { drawWallBow } from '../drawings/draw-wall-bow.ts';
import type { Drawing } from '../drawings/drawing.ts';
import type { SectionReader } from '../drawings/section-notes.ts';
import type { EaveDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';

/** An eave with what it was laid out from. */
export type EaveParts = {
  readonly layout: EaveLayout;
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
};

/** Longest stretch of wall on one plan: 26 ft at 1/4" = 1' 0" is 6-1/2 in. of paper. [in] */
const longestStretchIn = 26 * 12;

/** The eaves of a job in order, each with its survey and design. */
export function eavesWithParts(input: JobInput, eaves: readonly EaveLayout[]): readonly EaveParts[] {
  return eaves.flatMap((layout) => {
    const survey = input.survey.eaves.find((eave) => eave.id === layout.eaveId);
    const design = input.design.eaves.find((eave) => eave.eaveId === layout.eaveId);
    return survey === undefined || design === undefined ? [] : [{ layout, survey, design }];
  });
}

/** The extender whose tail is nearest to the middle of all tails before they are brought to the line. */
export function typicalExtender(layout: EaveLayout): Extender | undefined {
  const byLift = [...layout.extenders].sort((a, b) => a.liftAtTailIn - b.liftAtTailIn);
  return byLift[Math.floor((byLift.length - 1) / 2)];
}

/** Section of an eave at its typical extender. */
export function sectionOf({ layout, survey, design }: EaveParts, reader: SectionReader): Drawing | undefined {
  const extender = typicalExtender(layout);
  return extender === undefined ? undefined : drawSection(layout, extender, survey, design, reader);
}

/** The seat of an eave's typical extender, large. */
export function plateDetailOf({ layout, survey, design }: EaveParts): Drawing | undefined {
  const extender = typicalExtender(layout);
  return extender === undefined ? undefined : drawPlateDetail(layout, extender, survey, design);
}

/**
 * Plans of an eave, a long one in equal stretches.
 * @param longestIn - longest stretch on one plan. [in]
 * @param panelJointsIn - stations where panels of the new deck meet. [in]
 */
export function plansOf(
  { layout, survey, design }: EaveParts,
  longestIn = longestStretchIn,
  panelJointsIn: readonly number[] = [],
): readonly Drawing[] {
  return stretches(layout.wallLengthIn, longestIn).map(({ fromIn, toIn }) =>
    drawPlan(layout, { ...planSizes(survey, design), panelJointsIn, fromIn, toIn }),
  );
}

/** Elevations of an eave's fascia, a long one in equal stretches; none where it has none. */
export function elevationsOf(
  { layout, survey, design }: EaveParts,
  longestIn: number,
  panelJointsIn: readonly number[],
): readonly Drawing[] {
  if (layout.fascia.length === 0) return [];
  return stretches(layout.wallLengthIn, longestIn).map(({ fromIn, toIn }) =>
    drawElevation(layout, survey, design, { panelJointsIn, tailsBy: 'mark', fromIn, toIn }),
  );
}

/** The tails' own heights; nothing to draw where no line was fitted to at least two tails. */
export function fasciaLineOf({ layout }: EaveParts): Drawing | undefined {
  return layout.extenders.length < 2 ? undefined : drawFasciaLine(layout);
}

/** The bow of the wall in plan; nothing to draw on a straight wall. */
export function wallBowOf({ layout, survey }: EaveParts): Drawing | undefined {
  return layout.lineInPlan.bowed ? drawWallBow(layout, survey.wallReadings) : undefined;
}

function stretches(
  wallIn: number,
  longestIn: number,
): readonly { readonly fromIn: number; readonly toIn: number }[] {
  const count = Math.max(1, Math.ceil(wallIn / longestIn));
  return Array.from({ length: count }, (_, index) => ({
    fromIn: (wallIn * index) / count,
    toIn: (wallIn * (index + 1)) / count,
  }));
}
