import type { Site } from '../../survey/site.ts';
import {
  framingLbPerCubicFoot,
  roofingWeights,
  sheathingPsfPerInch,
  underlayment,
} from '../data/dead-weights.ts';

/** What lies on and hangs from the overhang. */
export type DeadParts = {
  readonly site: Pick<Site, 'roofing' | 'roofingLayers'>;
  readonly sheathingThicknessIn: number;
  /** Soffit, fascia and trim, on level area. [psf] */
  readonly soffitPsf: number;
  readonly slopeFactor: number;
};

export type DeadLoad = {
  readonly roofingPsf: number;
  readonly sheathingPsf: number;
  /** On the sloped area, without the framing. [psf] */
  readonly slopedPsf: number;
  /** On the level area, without the framing: sloped times slope factor, plus the soffit. [psf] */
  readonly levelPsf: number;
};

/**
 * Dead load on an overhang, without its framing. Not rounded.
 * Source: weights of ASCE 7, Table C3.1-1 (marked in data/dead-weights.ts); level = sloped x slope factor (geometry).
 * Worked: one layer of asphalt shingles 3, underlayment 1, 15/32 in. panel 1.5 -> 5.5; at 6/12 with 1.5 of soffit -> 7.65.
 */
export function deadLoad({ site, sheathingThicknessIn, soffitPsf, slopeFactor }: DeadParts): DeadLoad {
  const roofingPsf = roofingWeights[site.roofing].psf * site.roofingLayers + underlayment.psf;
  const sheathingPsf = sheathingThicknessIn * sheathingPsfPerInch;
  const slopedPsf = roofingPsf + sheathingPsf;
  return { roofingPsf, sheathingPsf, slopedPsf, levelPsf: slopedPsf * slopeFactor + soffitPsf };
}

/**
 * Weight of one member for each inch of level run. [lb/in]
 * @param widthIn - actual thickness; @param depthIn - actual depth. [in]
 */
export function memberWeight(widthIn: number, depthIn: number, slopeFactor: number): number {
  return (widthIn * depthIn * framingLbPerCubicFoot * slopeFactor) / 1728;
}
