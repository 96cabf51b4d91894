import type { Site } from '../../survey/site.ts';
import { slopeAngleDeg, slopeFactor } from '../../units/pitch.ts';
import { deadLoad, type DeadLoad } from './dead-load.ts';
import { roofLive, workerLb } from './roof-live-load.ts';
import { flatRoofSnow, icedEaveLoad, icedEaveWidthIn, slopedRoofSnow, type SnowSite } from './snow-load.ts';

/** Dead load and one short-term load, as they are combined in allowable stress design. */
export type LoadCase = {
  readonly id: 'dead' | 'roof-live' | 'worker' | 'snow' | 'iced-eave';
  readonly name: string;
  /** Load duration factor of the combination: that of its shortest load. [-] Source: NDS 2018, Table 2.3.2. */
  readonly duration: number;
  /** Short-term load on level area, allowable stress level. [psf] */
  readonly psf: number;
  /** Width from the edge in on which it lies; null for the whole overhang. [in] */
  readonly outerWidthIn: number | null;
  /** At the tail's end. [lb] */
  readonly pointLb: number;
};

/** Snow on the eave. Ground and roof loads as entered; `asdFactor` brings them to allowable stress level. */
export type EaveSnow = {
  readonly site: SnowSite;
  readonly flatPsf: number;
  readonly slopedPsf: number;
  readonly icedPsf: number | null;
  readonly asdFactor: number;
};

export type EaveLoads = {
  readonly dead: DeadLoad;
  readonly roofLivePsf: number;
  /** Null where no ground snow is entered. */
  readonly snow: EaveSnow | null;
  readonly cases: readonly LoadCase[];
  /** Net upward pressure square to the roof, allowable stress level; null where none is entered. [psf] */
  readonly upliftPsf: number | null;
};

/** Strength-level snow of ASCE 7-22 counts 0.7 in allowable stress combinations. [-] Source: ASCE 7-22, 2.4, from memory. */
const strengthSnowFactor = 0.7;
/** Strength-level wind counts 0.6. [-] Source: ASCE 7-16, 2.4, from memory. */
export const strengthWindFactor = 0.6;

/**
 * Loads on an overhang and their combinations: D; D + L_r; D + a worker; D + S; D + 2 p_f on an iced eave. Not rounded.
 * Source: ASCE 7-16, 2.4.1 (allowable stress); durations of NDS 2018, Table 2.3.2: permanent 0.9, snow 1.15, seven days 1.25.
 * @param site - of the survey. [psf, -]
 * @param pitchRisePer12 - of the eave. [in/12 in]
 * @param parts - what lies on the overhang. [in, psf]
 */
export function eaveLoads(
  site: Site,
  pitchRisePer12: number,
  parts: { readonly sheathingThicknessIn: number; readonly soffitPsf: number },
): EaveLoads {
  const dead = deadLoad({ site, ...parts, slopeFactor: slopeFactor(pitchRisePer12) });
  const roofLivePsf = roofLive(pitchRisePer12);
  const snow = snowOf(site, slopeAngleDeg(pitchRisePer12));
  const even = { outerWidthIn: null, pointLb: 0 };
  const cases: LoadCase[] = [
    { id: 'dead', name: 'dead load alone', duration: 0.9, psf: 0, ...even },
    { id: 'roof-live', name: 'dead and roof live load', duration: 1.25, psf: roofLivePsf, ...even },
    {
      id: 'worker',
      name: 'dead load and a worker at the tail',
      duration: 1.25,
      psf: 0,
      outerWidthIn: null,
      pointLb: workerLb,
    },
  ];
  if (snow !== null) {
    const slopedPsf = snow.slopedPsf * snow.asdFactor;
    cases.push({ id: 'snow', name: 'dead and snow load', duration: 1.15, psf: slopedPsf, ...even });
    if (snow.icedPsf !== null)
      cases.push({
        id: 'iced-eave',
        name: 'dead load and an iced eave',
        duration: 1.15,
        psf: snow.icedPsf * snow.asdFactor,
        outerWidthIn: icedEaveWidthIn,
        pointLb: 0,
      });
  }
  const windFactor = site.windUpliftBasis === 'strength' ? strengthWindFactor : 1;
  return {
    dead,
    roofLivePsf,
    snow,
    cases,
    upliftPsf: site.windUpliftPsf === null ? null : site.windUpliftPsf * windFactor,
  };
}

function snowOf(site: Site, slopeDeg: number): EaveSnow | null {
  const { groundSnowPsf, exposureFactor, thermalFactor, importanceFactor } = site;
  if (groundSnowPsf === null) return null;
  const factors: SnowSite = { groundSnowPsf, exposureFactor, thermalFactor, importanceFactor };
  return {
    site: factors,
    flatPsf: flatRoofSnow(factors),
    slopedPsf: slopedRoofSnow(factors, slopeDeg),
    icedPsf: site.icedEave === 'doubled' ? icedEaveLoad(factors) : null,
    asdFactor: site.groundSnowBasis === 'strength' ? strengthSnowFactor : 1,
  };
}
