import type { Lookout } from './rake-types.ts';

/** Where a lookout or rung goes along the slope, and why. */
export type LookoutPlace = Pick<Lookout, 'alongIn' | 'because'>;

/** Clear of the eave's fascia, of the ridge cut, and between two lookouts, so that a nail can be driven. [in] Common practice, no source. */
export const nailingRoomIn = 1.5;

/** Binary dust under which a span counts as a whole number of spacings. [-] */
const dust = 1e-9;

/**
 * Spaces lookouts or rungs up the slope: the first next to the eave's fascia, the last next to the ridge, one under each
 * joint of the panels, and between them as few as keep the largest spacing, evenly divided. Where a joint lies so close
 * to the first or the last that both would not be nailed, that one moves under the joint. Source: trade.md 4; even
 * division and nailing room are common practice, no source. Not rounded.
 * Worked: 178 long, lookouts 3-1/2 wide, at most 24: first at 3-1/4, last at 174-3/4, 171.5 / 24 -> 8 spaces of 21.44.
 * @param run.widthIn - of a lookout along the slope. [in]
 * @param run.topIn - along the slope, where the ridge cut leaves a lookout's whole depth. [in]
 * @param run.largestIn - largest spacing on centre. [in]
 * @param run.jointsIn - of the panels, along the slope. [in]
 * @returns from the eave up; one in the middle where there is no room for two.
 */
export function spaceLookouts(run: {
  readonly widthIn: number;
  readonly topIn: number;
  readonly largestIn: number;
  readonly jointsIn: readonly number[];
}): readonly LookoutPlace[] {
  const { widthIn, topIn, largestIn } = run;
  const firstIn = widthIn / 2 + nailingRoomIn;
  const lastIn = topIn - widthIn / 2 - nailingRoomIn;
  const apartIn = widthIn + nailingRoomIn;
  if (lastIn - firstIn < apartIn) return [{ alongIn: topIn / 2, because: 'eave' }];

  let fixed: readonly LookoutPlace[] = [
    { alongIn: firstIn, because: 'eave' },
    { alongIn: lastIn, because: 'ridge' },
  ];
  for (const alongIn of run.jointsIn) {
    if (alongIn < firstIn || alongIn > lastIn) continue;
    const joint: LookoutPlace = { alongIn, because: 'panel-joint' };
    fixed = [...fixed.filter((place) => Math.abs(place.alongIn - alongIn) >= apartIn), joint];
  }
  const inOrder = fixed.toSorted((a, b) => a.alongIn - b.alongIn);
  return inOrder.flatMap((place, index) => {
    const next = inOrder[index + 1];
    if (next === undefined) return [place];
    const spanIn = next.alongIn - place.alongIn;
    const spaces = Math.max(1, Math.ceil(spanIn / largestIn - dust));
    const between = Array.from(
      { length: spaces - 1 },
      (_, step): LookoutPlace => ({
        alongIn: place.alongIn + (spanIn * (step + 1)) / spaces,
        because: 'spacing',
      }),
    );
    return [place, ...between];
  });
}
