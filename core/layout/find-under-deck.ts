import type { EaveDesign } from '../eave/design-document.ts';
import { dressedSections } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatInches } from '../units/format-length.ts';
import { slopeFactor } from '../units/pitch.ts';
import type { Extender, Finding, PlacedRafter } from './layout-types.ts';
import { roofLineAt } from './tail-place.ts';
import { casesOfTails, tellOnce, type Case } from './say-findings.ts';

/** Less than this rounds to nothing on a tape, and is not told. [in] */
const untoldIn = 1 / 32;
/** An old deck gives way by this much without being loosened. [in] Common practice, no source. */
const deckGivesIn = 1 / 8;

/** A tail with the old roof's line where it stands. */
type Pair = { readonly extender: Extender; readonly roof: PlacedRafter };

/**
 * What an old deck that stays on leaves room for: the deepest board that slides in between it and the plate, and the
 * extenders whose top edge would lift it, because their tails are brought up to the fascia line.
 * @param survey - of the eave.
 * @param design - of the eave.
 * @param extenders - placed and solved, in order. [in]
 * @param rafters - in order. [in]
 * @param depthIn - actual depth of the extender stock. [in]
 */
export function findUnderDeck(
  survey: EaveSurvey,
  design: EaveDesign,
  extenders: readonly Extender[],
  rafters: readonly PlacedRafter[],
  depthIn: number,
): readonly Finding[] {
  const pairs = extenders.map((extender): Pair => {
    const rafter = rafters[extender.rafterNumber - 1];
    if (rafter === undefined) throw new Error('an extender without its rafter');
    const rightRafter = extender.method === 'block-hung' ? (rafters[extender.rafterNumber] ?? null) : null;
    return { extender, roof: roofLineAt({ ...extender, rafter, rightRafter }) };
  });
  return [...findInsertion(survey, design, pairs, depthIn), ...findLifted(survey, pairs)];
}

function findInsertion(
  survey: EaveSurvey,
  design: EaveDesign,
  pairs: readonly Pair[],
  depthIn: number,
): readonly Finding[] {
  // The old deck lies on the old rafter, so the room under it follows from the rafter's own edge, or from the extender's
  // where that one is turned down.
  const tight = pairs.flatMap(({ extender, roof }): readonly Case[] => {
    const underDeckIn = roof.heightAbovePlateIn / slopeFactor(roof.pitchRisePer12);
    const room = Math.min(underDeckIn, extender.section.deepestInsertIn);
    return casesOfTails([extender], () => (depthIn > room + untoldIn ? room : null));
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

function findLifted(survey: EaveSurvey, pairs: readonly Pair[]): readonly Finding[] {
  const lifted = pairs.flatMap(({ extender, roof }): readonly Case[] => {
    const { tailTopAbovePlateIn, tailDropIn } = extender.section;
    const liftAtWallIn = tailTopAbovePlateIn + tailDropIn - roof.heightAbovePlateIn;
    return casesOfTails([extender], () => (liftAtWallIn > deckGivesIn ? liftAtWallIn : null));
  });
  return tellOnce(survey.id, lifted, {
    topic: 'under-deck',
    structural: false,
    say: (lift) =>
      `with its tail on the fascia line the extender stands ${lift} above the rafter at the wall, against the old deck that stays on. Loosen the deck there, or strip it.`,
  });
}
