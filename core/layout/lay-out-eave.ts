import { fail, ok, type Result } from '../result.ts';
import type { EaveDesign } from '../eave/design-document.ts';
import { levelOverhang } from '../eave/level-overhang.ts';
import { solveSection } from '../eave/solve-section.ts';
import { dressedSection, type DressedSection } from '../lumber/dressed-sizes.ts';
import type { Problem } from '../problems/problem.ts';
import { placeRafters } from '../survey/place-rafters.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { sixteenthsUp } from '../units/sixteenths.ts';
import { baysOf } from './bays.ts';
import { chooseSides, type SideChoice } from './choose-sides.ts';
import { eaveIndex } from './eave-letter.ts';
import { breakFascia } from './fascia-joints.ts';
import { fitFasciaLine, lineHeightIn } from './fascia-line.ts';
import { findFasciaGaps, findFreeEnds } from './find-fascia-gaps.ts';
import { findInLayout } from './find-in-layout.ts';
import { findInSections } from './find-in-sections.ts';
import { findOutOfLine } from './find-out-of-line.ts';
import type { EaveLayout, Extender, FasciaLine, Unplaced } from './layout-types.ts';
import { pieceMark } from './marks.ts';
import { type OwnEdge, standOnLine, steepnessOf, tailTopAsFoundIn } from './stand-on-line.ts';

/** A choice of side that stands. */
type Placed = Extract<SideChoice, { kind: 'placed' }>;

/**
 * Lays out one eave: rafters on their stations, an extender beside each where one fits, tails on the fascia line, every
 * section solved, bays, fascia boards, and what the person should know. Blank lengths are rounded up to a sixteenth;
 * nothing else is rounded. Source: trade.md 1 and 3.
 * Worked: rafters at 16, 40, 64 with a joist right of the second -> extenders A-E01 right, A-E02 left (moved), A-E03 right.
 * @param survey - of the eave. [in]
 * @param design - of the eave. [in]
 * @param letter - that its marks begin with, as `eaveLetter` gives it: A is the survey's first eave.
 * @param longestFasciaIn - usable length of the longest fascia board that can be bought; null assumes 16 ft. [in]
 * @returns the layout; or the first problem that stops it.
 */
export function layOutEave(
  survey: EaveSurvey,
  design: EaveDesign,
  letter: string,
  longestFasciaIn: number | null,
): Result<EaveLayout, Problem> {
  const placedEave = placeRafters(survey, eaveIndex(letter));
  if (!placedEave.ok) return placedEave;
  const { rafters, occupied } = placedEave.value;

  const stock = dressedSection(design.extender.section);
  if (stock === undefined) return unknownSection(design.extender.section, 'the extenders');
  const fasciaStock = dressedSection(design.fascia.stock.section);
  if (fasciaStock === undefined) return unknownSection(design.fascia.stock.section, 'the fascia');
  const overhang = levelOverhang(design, survey.pitchRisePer12, fasciaStock.thicknessIn, survey.name);
  if (!overhang.ok) return overhang;

  const choices = chooseSides(rafters, occupied, survey.lengthIn, stock.thicknessIn, design);
  const placed = choices.filter((choice): choice is Placed => choice.kind === 'placed');
  const fasciaLine = fitFasciaLine(
    design.fasciaLine,
    // Without any extender the old rafters' own lines still tell the scatter.
    (placed.length > 0 ? placed : rafters.map((rafter) => ({ rafter, ...facesOf(rafter) }))).map((one) => ({
      stationIn: centreOf(one),
      topIn: tailTopAsFoundIn(one.rafter, overhang.value),
    })),
  );
  const sizes = { survey, design, stock, fasciaStock, overhangLevelIn: overhang.value };
  const edged = placed.map((choice) => ({ choice, edge: edgeOf(choice, sizes, fasciaLine) }));
  const outOfReach = findOutOfReach(survey, eaveIndex(letter), edged);
  if (outOfReach !== undefined) return fail(outOfReach);
  const extenders = edged.map(({ choice, edge }) => makeExtender(choice, edge, sizes, letter));

  const fascia = breakFascia({
    letter,
    fromIn: -design.fascia.pastLeftIn,
    toIn: survey.lengthIn + design.fascia.pastRightIn,
    tailCentresIn: extenders.map(({ centreIn }) => centreIn),
    thicknessIn: fasciaStock.thicknessIn,
    bevelJoints: design.fascia.bevelJoints,
    longestIn: longestFasciaIn,
  });

  const laid = {
    eaveId: survey.id,
    name: survey.name.trim(),
    letter,
    wallLengthIn: survey.lengthIn,
    overhangLevelIn: overhang.value,
    rafters,
    occupied,
    extenders,
    unplaced: choices.flatMap(unplacedOf),
    bays: baysOf(rafters, occupied, extenders, design.blocks, survey.hasOldBlocks, letter),
    fascia: fascia.pieces,
    fasciaLengthIn: fascia.pieces.reduce((sum, { fromIn, toIn }) => sum + toIn - fromIn, 0),
    fasciaLine,
    ends: design.ends,
  } satisfies Omit<EaveLayout, 'findings'>;
  return ok({
    ...laid,
    findings: [
      ...findInLayout(laid),
      ...findFasciaGaps(survey.id, fascia.gaps, longestFasciaIn),
      ...findFreeEnds(laid, fascia.gaps),
      ...findOutOfLine(survey.id, rafters),
      ...findInSections(survey, design, extenders, rafters, stock.depthIn),
    ],
  });
}

type Sizes = {
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  readonly stock: DressedSection;
  readonly fasciaStock: DressedSection;
  readonly overhangLevelIn: number;
};

/** The extender's own top edge, once its tail stands where the fascia line has it. */
function edgeOf(choice: Placed, { design, overhangLevelIn }: Sizes, line: FasciaLine): OwnEdge {
  const { rafter } = choice;
  const tailTopIn =
    line.mode === 'as-found'
      ? tailTopAsFoundIn(rafter, overhangLevelIn)
      : lineHeightIn(line, centreOf(choice));
  return standOnLine(rafter, overhangLevelIn, design.backspanRatio, tailTopIn);
}

/** An extender on its side, with its top edge. */
type Edged = { readonly choice: Placed; readonly edge: OwnEdge };

function offLineIn({ edge }: Edged): number {
  return Math.abs(edge.liftAtTailIn);
}

/** The first tail that cannot come to the line, at the reading that lies furthest off it: most likely a slip. */
function findOutOfReach(
  survey: EaveSurvey,
  surveyIndex: number,
  edged: readonly Edged[],
): Problem | undefined {
  for (const { choice, edge } of edged) {
    const steepness = steepnessOf(edge, choice.rafter);
    if (steepness === 'buildable') continue;
    const furthest = edged.reduce((most, one) => (offLineIn(one) > offLineIn(most) ? one : most));
    const { number } = furthest.choice.rafter;
    return {
      code: 'tail-out-of-reach',
      eave: survey.name,
      rafter: String(choice.rafter.number),
      liftIn: edge.liftAtTailIn,
      steepness,
      furthestRafter: String(number),
      furthestLiftIn: furthest.edge.liftAtTailIn,
      field: `survey.eaves.${surveyIndex}.rafters.${number - 1}.heightAbovePlateIn`,
    };
  }
  return undefined;
}

function makeExtender(choice: Placed, edge: OwnEdge, sizes: Sizes, letter: string): Extender {
  const { survey, design, stock, fasciaStock, overhangLevelIn } = sizes;
  const { rafter, side, because, clash, leftIn, rightIn } = choice;
  const section = solveSection({
    pitchRisePer12: edge.pitchRisePer12,
    heightAbovePlateIn: edge.heightAbovePlateIn,
    plateWidthIn: survey.plateWidthIn,
    overhangLevelIn,
    depthIn: stock.depthIn,
    tailCut: design.tailCut,
    backspanRatio: design.backspanRatio,
    clearBackspanIn: rafter.clearBackspanIn,
    trimAllowanceIn: design.trimAllowanceIn,
    fasciaDepthIn: fasciaStock.depthIn,
    fasciaDropIn: design.fascia.dropIn,
    soffit: design.soffit.kind,
    soffitThicknessIn: design.soffit.thicknessIn,
    windowHeadBelowPlateIn: survey.windowHeadBelowPlateIn,
  });
  return {
    id: rafter.id,
    method: 'side',
    mark: pieceMark(letter, 'E', rafter.number),
    rafterId: rafter.id,
    rafterNumber: rafter.number,
    side,
    centreIn: centreOf(choice),
    leftIn,
    rightIn,
    because,
    clash,
    section,
    liftAtTailIn: edge.liftAtTailIn,
    pitchRisePer12: edge.pitchRisePer12,
    blankSixteenths: sixteenthsUp(section.blankLengthIn),
    wallOutIn: 0,
    overhangLevelIn,
    filler: null,
    headers: [],
    inPlace: false,
  };
}

function unplacedOf(choice: SideChoice): readonly Unplaced[] {
  if (choice.kind === 'placed') return [];
  const { rafter, reason, left, right } = choice;
  return [
    { rafterId: rafter.id, rafterNumber: rafter.number, stationIn: rafter.centreIn, reason, left, right },
  ];
}

function facesOf(rafter: { readonly leftFaceIn: number; readonly rightFaceIn: number }) {
  return { leftIn: rafter.leftFaceIn, rightIn: rafter.rightFaceIn };
}

function centreOf({ leftIn, rightIn }: { readonly leftIn: number; readonly rightIn: number }): number {
  return (leftIn + rightIn) / 2;
}

function unknownSection(section: string, use: string): Result<never, Problem> {
  return fail({ code: 'unknown-section', section, use });
}
