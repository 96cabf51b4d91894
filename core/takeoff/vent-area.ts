import type { EaveSurvey, Survey } from '../survey/survey-document.ts';

/** Net free area that vents at the eaves are to have, and what of it falls to one eave. [sq in] */
export type VentArea = {
  readonly atticSqFt: number;
  /** 150 or 300: one part in so many of the attic's area. */
  readonly parts: 150 | 300;
  readonly wholeSqIn: number;
  /** Share at the eaves. [-] */
  readonly eaveShare: number;
  /** All eaves together, which share it by their length. [in] */
  readonly eavesIn: number;
  readonly wantedSqIn: number;
};

/**
 * The net free vent area asked of one eave: 1/150 or 1/300 of the attic's area, the share at the eaves (half unless stated),
 * shared over the eaves by their length. Source: IRC R806.2. Not rounded.
 * Worked: 1500 sq ft at 1/300 -> 720 sq in. in all, 360 at the eaves.
 * @param survey - attic area, ratio and share.
 * @param eave - whose part it is. [in]
 * @returns null where the attic's area is not known. [sq in]
 */
export function ventAreaOf(survey: Survey, eave: Pick<EaveSurvey, 'lengthIn'>): VentArea | null {
  const { atticAreaSqFt, ventRatio, eaveVentShare } = survey.site;
  if (atticAreaSqFt === null) return null;
  const parts = ventRatio === '1/150' ? 150 : 300;
  const wholeSqIn = (atticAreaSqFt / parts) * 144;
  const eavesIn = survey.eaves.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
  return {
    atticSqFt: atticAreaSqFt,
    parts,
    wholeSqIn,
    eaveShare: eaveVentShare,
    eavesIn,
    wantedSqIn: (wholeSqIn * eaveVentShare * eave.lengthIn) / eavesIn,
  };
}
