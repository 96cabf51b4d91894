import type { Bearing, SectionInput } from './section-types.ts';

/** Binary dust below which the bottom edge counts as meeting the plate's corner. [in] */
const dustIn = 1e-9;

/**
 * How the extender meets the plate. Notched where its plumb depth is more than the height above plate: heel cut
 * d s - HAP at the wall face, level seat (d s - HAP) / m, notch depth square to the slope d - HAP cos t. The seat ends
 * at the latest where it runs out at the back end, so a pitch near 0 gives no endless seat, and bears on no more than the plate
 * is wide. Else it clears the plate by HAP - d s. Source: geometry, trade.md 1. Not rounded.
 * Worked: 6/12, HAP 5, d 5-1/2 -> heel 1.149, seat 2.298, notch 1.028; HAP 6-1/2 -> shim 0.351.
 * @param input - the section's input. [in]
 * @param backLevelIn - how far the piece reaches back from the wall's framing face, level. [in]
 * @returns the bearing. [in]
 */
export function bearingOf(
  input: Pick<SectionInput, 'pitchRisePer12' | 'heightAbovePlateIn' | 'depthIn' | 'plateWidthIn' | 'backEnd'>,
  backLevelIn: number,
): Bearing {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const heelCutIn = input.depthIn * slopeFactor - input.heightAbovePlateIn;
  if (heelCutIn < -dustIn) return { kind: 'shimmed', shimIn: -heelCutIn };
  if (heelCutIn <= dustIn) return { kind: 'on-corner' };
  const toBackEndIn =
    input.backEnd === 'parallel'
      ? backLevelIn
      : backLevelIn + m * (input.heightAbovePlateIn + m * backLevelIn);
  const seatIn = m > 0 ? Math.min(heelCutIn / m, toBackEndIn) : toBackEndIn;
  return {
    kind: 'notched',
    heelCutIn,
    seatIn,
    bearingLengthIn: Math.min(seatIn, input.plateWidthIn),
    notchDepthIn: input.depthIn - input.heightAbovePlateIn / slopeFactor,
  };
}
