import type { Fastening } from '../pricing/shop-settings.ts';

/** Deepest tail that takes the shallow count: a 2x4. [in] Common practice, no source. */
const shallowTailIn = 3.5;

/**
 * Nails through each end of a header block, and as many through it into the back end of the tail that hangs on it.
 * Worked: 2x6 with the settings as they come -> 3.
 * @param fastening - counts of the settings. [nails]
 * @param depthIn - actual depth of the tail. [in]
 */
export function headerNailsEach(
  fastening: Pick<Fastening, 'headerNailsShallow' | 'headerNailsDeep'>,
  depthIn: number,
): number {
  return depthIn <= shallowTailIn ? fastening.headerNailsShallow : fastening.headerNailsDeep;
}
