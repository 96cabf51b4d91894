import { leastEndBearingIn } from '../takeoff/panel-layout.ts';
import { panelGapIn } from '../takeoff/sheathing-strip.ts';

/**
 * How far a tail's middle may stand off a panel joint's so that both panels still bear on it by 1/2 in.: half its thickness
 * less half the gap of 1/8 in. less the bearing. Worked: 1-1/2 in. thick -> 3/16 in.; negative where a tail is too thin.
 * @param thicknessIn - actual, of the tail. [in]
 */
export function jointToleranceIn(thicknessIn: number): number {
  return (thicknessIn - panelGapIn) / 2 - leastEndBearingIn;
}
