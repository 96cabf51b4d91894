import type { Result } from '../result.ts';
import { fail, ok } from '../result.ts';
import { pieceMark } from '../layout/marks.ts';
import type { Problem } from '../problems/problem.ts';
import { formatLength } from '../units/format-length.ts';
import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import type { BargeLine } from './barge-line.ts';
import { levelOf } from './barge-line.ts';
import { crossingAt } from './crossed-members.ts';
import { gableFaces, gableRafterOf, type RakeParts } from './rake-parts.ts';
import type { CrossedMember, Lookout } from './rake-types.ts';
import type { LookoutPlace } from './space-lookouts.ts';

/** What lookouts and rungs share. [in] */
export type LookoutSize = {
  readonly rakeMark: string;
  /** Along the slope. */
  readonly widthIn: number;
  /** Of the barge rafter. */
  readonly bargeThicknessIn: number;
};

/**
 * The lookouts of a rake, square at both ends, level across it. Let in, each runs from the barge rafter's inner face to the
 * near face of the first member inside; butted, it stops at the outer face of what it would cross, and a block goes on
 * behind. What reaches the barge runs long by the trimming allowance and is rounded up to a sixteenth; a block is rounded
 * down, so that it fits. Source: geometry, trade.md 4.
 * Worked: overhang 12 to a barge 1-1/2 thick, first rafter inside at 15-1/4, 1 in. to trim -> 10-1/2 + 15-1/4 + 1 = 26-3/4.
 * @param parts - the rake and its eave. [in]
 * @param line - of the barge rafter. [in]
 * @param places - along the slope. [in]
 * @returns a problem where no rafter inside the gable is known.
 */
export function makeLookouts(
  parts: RakeParts,
  line: BargeLine,
  size: LookoutSize,
  places: readonly LookoutPlace[],
): Result<readonly Lookout[], Problem> {
  const lookouts: Lookout[] = [];
  for (const [index, place] of places.entries()) {
    const levelIn = levelOf(line, place.alongIn);
    const halfIn = size.widthIn / 2 / line.slopeFactor;
    const { crosses, meets } = crossingAt(parts, { fromIn: levelIn - halfIn, toIn: levelIn + halfIn });
    const inside = meets ?? overTheHouse(parts);
    if (inside === null) return fail(noRafterInside(parts));
    lookouts.push(makeLookout(parts, size, { ...place, levelIn }, index + 1, { crosses, meets, inside }));
  }
  return ok(lookouts);
}

function makeLookout(
  parts: RakeParts,
  size: LookoutSize,
  place: LookoutPlace & { readonly levelIn: number },
  number: number,
  at: {
    readonly crosses: readonly CrossedMember[];
    readonly meets: CrossedMember | null;
    readonly inside: CrossedMember;
  },
): Lookout {
  const { design } = parts;
  const [outer = at.inside] = at.crosses;
  const outIn = design.overhangIn - size.bargeThicknessIn;
  const innerFaceIn = Math.max(...at.crosses.map(({ innerInsideIn }) => innerInsideIn));
  const butted = design.atGableRafter === 'butted' && at.crosses.length > 0;
  const lengthIn = outIn + (butted ? outer.outerInsideIn : at.inside.outerInsideIn);
  return {
    mark: pieceMark(size.rakeMark, 'K', number),
    ...place,
    lengthIn,
    lengthSixteenths: sixteenthsUp(lengthIn + design.trimAllowanceIn),
    crosses: at.crosses,
    meets: at.meets,
    backspanIn: at.inside.outerInsideIn - outer.outerInsideIn,
    overhangIn: design.overhangIn + outer.outerInsideIn,
    block: butted
      ? {
          mark: pieceMark(size.rakeMark, 'B', number),
          lengthSixteenths: sixteenthsDown(at.inside.outerInsideIn - innerFaceIn),
        }
      : null,
  };
}

/**
 * The rungs of a ladder, square at both ends, between the inner rail and the barge rafter; rounded down, so that they fit.
 * Worked: overhang 9 to a barge 1-1/2 thick, rail 1-1/2, siding 3/4 left on -> 9 - 1-1/2 - 1-1/2 - 3/4 = 5-1/4.
 * @returns a problem where nothing is left between rail and barge.
 */
export function makeRungs(
  parts: RakeParts,
  line: BargeLine,
  size: LookoutSize & { readonly railThicknessIn: number },
  places: readonly LookoutPlace[],
): Result<readonly Lookout[], Problem> {
  const { design, survey, designIndex } = parts;
  const takenIn = size.bargeThicknessIn + size.railThicknessIn + survey.finishIn;
  const lengthIn = design.overhangIn - takenIn;
  if (lengthIn < leastRungIn)
    return fail({
      code: 'entry-invalid',
      what: `${survey.name.trim()}, overhang of ${formatLength(design.overhangIn)}`,
      detail: `it leaves no room for rungs between a rail and a barge rafter that take ${formatLength(takenIn)}. Enter at least ${formatLength(takenIn + leastRungIn)}, or thinner lumber.`,
      field: `design.rakes.${designIndex}.overhangIn`,
    });
  return ok(
    places.map((place, index) => ({
      mark: pieceMark(size.rakeMark, 'K', index + 1),
      ...place,
      levelIn: levelOf(line, place.alongIn),
      lengthIn,
      lengthSixteenths: sixteenthsDown(lengthIn),
      crosses: [],
      meets: null,
      backspanIn: null,
      overhangIn: null,
      block: null,
    })),
  );
}

/** A shorter rung cannot be nailed at both ends. [in] Common practice, no source. */
const leastRungIn = 1.5;

/** The first member inside over the house, for a lookout past the wall where no tail stands further in. */
function overTheHouse(parts: RakeParts): CrossedMember | null {
  return crossingAt(parts, { fromIn: -1, toIn: 0 }).meets;
}

function noRafterInside(parts: RakeParts): Problem {
  const { survey, surveyIndex } = parts;
  const gable = gableRafterOf(parts);
  const atLeast =
    gable === undefined
      ? ''
      : ` It stands more than ${formatLength(gableFaces(parts, gable).innerInsideIn)} in.`;
  return {
    code: 'entry-invalid',
    what: survey.name.trim(),
    detail: `no rafter inside the gable is known for its lookouts to run back to. Enter how far in the first one stands, or choose a ladder.${atLeast}`,
    field: `survey.rakes.${surveyIndex}.firstInsideIn`,
  };
}
