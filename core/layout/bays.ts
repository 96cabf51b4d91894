import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { Interval } from './in-the-way.ts';
import { clashToleranceIn } from './in-the-way.ts';
import type { Bay, Extender, Occupied, PlacedRafter } from './layout-types.ts';
import { pieceMark } from './marks.ts';

/** A bay narrower than this takes no block. [in] Common practice, no source: a 2x turned on edge no longer fits. */
const leastBlockIn = 1.5;

/**
 * Merges what touches or overlaps along the wall into solid stretches.
 * @param things - in any order. [in]
 * @returns stretches from left to right, with clear space between. [in]
 */
export function solidStretches(things: readonly Interval[]): readonly Interval[] {
  const stretches: Interval[] = [];
  for (const thing of [...things].sort((a, b) => a.leftIn - b.leftIn)) {
    const last = stretches.at(-1);
    if (last !== undefined && thing.leftIn <= last.rightIn + clashToleranceIn) {
      stretches[stretches.length - 1] = {
        leftIn: last.leftIn,
        rightIn: Math.max(last.rightIn, thing.rightIn),
      };
    } else stretches.push({ leftIn: thing.leftIn, rightIn: thing.rightIn });
  }
  return stretches;
}

/** What the bays of an eave are made from. */
export type BaySource = {
  /** In order. [in] */
  readonly rafters: readonly PlacedRafter[];
  /** What stood on the plate before. [in] */
  readonly occupied: readonly Occupied[];
  /** What is new. [in] */
  readonly extenders: readonly Extender[];
  /** Whether blocks are wanted, and the bays left open. */
  readonly blocks: Pick<EaveDesign['blocks'], 'wanted' | 'openBays'>;
  /** Whether old blocks stand between the rafters, and the bays that differ. */
  readonly survey: Pick<EaveSurvey, 'hasOldBlocks' | 'otherOldBlocks'>;
  /** Of the eave, for the marks. */
  readonly letter: string;
};

/**
 * The bays of an eave: the clear distance at the plate between neighbouring members' faces, which is the block's length.
 * A hung tail splits the bay that it stands in. None lies before the first rafter or after the last. A bay is named by the
 * nearest rafter on its left. An old block stays where no tail stands between its two rafters and the bay is not to be
 * open, and then no new one is needed; else it comes out. Beside a hung tail a block is needed even where none are wanted
 * otherwise, since no rafter holds that tail upright at the plate (common practice, no source). Not rounded.
 * Worked: rafters 1-1/2 thick at 16 and 40 with an extender on the first one's right -> one bay of 40 - 16 - 3 = 21 in.
 * @param source - the eave. [in]
 */
export function baysOf({ rafters, occupied, extenders, blocks, survey, letter }: BaySource): readonly Bay[] {
  const first = rafters[0];
  const last = rafters.at(-1);
  if (first === undefined || last === undefined) return [];
  const open = new Set(blocks.openBays);
  const crowded = gapsWithExtender(rafters, extenders);
  const differs = new Set(survey.otherOldBlocks);
  const stretches = solidStretches([...standing(occupied, rafters, extenders), ...extenders]);
  const bays: Bay[] = [];
  let at = 0;
  for (const [index, stretch] of stretches.entries()) {
    const next = stretches[index + 1];
    if (next === undefined || stretch.rightIn < first.centreIn || next.leftIn > last.centreIn) continue;
    while ((rafters[at + 1]?.rightFaceIn ?? Number.POSITIVE_INFINITY) <= stretch.rightIn + clashToleranceIn)
      at += 1;
    const leftRafterId = (rafters[at] ?? first).id;
    const clearIn = next.leftIn - stretch.rightIn;
    const oldBlock = survey.hasOldBlocks !== differs.has(leftRafterId);
    const oldStays = oldBlock && !crowded.has(leftRafterId) && !open.has(leftRafterId);
    const block = oldStays
      ? 'old-stays'
      : !(blocks.wanted || besideHung(stretch.rightIn, next.leftIn, extenders)) || open.has(leftRafterId)
        ? 'left-open'
        : clearIn < leastBlockIn
          ? 'too-narrow'
          : 'block';
    bays.push({
      mark: pieceMark(letter, 'B', bays.length + 1),
      leftRafterId,
      fromIn: stretch.rightIn,
      toIn: next.leftIn,
      clearIn,
      block,
      // One old block stands between two rafters, even where something else splits the gap into two bays.
      oldBlockOut: oldBlock && !oldStays && bays.at(-1)?.leftRafterId !== leftRafterId,
    });
  }
  return bays;
}

/** What stands on the plate: an old rafter that is cut back for a new tail in its place does so no more. */
function standing(
  occupied: readonly Occupied[],
  rafters: readonly PlacedRafter[],
  extenders: readonly Extender[],
): readonly Occupied[] {
  const replaced = new Set(
    extenders
      .filter(({ method }) => method === 'end-replacement')
      .map(({ rafterNumber }) => rafters[rafterNumber - 1]?.leftFaceIn),
  );
  return occupied.filter(({ kind, leftIn }) => kind !== 'rafter' || !replaced.has(leftIn));
}

function besideHung(fromIn: number, toIn: number, extenders: readonly Extender[]): boolean {
  return extenders.some(
    ({ method, leftIn, rightIn }) => method === 'block-hung' && (rightIn === fromIn || leftIn === toIn),
  );
}

/** Ids of the rafters on whose right, before the next rafter, a new tail stands. */
function gapsWithExtender(
  rafters: readonly PlacedRafter[],
  extenders: readonly Extender[],
): ReadonlySet<string> {
  return new Set(
    extenders.flatMap(({ method, side, rafterNumber, rafterId }) => {
      if (method === 'end-replacement') return [];
      if (method === 'block-hung' || side === 'right') return [rafterId];
      const before = rafters[rafterNumber - 2];
      return before === undefined ? [] : [before.id];
    }),
  );
}
