import { panelGapIn } from '../takeoff/sheathing-strip.ts';

/** Each panel's end bears on a tail by at least this. [in] Common practice, no source. */
export const leastPanelBearingIn = 0.5;

/**
 * The stations of the joints between whole panels, laid from the left end of the fascia run with a gap of 1/8 in. at each
 * joint; a station is the middle of its gap. Not rounded.
 * Worked: from 0 to 240 with 8 ft panels -> 96-1/16 and 192-3/16.
 * @param fromIn - left end of the run. [in]
 * @param toIn - right end of the run. [in]
 * @param sheetLengthIn - of one panel, along the eave. [in]
 */
export function panelJoints(fromIn: number, toIn: number, sheetLengthIn: number): readonly number[] {
  const joints: number[] = [];
  const stepIn = sheetLengthIn + panelGapIn;
  for (let panel = 1; fromIn + panel * stepIn - panelGapIn < toIn - 1e-9; panel += 1)
    joints.push(fromIn + panel * stepIn - panelGapIn / 2);
  return joints;
}

/**
 * How far a tail's middle may stand off a joint so that both panels still bear on it by 1/2 in.: half its thickness less
 * half the gap less the bearing. Worked: 1-1/2 in. thick -> 3/16 in.; negative where a tail is too thin for two panels.
 * @param thicknessIn - actual, of the tail. [in]
 */
export function jointToleranceIn(thicknessIn: number): number {
  return (thicknessIn - panelGapIn) / 2 - leastPanelBearingIn;
}
