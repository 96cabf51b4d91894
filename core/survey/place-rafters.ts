import { assertNever, fail, ok, type Result } from '../result.ts';
import type { Problem, ProblemKind } from '../problems/problem.ts';
import type { Occupied, PlacedRafter } from '../layout/layout-types.ts';
import { occupiedPlaces } from './occupied-places.ts';
import type { EaveSurvey, RafterSurvey } from './survey-document.ts';

/** The rafters of an eave on their stations, and everything that stands on the plate. */
export type PlacedEave = {
  readonly rafters: readonly PlacedRafter[];
  readonly occupied: readonly Occupied[];
};

/** What a tape held along a wall can be off by before a rafter counts as misplaced. [in] */
const tapeToleranceIn = 1 / 16;

/**
 * Puts the readings of an eave on the wall line, station 0 at its left end as seen from outside, and checks that they
 * can stand there: in order, clear of each other, on the wall.
 *
 * Running readings are taken as they stand, to the centre, the near (left) face or the far (right) face. Readings bay by
 * bay accumulate: `bays-clear` from far face to near face, `bays-centres` from centre to centre, the first from the
 * wall's end. Nothing is rounded. Worked: bays clear 14-1/2, 22-1/2 with rafters 1-1/2 thick -> centres 15-1/4, 39-1/4.
 * @param eave - the survey of one eave. [in]
 * @param eaveIndex - its place in the survey, for the path of a problem. [-]
 * @returns rafters and occupied places [in]; or the first problem from station 0, with the path of its entry.
 */
export function placeRafters(eave: EaveSurvey, eaveIndex: number): Result<PlacedEave, Problem> {
  const path = `survey.eaves.${eaveIndex}.rafters`;
  if (eave.rafters.length === 0) return fail({ code: 'no-rafters', eave: eave.name, field: path });

  const seen = new Set<string>();
  const rafters: PlacedRafter[] = [];
  for (const [index, reading] of eave.rafters.entries()) {
    if (seen.has(reading.id)) {
      return fail({ code: 'duplicate-id', what: 'rafter id', id: reading.id, field: `${path}.${index}.id` });
    }
    seen.add(reading.id);
    const previous = rafters.at(-1);
    const placed = placeOne(eave, reading, index, previous);
    const problem = misplaced(eave, placed, previous, reading, eave.rafters[index - 1]);
    if (problem !== undefined) return fail({ ...problem, field: `${path}.${index}.readingIn` });
    rafters.push(placed);
  }
  return ok({ rafters, occupied: occupiedPlaces(eave, rafters) });
}

function placeOne(
  eave: EaveSurvey,
  reading: RafterSurvey,
  index: number,
  previous: PlacedRafter | undefined,
): PlacedRafter {
  const thicknessIn = reading.thicknessIn ?? eave.rafterThicknessIn;
  const centreIn = centreOf(eave, reading.readingIn, thicknessIn, previous);
  return {
    id: reading.id,
    number: index + 1,
    centreIn,
    leftFaceIn: centreIn - thicknessIn / 2,
    rightFaceIn: centreIn + thicknessIn / 2,
    thicknessIn,
    depthIn: reading.depthIn ?? eave.rafterDepthIn,
    pitchRisePer12: reading.pitchRisePer12 ?? eave.pitchRisePer12,
    heightAbovePlateIn: reading.heightAbovePlateIn ?? eave.heightAbovePlateIn,
    clearBackspanIn: reading.clearBackspanIn ?? eave.clearBackspanIn,
    condition: reading.condition,
  };
}

function centreOf(
  eave: EaveSurvey,
  readingIn: number,
  thicknessIn: number,
  previous: PlacedRafter | undefined,
): number {
  switch (eave.readingMode) {
    case 'bays-clear':
      return (previous?.rightFaceIn ?? 0) + readingIn + thicknessIn / 2;
    case 'bays-centres':
      return (previous?.centreIn ?? 0) + readingIn;
    case 'running':
      return (
        readingIn + { centre: 0, 'near-face': thicknessIn / 2, 'far-face': -thicknessIn / 2 }[eave.readingTo]
      );
    default:
      return assertNever(eave.readingMode);
  }
}

function misplaced(
  eave: EaveSurvey,
  placed: PlacedRafter,
  previous: PlacedRafter | undefined,
  reading: RafterSurvey,
  previousReading: RafterSurvey | undefined,
): ProblemKind | undefined {
  const rafter = String(placed.number);
  const running = eave.readingMode === 'running';
  const stationIn = running ? reading.readingIn : placed.centreIn;
  if (previous !== undefined && previousReading !== undefined) {
    if (running && reading.readingIn < previousReading.readingIn) {
      const previousIn = previousReading.readingIn;
      return { code: 'rafter-out-of-order', eave: eave.name, rafter, stationIn, previousIn };
    }
    const overlapIn = previous.rightFaceIn - placed.leftFaceIn;
    if (overlapIn > tapeToleranceIn) {
      return {
        code: 'rafters-overlap',
        eave: eave.name,
        rafter,
        previous: String(previous.number),
        overlapIn,
      };
    }
  }
  const end =
    placed.leftFaceIn < -tapeToleranceIn
      ? 'left'
      : placed.rightFaceIn > eave.lengthIn + tapeToleranceIn
        ? 'right'
        : undefined;
  return end === undefined
    ? undefined
    : { code: 'rafter-past-wall', eave: eave.name, rafter, stationIn, wallIn: eave.lengthIn, end };
}
