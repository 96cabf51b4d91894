import type { EaveDesign } from '../eave/design-document.ts';
import type { RafterSection, SectionInput } from '../eave/section-types.ts';
import { solveSection } from '../eave/solve-section.ts';
import type { DressedSection } from '../lumber/dressed-sizes.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { plateUpIn } from '../survey/wall-line.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';
import { fitFasciaLine, lineHeightIn, plateRise, type FittedLine } from './fascia-line.ts';
import { findOutOfReach, wallPastLine, kickUpTooSteep } from './tail-problems.ts';
import type { FasciaLine, LineInPlan, PlacedRafter, PlateFit } from './layout-types.ts';
import { lineInPlan, planLine, type PlanLine } from './line-in-plan.ts';
import { type OwnEdge, type Setting, standOnLine, tailTopAsFoundIn } from './stand-on-line.ts';
import { centreOf, roofLineAt, type TailPlace } from './tail-place.ts';

/** A tail on its place, brought to the fascia line and solved. */
export type SetTail = {
  readonly place: TailPlace;
  readonly stationIn: number;
  /** The old roof's line where it stands. */
  readonly roof: PlacedRafter;
  readonly edge: OwnEdge;
  readonly wallOutIn: number;
  readonly plateUpIn: number;
  readonly input: SectionInput;
  readonly section: RafterSection;
  readonly fit: PlateFit;
};

/** All tails of an eave on their lines. */
export type SetTails = {
  readonly tails: readonly SetTail[];
  readonly fasciaLine: FasciaLine;
  readonly lineInPlan: LineInPlan;
};

/** What every tail of an eave has in common. [in] */
export type TailsFrame = {
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  /** Place of the eave in the survey, for the path of a problem. */
  readonly surveyIndex: number;
  readonly stock: DressedSection;
  readonly fasciaDepthIn: number;
  /** As stated, level, to the framing. */
  readonly overhangLevelIn: number;
};

/** A tail on its place, before it is brought to a line. */
type Standing = Pick<SetTail, 'place' | 'stationIn' | 'roof' | 'wallOutIn' | 'plateUpIn'> & {
  readonly setting: Setting;
};

/**
 * Brings the tails of an eave to their lines and solves each one's section: in plan to the line parallel to the reference
 * line (or following the wall), so that each has its own overhang on a bowed wall; in elevation to the fascia line, so
 * that each has its own pitch, seat and shim. Nothing is rounded but the fit. Source: trade.md 1.
 * Worked: 16 in. stated, the wall 1 in. out at a tail, 6/12, HAP 5 -> 15 in. there, and its own line ends at 5 - 7.5 = -2.5.
 * @param places - from left to right. [in]
 * @param rafters - whose own lines tell the scatter where no tail stands. [in]
 * @param frame - what the tails have in common. [in]
 * @returns the tails in the order of their places; or the first problem that stops them.
 */
export function setTails(
  places: readonly TailPlace[],
  rafters: readonly PlacedRafter[],
  frame: TailsFrame,
): Result<SetTails, Problem> {
  const { survey, design } = frame;
  const steep = kickUpTooSteep(survey, design, rafters);
  if (steep !== undefined) return fail(steep);
  const plan = planLine(survey, design, frame.overhangLevelIn);
  const standing = places.map((place) => standAt(place, plan, frame));
  const past = wallPastLine(survey, frame.surveyIndex, standing);
  if (past !== undefined) return fail(past);

  const line = fitFasciaLine(
    design.fasciaLine,
    tailsAsFound(standing, rafters, plan, frame),
    plateRise(survey),
  );
  const edged = standing.map((one) => ({ ...one, edge: edgeOf(one, line) }));
  const outOfReach = findOutOfReach(survey, frame.surveyIndex, edged);
  if (outOfReach !== undefined) return fail(outOfReach);

  const tails = edged.map((one) => solveTail(one, frame));
  return ok({
    tails,
    fasciaLine: withScatterAfter(line, tails),
    lineInPlan: lineInPlan(
      plan,
      standing.map(({ place, stationIn, setting: { overhangLevelIn } }) => ({
        id: place.id,
        stationIn,
        overhangLevelIn,
      })),
    ),
  });
}

function standAt(place: TailPlace, plan: PlanLine, { survey, design }: TailsFrame): Standing {
  const stationIn = centreOf(place);
  // A rafter cut back at the gable is replaced over its whole length, too.
  const fullLength = place.method === 'full-length' || place.method === 'end-replacement';
  return {
    place,
    stationIn,
    roof: roofLineAt(place),
    wallOutIn: plan.wallOutAt(stationIn),
    plateUpIn: plateUpIn(survey.plateReadings, stationIn),
    setting: {
      overhangLevelIn: plan.overhangAt(stationIn),
      backspanRatio: design.backspanRatio,
      spanLevelIn: fullLength ? survey.rafterSpanIn : null,
      kickUp: fullLength ? null : kickUpOf(design),
    },
  };
}

function kickUpOf({ kickUpPitchRisePer12, kickUpRaiseIn }: EaveDesign): Setting['kickUp'] {
  return kickUpPitchRisePer12 === null
    ? null
    : { pitchRisePer12: kickUpPitchRisePer12, raiseIn: kickUpRaiseIn };
}

/** Without any tail the old rafters' own lines still tell the scatter. */
function tailsAsFound(
  standing: readonly Standing[],
  rafters: readonly PlacedRafter[],
  plan: PlanLine,
  { survey, design }: TailsFrame,
) {
  const places =
    standing.length > 0
      ? standing
      : rafters.map((roof) => ({
          stationIn: roof.centreIn,
          roof,
          setting: { overhangLevelIn: plan.overhangAt(roof.centreIn), kickUp: kickUpOf(design) },
        }));
  return places.map(({ stationIn, roof, setting }) => ({
    stationIn,
    topIn: plateUpIn(survey.plateReadings, stationIn) + tailTopAsFoundIn(roof, setting),
  }));
}

function edgeOf({ roof, setting, stationIn, plateUpIn: plateIn }: Standing, line: FittedLine): OwnEdge {
  const tailTopIn =
    line.mode === 'as-found' ? tailTopAsFoundIn(roof, setting) : lineHeightIn(line, stationIn) - plateIn;
  return standOnLine(roof, setting, tailTopIn);
}

function solveTail(one: Standing & { readonly edge: OwnEdge }, frame: TailsFrame): SetTail {
  const { place, stationIn, roof, wallOutIn, plateUpIn: plateIn, setting, edge } = one;
  const { survey, design, stock } = frame;
  const input: SectionInput = {
    pitchRisePer12: edge.pitchRisePer12,
    heightAbovePlateIn: edge.heightAbovePlateIn,
    plateWidthIn: survey.plateWidthIn,
    overhangLevelIn: setting.overhangLevelIn,
    depthIn: stock.depthIn,
    tailCut: design.tailCut,
    keptFaceIn: design.tailFaceIn,
    backEnd: design.backEnd,
    backspanRatio: design.backspanRatio,
    spanLevelIn: setting.spanLevelIn,
    clearBackspanIn: roof.clearBackspanIn,
    trimAllowanceIn: design.trimAllowanceIn,
    fasciaDepthIn: frame.fasciaDepthIn,
    fasciaDropIn: design.fascia.dropIn,
    soffit: design.soffit.kind,
    soffitThicknessIn: design.soffit.thicknessIn,
    windowHeadBelowPlateIn: survey.windowHeadBelowPlateIn,
    kickedFrom:
      setting.kickUp === null
        ? null
        : {
            pitchRisePer12: roof.pitchRisePer12,
            heightAbovePlateIn: roof.heightAbovePlateIn,
            rafterDepthIn: place.method === 'block-hung' ? null : roof.depthIn,
            leastLapIn: 2 * design.structure.nailEdgeDistanceIn,
          },
  };
  const section = solveSection(input);
  const fit = fitOf(section, roof);
  return { place, stationIn, roof, edge, wallOutIn, plateUpIn: plateIn, input, section, fit };
}

function fitOf({ bearing, heightAbovePlateIn }: RafterSection, roof: PlacedRafter): PlateFit {
  const notched = bearing.kind === 'notched' ? bearing : { heelCutIn: 0, seatIn: 0 };
  return {
    heelSixteenths: nearestSixteenth(notched.heelCutIn),
    seatSixteenths: nearestSixteenth(notched.seatIn),
    shimSixteenths: nearestSixteenth(bearing.kind === 'shimmed' ? bearing.shimIn : 0),
    aboveRafterSixteenths: nearestSixteenth(heightAbovePlateIn - roof.heightAbovePlateIn),
  };
}

/** A heel cut a little deep, or a shim a little thin, lowers the tail, which turns about its back end. */
function withScatterAfter(line: FittedLine, tails: readonly SetTail[]): FasciaLine {
  if (line.mode === 'as-found')
    return { ...line, highestAfterIn: line.highestIn, lowestAfterIn: line.lowestIn };
  const off = tails.map(({ section, fit }) => {
    const { bearing } = section;
    const raisedIn =
      bearing.kind === 'notched'
        ? bearing.heelCutIn - fit.heelSixteenths / 16
        : bearing.kind === 'shimmed'
          ? fit.shimSixteenths / 16 - bearing.shimIn
          : 0;
    return raisedIn * (1 + section.overhangAlongIn / section.backspanIn);
  });
  return {
    ...line,
    highestAfterIn: off.reduce((most, one) => Math.max(most, one), 0),
    lowestAfterIn: off.reduce((least, one) => Math.min(least, one), 0),
  };
}
