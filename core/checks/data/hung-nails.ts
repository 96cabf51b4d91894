/**
 * Nails through each end of a header block, and as many through the block into the back end of the tail that hangs on it,
 * by the tail's section: two 16d for 2x4, three for 2x6. Common practice, no source; deeper ones are taken as 2x6.
 */
const nailsByNominalDepth: readonly { readonly fromNominalIn: number; readonly nails: number }[] = [
  { fromNominalIn: 8, nails: 3 },
  { fromNominalIn: 6, nails: 3 },
  { fromNominalIn: 4, nails: 2 },
];

/** Distance between nails that stand above one another in an end. [in] Common practice, no source. */
export const nailsApartIn = 1;

/**
 * Customary number of nails of a hung tail.
 * @param section - of the tail. [in]
 * @returns e.g. 2x6 -> 3; undefined for stock thinner than 2 in. nominal or shallower than 2x4, which has no custom.
 */
export function customaryHungNails(section: {
  readonly nominalThicknessIn: number;
  readonly nominalWidthIn: number;
}): number | undefined {
  if (section.nominalThicknessIn < 2) return undefined;
  return nailsByNominalDepth.find(({ fromNominalIn }) => section.nominalWidthIn >= fromNominalIn)?.nails;
}
