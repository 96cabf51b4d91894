import type { PanelRating } from '../../eave/structure.ts';

/** What a span rating carries on a roof, strength axis across the supports, two or more spans. */
export type RatedPanel = {
  /** Largest spacing of supports with, and without, edge support. [in] */
  readonly edgeSupportedIn: number;
  readonly unsupportedIn: number;
  /** Total and live load at that spacing. [psf] */
  readonly totalPsf: number;
  readonly livePsf: number;
};

/** IRC Table R503.2.1.1(1), cells from memory; the roof span as the first number of the rating seen on secondary pages. */
export const ratedPanels: Readonly<Record<PanelRating, RatedPanel>> = {
  '24/0': { edgeSupportedIn: 24, unsupportedIn: 20, totalPsf: 40, livePsf: 30 },
  '24/16': { edgeSupportedIn: 24, unsupportedIn: 24, totalPsf: 50, livePsf: 40 },
  '32/16': { edgeSupportedIn: 32, unsupportedIn: 28, totalPsf: 40, livePsf: 30 },
  '40/20': { edgeSupportedIn: 40, unsupportedIn: 32, totalPsf: 40, livePsf: 30 },
  '48/24': { edgeSupportedIn: 48, unsupportedIn: 36, totalPsf: 45, livePsf: 35 },
};

/** Least width of a panel that the table holds for, square to its supports' run. [in] Source: same table, note c. */
export const leastPanelWidthIn = 24;
