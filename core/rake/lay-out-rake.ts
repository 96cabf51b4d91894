import { edgeBoards } from '../eave/edge-boards.ts';
import type { Stock } from '../eave/stock.ts';
import type { PlacedRafter } from '../layout/layout-types.ts';
import { dressedSection, type DressedSection } from '../lumber/dressed-sizes.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { slopeAngleDeg } from '../units/pitch.ts';
import { bargeLineOf, bargeTopIn, type BargeLine } from './barge-line.ts';
import { findInRake } from './find-in-rake.ts';
import { makeLookouts, makeRungs } from './make-lookouts.ts';
import { rakeBoards } from './rake-boards.ts';
import { cornerOf } from './rake-corner.ts';
import { rakeMark } from './rake-mark.ts';
import { gableFaces, gableRafterOf, type RakeParts } from './rake-parts.ts';
import { rakeStripOf } from './rake-strip.ts';
import type { GableRafter, RakeLayout } from './rake-types.ts';
import { spaceLookouts } from './space-lookouts.ts';

/** What the price list says of the boards and panels of a rake. [in] */
export type RakeBuying = {
  /** Usable length of the longest board of each stock; null where none has a price. */
  readonly longestIn: (stock: Stock) => number | null;
  /** Length of a sheathing panel; null where none is chosen. */
  readonly sheetLengthIn: number | null;
};

/**
 * Lays out one rake on its eave: the barge rafter's line from the ridge to the eave's fascia line, lookouts or a ladder,
 * barge, rails and rake fascia with their joints, the corner with the eave's fascia, the new sheathing, and what the
 * person should know. Cut lengths are rounded to sixteenths as each says; nothing else is. Source: trade.md 1 and 4.
 * @param parts - the rake as measured and designed, on a laid-out eave; its kind is not `none`. [in]
 * @param buying - lengths on the price list. [in]
 * @returns the layout; or the problem that stops it, with the path of its entry.
 */
export function layOutRake(parts: RakeParts, buying: RakeBuying): Result<RakeLayout, Problem> {
  const { survey, design, layout, eaveDesign } = parts;
  const { kind } = design;
  const placed = gableRafterOf(parts);
  const sizes = sizesOf(parts);
  if (kind === 'none' || placed === undefined || sizes === undefined)
    throw new Error(`rake ${survey.id} is laid out without a design, an eave or known lumber`);
  const gable = gableOf(parts, placed);
  const { lookout, barge, fascia, eaveFascia } = sizes;
  const line = bargeLineOf(parts, placed, design.overhangIn - barge.thicknessIn / 2);
  const slope = line.pitchRisePer12 / 12;
  if (slope <= 0) return fail(notRising(parts));

  const corner = cornerOf({
    overhangIn: design.overhangIn,
    tailCut: eaveDesign.tailCut,
    slopeFactor: line.slopeFactor,
    subFasciaIn: edgeBoards(eaveDesign).subFasciaIn,
    eaveFascia,
    rakeFascia: fascia,
  });
  const wallAlongIn = line.eaveOverhangIn * line.slopeFactor;
  const strip = rakeStripOf(
    parts,
    { wallAlongIn, alongIn: line.alongIn, edgeAlongIn: -corner.rakeLongAlongIn },
    fascia?.thicknessIn ?? 0,
    buying.sheetLengthIn,
  );

  const flat = kind === 'lookouts' && design.lookoutLaid === 'flat';
  const [widthIn, depthIn] = flat
    ? [lookout.depthIn, lookout.thicknessIn]
    : [lookout.thicknessIn, lookout.depthIn];
  const ridgeCutIn = (line.runIn - survey.ridgeThicknessIn / 2 + line.eaveOverhangIn) * line.slopeFactor;
  const places = spaceLookouts({
    widthIn,
    topIn: ridgeCutIn - depthIn * slope,
    largestIn: design.spacingIn,
    jointsIn: strip?.jointsIn ?? [],
  });
  const mark = rakeMark(parts.surveyIndex);
  const size = { rakeMark: mark, widthIn, bargeThicknessIn: barge.thicknessIn };
  if (design.overhangIn <= barge.thicknessIn) return fail(noOverhangLeft(parts));
  const made =
    kind === 'ladder'
      ? makeRungs(parts, line, { ...size, railThicknessIn: lookout.thicknessIn }, places)
      : makeLookouts(parts, line, size, places);
  if (!made.ok) return made;

  const run = {
    rakeMark: mark,
    slope,
    lowerCut: eaveDesign.tailCut,
    lookoutsIn: places.map(({ alongIn }) => alongIn),
  };
  const laid: Omit<RakeLayout, 'findings'> = {
    rakeId: survey.id,
    name: survey.name.trim(),
    mark,
    eaveId: layout.eaveId,
    eaveLetter: layout.letter,
    eaveName: layout.name,
    end: survey.end,
    kind,
    gable,
    runIn: line.runIn,
    ridgeThicknessIn: survey.ridgeThicknessIn,
    eaveOverhangIn: line.eaveOverhangIn,
    tailCut: eaveDesign.tailCut,
    overhangIn: design.overhangIn,
    pitchRisePer12: line.pitchRisePer12,
    slopeFactor: line.slopeFactor,
    slopeAngleDeg: slopeAngleDeg(line.pitchRisePer12),
    tailTopIn: line.tailTopIn,
    ridgeTopIn: line.ridgeTopIn,
    alongIn: line.alongIn,
    wallAlongIn,
    aboveGableIn: aboveGable(line, gable),
    lookoutStock: design.lookout,
    bargeStock: design.barge,
    fasciaStock: design.fascia.wanted ? design.fascia.stock : null,
    lookoutWidthIn: widthIn,
    lookoutDepthIn: depthIn,
    notch: kind === 'lookouts' && design.atGableRafter === 'notched' ? { depthIn, widthIn } : null,
    bargeSize: barge,
    fasciaSize: fascia,
    largestSpacingIn: design.spacingIn,
    lookouts: made.value,
    barge: rakeBoards({
      ...run,
      kind: 'G',
      fromIn: 0,
      toIn: ridgeCutIn,
      depthIn: barge.depthIn,
      thicknessIn: barge.thicknessIn,
      bevelJoints: false,
      longestIn: buying.longestIn(design.barge),
    }),
    rails:
      kind === 'ladder'
        ? rakeBoards({
            ...run,
            kind: 'R',
            fromIn: 0,
            toIn: ridgeCutIn,
            depthIn: lookout.depthIn,
            thicknessIn: lookout.thicknessIn,
            bevelJoints: false,
            longestIn: buying.longestIn(design.lookout),
          })
        : [],
    fascia:
      fascia === null
        ? []
        : rakeBoards({
            ...run,
            kind: 'F',
            fromIn: -corner.rakeLongAlongIn,
            toIn: line.alongIn,
            depthIn: fascia.depthIn,
            thicknessIn: fascia.thicknessIn,
            bevelJoints: true,
            longestIn: buying.longestIn(design.fascia.stock),
          }),
    corner,
    strip,
  };
  return ok({ ...laid, findings: findInRake(parts, laid) });
}

function sizesOf({ design, eaveDesign }: RakeParts):
  | {
      readonly lookout: DressedSection;
      readonly barge: DressedSection;
      readonly fascia: DressedSection | null;
      readonly eaveFascia: DressedSection;
    }
  | undefined {
  const lookout = dressedSection(design.lookout.section);
  const barge = dressedSection(design.barge.section);
  const fascia = design.fascia.wanted ? dressedSection(design.fascia.stock.section) : null;
  const eaveFascia = dressedSection(eaveDesign.fascia.stock.section);
  return lookout && barge && eaveFascia && fascia !== undefined
    ? { lookout, barge, fascia, eaveFascia }
    : undefined;
}

/** The gable rafter, in the rake's own sizes where those were measured. */
function gableOf(parts: RakeParts, placed: PlacedRafter): GableRafter {
  const { survey } = parts;
  return {
    rafterId: placed.id,
    number: placed.number,
    ...gableFaces(parts, placed),
    depthIn: survey.endRafterDepthIn ?? placed.depthIn,
    pitchRisePer12: survey.pitchRisePer12 ?? placed.pitchRisePer12,
    heightAbovePlateIn: placed.heightAbovePlateIn,
  };
}

function aboveGable(line: BargeLine, gable: GableRafter): number {
  return bargeTopIn(line, 0) - gable.heightAbovePlateIn;
}

function notRising({ survey, surveyIndex }: RakeParts): Problem {
  return {
    code: 'entry-invalid',
    what: survey.name.trim(),
    detail:
      "its barge rafter would not rise from the eave's fascia line to the ridge. Measure pitch and run of the gable again.",
    field: `survey.rakes.${surveyIndex}.runIn`,
  };
}

function noOverhangLeft({ survey, design, designIndex }: RakeParts): Problem {
  return {
    code: 'entry-invalid',
    what: `${survey.name.trim()}, overhang`,
    detail: `the barge rafter of ${design.barge.section} takes all of it. Enter more, or a thinner barge rafter.`,
    field: `design.rakes.${designIndex}.overhangIn`,
  };
}
