import type { EaveLayout } from '../layout/layout-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';

type Laid = Pick<EaveLayout, 'letter' | 'overhangLevelIn' | 'lineInPlan'>;

/**
 * What the overhang is measured from and to, and on a bowed wall how far the tails' own overhangs differ, for every sheet
 * that tells an overhang.
 * @returns e.g. `1' 4" level, from the wall's framing face to the tails' top corners`; on a bowed wall
 *   `1' 4" level, from the straight reference line of the wall readings to the tails' top corners; the tails themselves
 *   stick out 15-5/16" (at 9' 5-1/2") to 15-7/8" (at 1' 5-1/2") of the bowed wall`.
 */
export function overhangWords({ overhangLevelIn, lineInPlan }: Laid): string {
  const { kind, from, bowed, wallMeanOutIn, least, most } = lineInPlan;
  const stated = `${formatLength(overhangLevelIn)} level`;
  if (!bowed) return `${stated}, from the wall's framing face to the tails' top corners`;
  if (kind === 'follow')
    return `${stated}, from the bowed wall's framing face at each tail to its top corner; the fascia follows the bow`;
  const datum = {
    'reference-line': 'the straight reference line of the wall readings',
    'wall-mean': `the wall's mean, ${offsetWords(wallMeanOutIn)} the straight reference line of the wall readings,`,
  }[from];
  const range =
    least === null || most === null
      ? ''
      : `; the tails themselves stick out ${formatInches(least.overhangIn)} (at ${formatLength(least.stationIn)}) to ${formatInches(most.overhangIn)} (at ${formatLength(most.stationIn)}) of the bowed wall`;
  return `${stated}, from ${datum} to the tails' top corners${range}`;
}

/** The overhang of each eave, for the facts at a sheet's head. */
export function overhangFacts(eaves: readonly Laid[]): readonly (readonly [string, string])[] {
  return eaves.map((layout) => [`Overhang of ${layout.letter}`, overhangWords(layout)]);
}

function offsetWords(outIn: number): string {
  return outIn < 0 ? `${formatInches(-outIn)} inside` : `${formatInches(outIn)} outside`;
}
