import type { SectionInput } from '../../core/eave/section-types.ts';

/** 6/12, HAP 5 in., a 2x6 sticking out 16 in. level, plumb tail, 2:1, as built in no house in particular. */
export const plainInput: SectionInput = {
  pitchRisePer12: 6,
  heightAbovePlateIn: 5,
  plateWidthIn: 3.5,
  overhangLevelIn: 16,
  depthIn: 5.5,
  tailCut: 'plumb',
  keptFaceIn: null,
  backEnd: 'square',
  backspanRatio: 2,
  spanLevelIn: null,
  clearBackspanIn: null,
  trimAllowanceIn: 1,
  fasciaDepthIn: 7.25,
  fasciaDropIn: 0.5,
  soffit: 'level',
  soffitThicknessIn: 0.375,
  windowHeadBelowPlateIn: 12,
  kickedFrom: null,
};
