import type { EaveDesign } from '../eave/design-document.ts';
import type { RafterSection } from '../eave/section-types.ts';
import { assertNever } from '../result.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatInches } from '../units/format-length.ts';
import { findUnderDeck } from './find-under-deck.ts';
import type { EaveLayout, Finding } from './layout-types.ts';
import { casesOfTails, tellOnce, type Telling } from './say-findings.ts';
import { waysOutSentence } from './ways-out-words.ts';

/** Least bearing on wood. [in] Source: IRC R802.6. */
const leastBearingIn = 1.5;
/** Less than this rounds to nothing on a tape, and is not told. [in] */
const untoldIn = 1 / 32;

/**
 * What the sections of an eave's extenders have to tell: backspan, bearing, notch, fascia cover, window head, and
 * what a deck that stays on leaves room for. Structural ones are advisory, and say what was found, never approval.
 * @param survey - of the eave.
 * @param design - of the eave.
 * @param laid - the eave: tails placed and solved, rafters, head-room. [in]
 * @param depthIn - actual depth of the extender stock. [in]
 */
export function findInSections(
  survey: EaveSurvey,
  design: EaveDesign,
  { extenders, rafters, headRoom }: Pick<EaveLayout, 'extenders' | 'rafters' | 'headRoom'>,
  depthIn: number,
): readonly Finding[] {
  const tell = (figure: (section: RafterSection) => number | null, telling: Telling): readonly Finding[] =>
    tellOnce(
      survey.id,
      casesOfTails(extenders, ({ section }) => figure(section)),
      telling,
    );
  return [
    ...tell(
      // A kick-up that leaves its rafter too early is told as that.
      (section) =>
        section.backspanIn < section.backspanWantedIn - untoldIn &&
        section.backspanIn < (section.kickUp?.leavesRafterIn ?? Number.POSITIVE_INFINITY) - untoldIn
          ? section.backspanRatio
          : null,
      {
        topic: 'backspan-short',
        structural: true,
        say: (ratio) =>
          `the clear backspan lets the piece reach back only ${ratio} times what it sticks out, ${design.backspanRatio} wanted.`,
        write: (ratio) => ratio.toFixed(2),
      },
    ),
    ...tell(
      // Packers of a kick-up are meant, and told with it.
      ({ bearing, kickUp }) =>
        bearing.kind === 'shimmed' && bearing.shimIn >= untoldIn && kickUp === null ? bearing.shimIn : null,
      {
        topic: 'no-bearing',
        structural: true,
        say: (shim, count) =>
          `the extender clears the plate by ${shim} and does not bear without a bearing shim of that height. Shims: ${count} of ${shim}, listed with the pieces.`,
      },
    ),
    ...tell(({ bearing }) => shortBearing(bearing), {
      topic: 'seat-short',
      structural: true,
      say: (length) =>
        `the extender bears on ${length} of the plate; at least ${formatInches(leastBearingIn)} on wood is asked for (IRC R802.6).`,
    }),
    ...tell(
      ({ bearing, throatIn }) => (bearing.kind === 'notched' && throatIn > untoldIn ? throatIn : null),
      {
        topic: 'throat',
        structural: true,
        say: (throat) =>
          `${throat} of ${formatInches(depthIn)} is left above the notch, square to the slope. Notch rules differ (no deeper than a quarter of the depth at an end, ${formatInches(depthIn / 4)} here; or a sixth, ${formatInches(depthIn / 6)}; or at least 3-1/2" left where the overhang is 24" or less): ask the building department which one holds.`,
      },
    ),
    ...tell(
      ({ bearing, throatIn }) => (bearing.kind === 'notched' && throatIn <= untoldIn ? throatIn : null),
      {
        topic: 'throat',
        structural: true,
        say: () =>
          'nothing is left above the notch: the plate stands as high as the rafter. Measure the height above plate again.',
      },
    ),
    ...tell(({ fasciaSpareIn }) => (fasciaSpareIn < -untoldIn ? -fasciaSpareIn : null), {
      topic: 'fascia-cover',
      structural: false,
      say: (short) =>
        `the ${design.fascia.stock.section} fascia is ${short} too narrow to cover the tail's cut${design.fascia.dropIn > 0 ? ' and its drop' : ''}. Choose a deeper fascia, or a square or shallower tail.`,
    }),
    ...tell(({ windowHeadClearanceIn: room }) => (room !== null && room < -untoldIn ? -room : null), {
      topic: 'window-head',
      structural: false,
      say: (low) =>
        `the ${design.soffit.kind === 'open' ? 'tails come' : 'soffit comes'} ${low} below the lowest window or door head. ${waysOutSentence(headRoom?.waysOut ?? [])}`,
    }),
    ...tell(({ overhangLevelIn, squareTailSetbackIn }) => insideWall(squareTailSetbackIn - overhangLevelIn), {
      topic: 'tail-short',
      structural: false,
      say: (inside) =>
        `the square cut brings the tail's lower corner ${inside} inside the wall face. Choose a plumb cut, or more overhang.`,
    }),
    ...(survey.deckStaysOn ? findUnderDeck(survey, design, extenders, rafters, depthIn) : []),
  ];
}

function shortBearing(bearing: RafterSection['bearing']): number | null {
  switch (bearing.kind) {
    case 'notched':
      return bearing.bearingLengthIn < leastBearingIn - untoldIn ? bearing.bearingLengthIn : null;
    case 'on-corner':
      return 0;
    case 'shimmed':
      return bearing.shimIn < untoldIn ? 0 : null;
    default:
      return assertNever(bearing);
  }
}

function insideWall(insideIn: number): number | null {
  return insideIn > untoldIn ? insideIn : null;
}
