import { formatLength } from '../units/format-length.ts';
import { assumedLongestFasciaIn, type BrokenFascia } from './fascia-joints.ts';
import type { EaveLayout, Finding } from './layout-types.ts';

/**
 * Tells where the fascia finds no tail to break on within the reach of the longest board. The layout goes on, so that a
 * survey can be seen while it is still being typed; the board that is too long is named again where it cannot be bought.
 * @param eaveId - of the eave.
 * @param gaps - stretches without a tail. [in]
 * @param longestIn - usable length of the longest board; null where a 16 ft board was assumed. [in]
 */
export function findFasciaGaps(
  eaveId: string,
  gaps: BrokenFascia['gaps'],
  longestIn: number | null,
): readonly Finding[] {
  const board =
    longestIn === null
      ? `a board of ${formatLength(assumedLongestFasciaIn)}, which is assumed,`
      : `the longest board, ${formatLength(longestIn)} usable,`;
  return gaps.map(({ fromIn, toIn }) => ({
    eaveId,
    stationIn: (fromIn + toIn) / 2,
    topic: 'fascia-gap',
    text: `The fascia has no tail to break on for ${formatLength(toIn - fromIn)}, from ${formatLength(fromIn)} to ${formatLength(toIn)}, and ${board} does not reach. Enter the rafters there, set a tail between, or add a longer length to the price list.`,
    structural: false,
  }));
}

/** Fascia and sheathing further past the last tail than this ask for a look at what they may span. [in] */
const wideEndIn = 24;

/**
 * Tells where fascia and sheathing run more than 24 in. past the first or last tail with nothing to nail to.
 * @param laid - the eave so far; ends that no board reaches are told by `findFasciaGaps`. [in]
 * @param gaps - stretches without a tail. [in]
 */
export function findFreeEnds(
  laid: Pick<EaveLayout, 'eaveId' | 'extenders' | 'fascia'>,
  gaps: BrokenFascia['gaps'],
): readonly Finding[] {
  const [firstTail, firstBoard] = [laid.extenders[0], laid.fascia[0]];
  const [lastTail, lastBoard] = [laid.extenders.at(-1), laid.fascia.at(-1)];
  if (firstTail === undefined || lastTail === undefined) return [];
  const ends = [
    { side: 'left', word: 'first', fromIn: firstBoard?.fromIn ?? 0, toIn: firstTail.centreIn },
    { side: 'right', word: 'last', fromIn: lastTail.centreIn, toIn: lastBoard?.toIn ?? 0 },
  ];
  return ends
    .filter(({ fromIn, toIn }) => toIn - fromIn > wideEndIn + 1 / 32)
    .filter((end) => gaps.every(({ fromIn, toIn }) => fromIn !== end.fromIn || toIn !== end.toIn))
    .map(({ side, word, fromIn, toIn }) => ({
      eaveId: laid.eaveId,
      stationIn: (fromIn + toIn) / 2,
      topic: 'wide-gap',
      text: `The fascia's ${side} end stands ${formatLength(toIn - fromIn)} past the ${word} tail. Over ${wideEndIn}": look up what the fascia and the sheathing may reach, or set a tail there.`,
      structural: true,
    }));
}
