import type { EaveDesign } from '../eave/design-document.ts';
import type { DressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { jointsOfCourse, layCourse } from '../takeoff/panel-layout.ts';
import { panelGapIn } from '../takeoff/sheathing-strip.ts';
import { largestGap } from './largest-gap.ts';
import type { LayoutMeans } from './layout-means.ts';
import type { Extender, FasciaRun, Occupied, PanelJoint, PlacedRafter } from './layout-types.ts';
import { jointToleranceIn } from './panel-joints.ts';
import type { Wall } from './solver/wall.ts';

/** What the solver takes of survey and design. [in] */
export type WallSource = {
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  readonly rafters: readonly PlacedRafter[];
  readonly occupied: readonly Occupied[];
  /** Of the extenders. */
  readonly stock: DressedSection;
  readonly means: LayoutMeans;
  readonly run: Pick<FasciaRun, 'left' | 'right'>;
};

/**
 * The old wall as the solver takes it, with the gap that is let stand and the panels whose joints want a tail.
 * @param source - survey, design and what follows from them. [in]
 */
export function wallOf({ survey, design, rafters, occupied, stock, means, run }: WallSource): Wall {
  const [fromIn, toIn] = [run.left.faceIn, run.right.faceIn];
  const whole = jointsMatter(design) && design.layout.wholePanels;
  return {
    rafters,
    occupied,
    lengthIn: survey.lengthIn,
    thicknessIn: stock.thicknessIn,
    design,
    asBuilt: means.asBuilt,
    weights: means.rules.weights,
    spanKnown: survey.rafterSpanIn !== null,
    fromIn,
    toIn,
    largestGapIn: largestGap(design, means.rules).gapIn,
    wholeSheetIn: whole ? means.sheetLengthIn : null,
    jointToleranceIn: jointToleranceIn(stock.thicknessIn),
  };
}

/**
 * The joints between the panels of the lowest course of new sheathing, as it is laid on the tails, each with the tail that
 * carries it; none where they are not asked to land on tails.
 * @param design - of the eave.
 * @param run - of the fascia. [in]
 * @param tails - where they stand. [in]
 * @param sheetLengthIn - of one panel, along the eave. [in]
 */
export function panelJoints(
  design: EaveDesign,
  run: WallSource['run'],
  tails: readonly Extender[],
  sheetLengthIn: number,
): readonly PanelJoint[] {
  if (!jointsMatter(design)) return [];
  const course = {
    fromIn: run.left.faceIn,
    toIn: run.right.faceIn,
    tails,
    boardIn: sheetLengthIn,
    gapIn: panelGapIn,
  };
  return jointsOfCourse(layCourse(course)).map(({ stationIn, tailId }) => ({
    stationIn,
    extenderId: tailId,
  }));
}

function jointsMatter({ sheathing, layout }: EaveDesign): boolean {
  return sheathing.kind === 'panels' && layout.panelJointsOnTails;
}
