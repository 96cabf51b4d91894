import type { EaveDesign } from '../eave/design-document.ts';
import type { DressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { largestGap } from './largest-gap.ts';
import type { LayoutMeans } from './layout-means.ts';
import type { Extender, FasciaRun, Occupied, PanelJoint, PlacedRafter } from './layout-types.ts';
import { jointToleranceIn, panelJoints } from './panel-joints.ts';
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
 * The old wall as the solver takes it, with the gap that is let stand and the joints that want a tail.
 * @param source - survey, design and what follows from them. [in]
 */
export function wallOf({ survey, design, rafters, occupied, stock, means, run }: WallSource): Wall {
  const { sheathing, layout } = design;
  const [fromIn, toIn] = [run.left.faceIn, run.right.faceIn];
  const wanted = sheathing.kind === 'panels' && layout.panelJointsOnTails;
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
    jointsIn: wanted ? panelJoints(fromIn, toIn, means.sheetLengthIn) : [],
    jointToleranceIn: jointToleranceIn(stock.thicknessIn),
  };
}

/**
 * The joints that want a tail, each with the tail that stands under it.
 * @param wall - as the solver took it. [in]
 * @param extenders - where the tails stand. [in]
 */
export function jointsOnTails(
  { jointsIn, jointToleranceIn: toleranceIn }: Pick<Wall, 'jointsIn' | 'jointToleranceIn'>,
  extenders: readonly Pick<Extender, 'id' | 'centreIn'>[],
): readonly PanelJoint[] {
  return jointsIn.map((stationIn) => ({
    stationIn,
    extenderId:
      extenders.find(({ centreIn }) => Math.abs(centreIn - stationIn) <= toleranceIn + 1e-9)?.id ?? null,
  }));
}
