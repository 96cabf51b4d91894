import type { Nail } from '../../takeoff/nails.ts';

/** Slant of a toenail to the face it goes through. [deg] Source: NDS 2018, 12.1.6.3. */
const toenailDeg = 30;

/** Toenail factor in withdrawal. [-] Source: NDS 2018, 12.5.4.1, as seen in transcription. */
export const toenailWithdrawalFactor = 0.67;

/**
 * How far a toenail stands in the member it is driven into, measured along the nail: started a third of its length from
 * the end and driven at 30 degrees, it leaves the first member after (L/3)/cos 30. Point counted. Not rounded.
 * Source: NDS 2018, 12.1.6.3; geometry. Worked: 16d common, 3-1/2 in. -> 3.5 - 1.347 = 2.153 in.
 * @param nail - its length. [in]
 */
export function toenailPenetrationIn(nail: Pick<Nail, 'lengthIn'>): number {
  return nail.lengthIn * (1 - 1 / (3 * Math.cos((toenailDeg * Math.PI) / 180)));
}

/**
 * Reference withdrawal value of a plain nail from side grain, W = 1380 G^2.5 D, for each inch of penetration.
 * Source: NDS 2018, Eq. 12.2-3. Worked: 8d common, G 0.50 -> 32 lb/in.
 * @param gravity - specific gravity of the member that holds the point. [-]
 * @param diameterIn - of the nail. [in]
 * @returns not rounded. [lb/in]
 */
export function withdrawalPerInch(gravity: number, diameterIn: number): number {
  return 1380 * gravity ** 2.5 * diameterIn;
}
