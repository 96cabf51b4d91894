import { formatLength } from '../units/format-length.ts';
import { assumedLongestFasciaIn, type BrokenFascia } from './fascia-joints.ts';
import type { Finding } from './layout-types.ts';

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
