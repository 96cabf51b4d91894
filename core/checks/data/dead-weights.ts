import type { Roofing } from '../../survey/site.ts';
import type { SourceMark } from '../check-types.ts';

/** A weight on the actual, sloped area. [psf] */
export type Weight = { readonly name: string; readonly psf: number; readonly mark: SourceMark };

/** Weights of one layer of roofing. Source: ASCE 7, Table C3.1-1; marks say how it was seen. */
export const roofingWeights: Readonly<Record<Roofing, Weight>> = {
  'asphalt-shingle': { name: 'asphalt shingles', psf: 3, mark: 'secondary' },
  'laminated-shingle': { name: 'laminated asphalt shingles', psf: 5, mark: 'common-practice' },
  'wood-shingle': { name: 'wood shingles', psf: 3, mark: 'secondary' },
  'slate-3/16': { name: 'slate of 3/16 in.', psf: 7, mark: 'from-memory' },
  'slate-1/4': { name: 'slate of 1/4 in.', psf: 10, mark: 'secondary' },
  'clay-tile': { name: 'clay tile', psf: 19, mark: 'from-memory' },
  'cement-tile': { name: 'cement tile', psf: 16, mark: 'from-memory' },
};

/** One layer of underlayment. [psf] */
export const underlayment: Weight = { name: 'underlayment', psf: 1, mark: 'from-memory' };

/** Wood sheathing, panels or planks, for each inch of thickness: 0.4 psf for each eighth, taken up to planks. [psf/in] */
export const sheathingPsfPerInch = 3.2;

/** Weight of framing lumber, on the heavy side of softwoods. [lb/cu ft] Common practice, no source. */
export const framingLbPerCubicFoot = 35;

/** Panel thickness taken where the price item says none. [in] Common practice, no source. */
export const panelThicknessWhereUnknownIn = 15 / 32;
