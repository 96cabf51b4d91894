import { fail, ok, type Result } from '../result.ts';
import type { EaveDesign } from '../eave/design-document.ts';
import { edgeBoards } from '../eave/edge-boards.ts';
import { levelOverhang } from '../eave/level-overhang.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Problem } from '../problems/problem.ts';
import { placeRafters } from '../survey/place-rafters.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { baysOf } from './bays.ts';
import { eaveIndex } from './eave-letter.ts';
import { edgeRuns, noMeetings, type Meetings } from './eave-ends.ts';
import { breakFascia, jointsOf } from './fascia-joints.ts';
import { findFasciaGaps, findFreeEnds } from './find-fascia-gaps.ts';
import { findInLayout } from './find-in-layout.ts';
import { findInPlan } from './find-in-plan.ts';
import { findInSections } from './find-in-sections.ts';
import { findKickUp } from './find-kick-up.ts';
import { findOddReadings } from './find-odd-readings.ts';
import { findOutOfLine } from './find-out-of-line.ts';
import { largestGap } from './largest-gap.ts';
import { headRoom } from './head-room.ts';
import { plainMeans, type LayoutMeans } from './layout-means.ts';
import type { EaveLayout } from './layout-types.ts';
import { makeExtenders } from './make-extenders.ts';
import { placeTails } from './place-tails.ts';
import { setTails } from './set-tails.ts';
import { panelJoints, wallOf } from './wall-of.ts';

/** An eave whose ends meet nothing. */
const freeEdge = { meetings: noMeetings, longestSubFasciaIn: null };

/**
 * Lays out one eave: rafters on their stations, an extender beside each where one fits, tails on the fascia line, every
 * section solved, bays, fascia boards, and what the person should know. Blank lengths are rounded up to a sixteenth;
 * nothing else is rounded. Source: trade.md 1 and 3.
 * Worked: rafters at 16, 40, 64 with a joist right of the second -> extenders A-E01 right, A-E02 left (moved), A-E03 right.
 * @param survey - of the eave. [in]
 * @param design - of the eave. [in]
 * @param letter - that its marks begin with, as `eaveLetter` gives it: A is the survey's first eave.
 * @param longestFasciaIn - usable length of the longest fascia board that can be bought; null assumes 16 ft. [in]
 * @param edge - what the eave's ends meet, and the same of the sub-fascia. [in]
 * @param means - the shop's rules, and what can be bought. [in]
 * @returns the layout; or the first problem that stops it.
 */
export function layOutEave(
  survey: EaveSurvey,
  design: EaveDesign,
  letter: string,
  longestFasciaIn: number | null,
  edge: { readonly meetings: Meetings; readonly longestSubFasciaIn: number | null } = freeEdge,
  means: LayoutMeans = plainMeans,
): Result<EaveLayout, Problem> {
  const placedEave = placeRafters(survey, eaveIndex(letter));
  if (!placedEave.ok) return placedEave;
  const { rafters, occupied } = placedEave.value;

  const stock = dressedSection(design.extender.section);
  if (stock === undefined) return unknownSection(design.extender.section, 'the extenders');
  const fasciaStock = dressedSection(design.fascia.stock.section);
  if (fasciaStock === undefined) return unknownSection(design.fascia.stock.section, 'the fascia');
  const overhang = levelOverhang(design, survey.pitchRisePer12, edgeBoards(design).thicknessIn, survey.name);
  if (!overhang.ok) return overhang;

  const runsOver = (tailCentresIn: readonly number[]) =>
    edgeRuns({ letter, wallLengthIn: survey.lengthIn, design, tailCentresIn }, edge.meetings, {
      fasciaIn: longestFasciaIn,
      subFasciaIn: edge.longestSubFasciaIn,
    });
  const wall = wallOf({ survey, design, rafters, occupied, stock, means, run: runsOver([]).fascia });
  const missing = missingSpan(survey, design, eaveIndex(letter));
  if (missing !== undefined) return fail(missing);
  const placed = placeTails(wall);
  const { tails, unplaced } = placed;
  const frame = {
    survey,
    design,
    surveyIndex: eaveIndex(letter),
    stock,
    fasciaDepthIn: fasciaStock.depthIn,
    overhangLevelIn: overhang.value,
  };
  const set = setTails(tails, rafters, frame);
  if (!set.ok) return set;
  const { fasciaLine, lineInPlan } = set.value;
  const extenders = makeExtenders(set.value.tails, { survey, rafters, letter, fillers: means.fillers });

  const runs = runsOver(extenders.map(({ centreIn }) => centreIn));
  const fascia = breakFascia(runs.fascia);
  const subFascia =
    runs.subFascia === null ? { pieces: [], gaps: [] } : breakFascia(runs.subFascia, jointsOf(fascia.pieces));

  const laid = {
    eaveId: survey.id,
    name: survey.name.trim(),
    letter,
    wallLengthIn: survey.lengthIn,
    overhangLevelIn: overhang.value,
    rafters,
    occupied,
    extenders,
    unplaced,
    bays: baysOf({ rafters, occupied, extenders, blocks: design.blocks, survey, letter }),
    largestGap: largestGap(design, means.rules),
    panelJoints: panelJoints(design, runs.fascia, extenders, means.sheetLengthIn),
    fascia: fascia.pieces,
    fasciaLengthIn: fascia.pieces.reduce((sum, { fromIn, toIn }) => sum + toIn - fromIn, 0),
    fasciaRun: runs.fascia,
    subFascia: subFascia.pieces,
    subFasciaRun: runs.subFascia,
    fasciaLine,
    lineInPlan,
    headRoom: headRoom({ places: tails, rafters, frame, set: set.value }),
    ends: design.ends,
  } satisfies Omit<EaveLayout, 'findings'>;
  return ok({
    ...laid,
    findings: [
      ...findInLayout({ laid, surveyIndex: eaveIndex(letter), wall, placed }),
      ...findFasciaGaps(survey.id, fascia.gaps, longestFasciaIn),
      ...findFreeEnds(laid, fascia.gaps),
      ...findOutOfLine(survey.id, rafters),
      ...findOddReadings(survey),
      ...findInPlan(laid, design),
      ...findKickUp(laid, design),
      ...findInSections(survey, design, laid, stock.depthIn),
    ],
  });
}

/** A whole rafter that is pinned cannot be cut while the old ones' span is not known. */
function missingSpan(survey: EaveSurvey, design: EaveDesign, surveyIndex: number): Problem | undefined {
  if (survey.rafterSpanIn !== null) return undefined;
  const rafter = survey.rafters.findIndex(({ id }, index) => {
    const pin = design.pins.find(({ rafterId }) => rafterId === id);
    const isEnd = index === 0 || index === survey.rafters.length - 1;
    return (
      pin?.side !== 'none' && (pin?.method === 'full-length' || (pin?.method === 'end-replacement' && isEnd))
    );
  });
  return rafter < 0
    ? undefined
    : {
        code: 'entry-invalid',
        what: `${survey.name}, rafter span`,
        detail: `rafter ${rafter + 1} is to get a whole new one, whose length follows from it. Enter the span, or change that pin.`,
        field: `survey.eaves.${surveyIndex}.rafterSpanIn`,
      };
}

function unknownSection(section: string, use: string): Result<never, Problem> {
  return fail({ code: 'unknown-section', section, use });
}
