import type { EaveDesign } from '../eave/design-document.ts';
import type { RafterSection } from '../eave/section-types.ts';
import { dressedSections } from '../lumber/dressed-sizes.ts';
import { assertNever } from '../result.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatInches } from '../units/format-length.ts';
import { slopeFactor } from '../units/pitch.ts';
import type { Extender, Finding, PlacedRafter } from './layout-types.ts';
import { tellOnce, type Case, type Telling } from './say-findings.ts';

/** Least bearing on wood. [in] Source: IRC R802.6. */
const leastBearingIn = 1.5;
/** Less than this rounds to nothing on a tape, and is not told. [in] */
const untoldIn = 1 / 32;

/**
 * What the sections of an eave's extenders have to tell: backspan, bearing, notch, fascia cover, window head, and whether
 * the stock slides in under a deck that stays on. Structural ones are advisory, and say what was found, never approval.
 * @param survey - of the eave.
 * @param design - of the eave.
 * @param extenders - placed and solved, in order. [in]
 * @param rafters - in order. [in]
 * @param depthIn - actual depth of the extender stock. [in]
 */
export function findInSections(
  survey: EaveSurvey,
  design: EaveDesign,
  extenders: readonly Extender[],
  rafters: readonly PlacedRafter[],
  depthIn: number,
): readonly Finding[] {
  const tell = (figure: (section: RafterSection) => number | null, telling: Telling): readonly Finding[] =>
    tellOnce(survey.id, casesOf(extenders, figure), telling);
  return [
    ...tell(
      (section) => (section.backspanIn < section.backspanWantedIn - untoldIn ? section.backspanRatio : null),
      {
        topic: 'backspan-short',
        structural: true,
        say: (ratio) =>
          `the clear backspan lets the piece reach back only ${ratio} times what it sticks out, ${design.backspanRatio} wanted.`,
        write: (ratio) => ratio.toFixed(2),
      },
    ),
    ...tell(
      ({ bearing }) => (bearing.kind === 'shimmed' && bearing.shimIn >= untoldIn ? bearing.shimIn : null),
      {
        topic: 'no-bearing',
        structural: true,
        say: (shim) =>
          `the extender clears the plate by ${shim} and does not bear without a bearing shim of that height.`,
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
          'nothing is left above the notch: the plate stands as high as the rafter. Measure the height above plate again, or choose shallower stock.',
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
        `the ${design.soffit.kind === 'open' ? 'tails come' : 'soffit comes'} ${low} below the lowest window or door head. Try ${design.soffit.kind === 'level' ? 'a shallower tail, less overhang, or a sloped soffit' : 'shallower stock'}.`,
    }),
    ...(survey.deckStaysOn ? findInsertion(survey, design, extenders, rafters, depthIn) : []),
  ];
}

function findInsertion(
  survey: EaveSurvey,
  design: EaveDesign,
  extenders: readonly Extender[],
  rafters: readonly PlacedRafter[],
  depthIn: number,
): readonly Finding[] {
  // The old deck lies on the old rafter, so the room under it follows from the rafter's own edge, or from the extender's
  // where that one is turned down.
  const roomOf = (extender: Extender): number => {
    const rafter = rafters[extender.rafterNumber - 1];
    if (rafter === undefined) throw new Error('an extender without its rafter');
    const underDeckIn = rafter.heightAbovePlateIn / slopeFactor(rafter.pitchRisePer12);
    return Math.min(underDeckIn, extender.section.deepestInsertIn);
  };
  const tight = extenders.flatMap((extender): readonly Case[] => {
    const room = roomOf(extender);
    const { rafterNumber: number, centreIn: stationIn } = extender;
    return depthIn > room + untoldIn ? [{ number, stationIn, value: room }] : [];
  });
  const least = tight.reduce((room, { value }) => Math.min(room, value), Number.POSITIVE_INFINITY);
  const fitting = dressedSections.findLast(
    ({ nominalThicknessIn, depthIn: deep }) =>
      nominalThicknessIn === 2 && deep >= 3.5 && deep <= least + untoldIn,
  );
  const wayOut =
    fitting === undefined
      ? 'No 2x4 or deeper fits: strip the deck.'
      : `The deepest that fits everywhere is a ${fitting.section}: use that, or strip the deck.`;
  return tellOnce(survey.id, tight, {
    topic: 'insertion',
    structural: false,
    say: (room) =>
      `between the plate and the old deck there is room for ${room} of depth, and a ${design.extender.section} is ${formatInches(depthIn)} deep. ${wayOut}`,
  });
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

function casesOf(
  extenders: readonly Extender[],
  figure: (section: RafterSection) => number | null,
): readonly Case[] {
  return extenders.flatMap(({ rafterNumber: number, centreIn: stationIn, section }) => {
    const value = figure(section);
    return value === null ? [] : [{ number, stationIn, value }];
  });
}
