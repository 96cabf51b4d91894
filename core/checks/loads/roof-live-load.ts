/**
 * Roof live load of the dwelling code for a small loaded area (up to 200 sq ft): 20 psf below 4/12, 16 to below 12/12, 12
 * from there. Source: IRC Table R301.6; 20 and 12 seen in transcription, 16 on secondary pages. [psf of level area]
 * @param risePer12 - pitch. [in/12 in]
 */
export function dwellingRoofLive(risePer12: number): number {
  if (risePer12 < 4) return 20;
  return risePer12 < 12 ? 16 : 12;
}

/**
 * Roof live load L_r = 20 R_1 R_2, between 12 and 20, for a loaded area up to 200 sq ft (R_1 = 1):
 * R_2 = 1.2 - 0.05 F between 4/12 and 12/12. Source: ASCE 7-16, Eq. 4.8-1; seen on secondary pages.
 * Worked: 6/12 -> 20 x 0.9 = 18. [psf of level area]
 */
export function standardRoofLive(risePer12: number): number {
  return Math.max(12, 20 * Math.min(1, Math.max(0.6, 1.2 - 0.05 * risePer12)));
}

/** The larger of the two, which is what the checks take. [psf of level area] */
export function roofLive(risePer12: number): number {
  return Math.max(dwellingRoofLive(risePer12), standardRoofLive(risePer12));
}

/** A worker with tools on one spot. [lb] Source: ASCE 7, Table 4.3-1, roofs under maintenance, from memory. */
export const workerLb = 300;
