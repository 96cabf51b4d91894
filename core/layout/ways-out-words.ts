import { assertNever } from '../result.ts';
import { formatInches } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import type { WayOut } from './layout-types.ts';

/**
 * The ways to clear a head in one sentence, in their order.
 * @returns e.g. `Ways out, cheapest first: 3-1/2" left of the tails' face, their underside cut level; or 13" of overhang.`;
 * where there is none, that none was found.
 */
export function waysOutSentence(ways: readonly WayOut[]): string {
  if (ways.length === 0)
    return 'No level cut, shorter overhang, sloped soffit, shallower stock or kick-up that was tried clears it.';
  const [only, second] = ways.map(wayWords);
  return second === undefined
    ? `Way out: ${only}.`
    : `Ways out, cheapest first: ${ways.map(wayWords).join('; or ')}.`;
}

/** One way in words, with its number. */
function wayWords(way: WayOut): string {
  switch (way.kind) {
    case 'level-cut':
      return `${formatInches(way.faceIn)} left of the tails' face, their underside cut level`;
    case 'less-overhang':
      return `${formatInches(way.overhangIn)} of overhang`;
    case 'sloped-soffit':
      return `a sloped soffit, with ${formatInches(way.roomIn)} to spare`;
    case 'kick-up':
      return `tails kicked up to ${formatPitch(way.pitchRisePer12)}`;
    case 'shallower-stock':
      return `tails of ${way.section}`;
    default:
      return assertNever(way);
  }
}
