/** What turns ground snow into roof snow. */
export type SnowSite = {
  readonly groundSnowPsf: number;
  readonly exposureFactor: number;
  readonly thermalFactor: number;
  readonly importanceFactor: number;
};

/** Roof slope up to which snow has a least value, for gable and hip roofs. [deg] Source: ASCE 7-16, 7.3.4, from memory. */
const lowSlopeDeg = 15;

/**
 * Flat roof snow p_f = 0.7 Ce Ct Is p_g. Not rounded. [psf]
 * Source: ASCE 7-16, Eq. 7.3-1, as seen in transcription. Worked: p_g 30, all factors 1 -> 21.
 */
export function flatRoofSnow({
  groundSnowPsf,
  exposureFactor,
  thermalFactor,
  importanceFactor,
}: SnowSite): number {
  return 0.7 * exposureFactor * thermalFactor * importanceFactor * groundSnowPsf;
}

/**
 * Slope factor C_s of a surface that is not slippery: 1 up to a slope that grows with the thermal factor (30 degrees to
 * C_t 1.0, 37.5 at 1.1, 45 from 1.2), then straight down to 0 at 70 degrees. Between those C_t it is interpolated.
 * Source: ASCE 7-16, 7.4 and Fig. 7.4-1, from memory. Worked: 45 degrees, C_t 1.0 -> (70 - 45) / 40 = 0.625.
 * @param slopeDeg - of the roof. [deg]
 */
export function snowSlopeFactor(slopeDeg: number, thermalFactor: number): number {
  const fullToDeg = 30 + 15 * Math.min(1, Math.max(0, (thermalFactor - 1) / 0.2));
  return Math.min(1, Math.max(0, (70 - slopeDeg) / (70 - fullToDeg)));
}

/**
 * Sloped roof snow p_s = C_s p_f, on level area, and never less than the least snow of a low roof. Not rounded. [psf]
 * Source: ASCE 7-16, Eq. 7.4-1, as seen in transcription; least value Is times 20 psf or p_g, from memory.
 */
export function slopedRoofSnow(site: SnowSite, slopeDeg: number): number {
  const sloped = snowSlopeFactor(slopeDeg, site.thermalFactor) * flatRoofSnow(site);
  const least = slopeDeg < lowSlopeDeg ? site.importanceFactor * Math.min(20, site.groundSnowPsf) : 0;
  return Math.max(sloped, least);
}

/**
 * Load of ice and snow on the overhang of a warm roof that drains over its eave: 2 p_f. Only dead load acts with it; past
 * 5 ft of overhang it lies on the outer 5 ft. [psf] Source: ASCE 7-16, 7.4.5, from memory. Worked: p_f 21 -> 42.
 */
export function icedEaveLoad(site: SnowSite): number {
  return 2 * flatRoofSnow(site);
}

/** Width of the overhang on which the load of an iced eave lies, from the edge in. [in] Source: as above, from memory. */
export const icedEaveWidthIn = 60;
