import type { AsBuilt } from '../eave/design-document.ts';
import { layoutRulesSchema, type LayoutRules } from '../pricing/shop-settings.ts';

/** A thickness that a filler can be built up from. */
export type FillerStock = {
  /** As the price list calls it: `2x6`, `1/2 plywood`. */
  readonly name: string;
  /** Of the price item; null for lumber sections that several items hold. */
  readonly itemId: string | null;
  readonly thicknessIn: number;
};

/** What the layout of an eave needs beside survey and design: the shop's rules, and what can be bought. */
export type LayoutMeans = {
  readonly rules: LayoutRules;
  /** Length of one panel of the new sheathing, along the eave. [in] */
  readonly sheetLengthIn: number;
  readonly fillers: readonly FillerStock[];
  /** What of this eave was built already. [in] */
  readonly asBuilt: readonly AsBuilt[];
};

/** The shop's rules as they come, ordinary 8 ft panels, nothing to build a filler from, nothing built. */
export const plainMeans: LayoutMeans = {
  rules: layoutRulesSchema.parse({}),
  sheetLengthIn: 96,
  fillers: [],
  asBuilt: [],
};
