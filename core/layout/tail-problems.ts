import type { EaveDesign } from '../eave/design-document.ts';
import type { Problem } from '../problems/problem.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { PlacedRafter } from './layout-types.ts';
import { type OwnEdge, type Setting, steepnessOf } from './stand-on-line.ts';

/** Less framing than this is no overhang. [in] */
const leastOverhangIn = 1 / 16;

/** A tail with its top edge, at its rafter. */
type Edged = {
  readonly roof: PlacedRafter;
  readonly edge: OwnEdge;
  readonly setting: Pick<Setting, 'kickUp'>;
};

/** The first tail that cannot come to the line, at the reading that lies furthest off it: most likely a slip. */
export function findOutOfReach(
  survey: EaveSurvey,
  surveyIndex: number,
  edged: readonly Edged[],
): Problem | undefined {
  for (const { roof, edge, setting } of edged) {
    const steepness = steepnessOf(edge, roof, setting.kickUp !== null);
    if (steepness === 'buildable') continue;
    const furthest = edged.reduce((most, one) => (offLineIn(one) > offLineIn(most) ? one : most));
    const { number } = furthest.roof;
    return {
      code: 'tail-out-of-reach',
      eave: survey.name,
      rafter: String(roof.number),
      liftIn: edge.liftAtTailIn,
      steepness,
      furthestRafter: String(number),
      furthestLiftIn: furthest.edge.liftAtTailIn,
      field: `survey.eaves.${surveyIndex}.rafters.${number - 1}.heightAbovePlateIn`,
    };
  }
  return undefined;
}

function offLineIn({ edge }: Edged): number {
  return Math.abs(edge.liftAtTailIn);
}

/** Where the wall bows out so far that it reaches the line of the tails, at its outermost reading. */
export function wallPastLine(
  survey: EaveSurvey,
  surveyIndex: number,
  tails: readonly {
    readonly stationIn: number;
    readonly wallOutIn: number;
    readonly setting: { readonly overhangLevelIn: number };
  }[],
): Problem | undefined {
  const past = tails.find(({ setting }) => setting.overhangLevelIn < leastOverhangIn);
  if (past === undefined) return undefined;
  const { wallReadings } = survey;
  const outermost = wallReadings.reduce(
    (most, { outIn }, index) => (outIn > (wallReadings[most]?.outIn ?? outIn) ? index : most),
    0,
  );
  return {
    code: 'wall-past-line',
    eave: survey.name,
    stationIn: past.stationIn,
    outIn: past.wallOutIn,
    field: `survey.eaves.${surveyIndex}.wallReadings.${outermost}.outIn`,
  };
}

/**
 * Flatter than the flattest rafter by at least this, or the kick-up hardly leaves the roof's plane, and a raised one breaks
 * far up the roof. [in/12 in] Common practice, no source.
 */
export const leastKickRisePer12 = 0.5;

/** A kicked-up tail is flatter than every rafter of the eave. */
export function kickUpTooSteep(
  survey: EaveSurvey,
  { kickUpPitchRisePer12: kickUp }: EaveDesign,
  rafters: readonly PlacedRafter[],
): Problem | undefined {
  const flattest = rafters.reduce<PlacedRafter | undefined>(
    (least, one) => (least === undefined || one.pitchRisePer12 < least.pitchRisePer12 ? one : least),
    undefined,
  );
  if (
    kickUp === null ||
    flattest === undefined ||
    flattest.pitchRisePer12 >= kickUp + leastKickRisePer12 - 1e-9
  )
    return undefined;
  return {
    code: 'kick-up-not-flatter',
    eave: survey.name,
    kickUpRisePer12: kickUp,
    rafter: String(flattest.number),
    rafterRisePer12: flattest.pitchRisePer12,
    // The layout knows the design, but not its place among the others.
    field: 'design.eaves.0.kickUpPitchRisePer12',
  };
}
