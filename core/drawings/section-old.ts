import type { EaveLayout, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { Point, Shape } from './drawing.ts';
import { oldRafterOutline, type SectionGeometry, type SectionParts } from './section-geometry.ts';

/** The old house in section: rafter beyond, old deck, wall, plate, and the line of the lowest window head. */
export function oldHouse(
  { survey, layout, design, extender }: SectionParts,
  geometry: SectionGeometry,
  minX: number,
  wallBottom: number,
): readonly Shape[] {
  const { kickUp } = extender.section;
  const tieBackIn = design.sheathing.kind === 'none' ? 0 : design.sheathing.tieBackIn;
  const roof = geometry.roof;
  const endIn = Math.min(-tieBackIn / roof.slopeFactor, kickUp?.breakOutIn ?? 0);
  return [
    ...(geometry.rafter === undefined ? [] : [rafterShape(layout, geometry.rafter, minX)]),
    {
      kind: 'polygon',
      points: roof.strip(minX, endIn, survey.deckThicknessIn),
      pen: 'old',
      fill: 'paper',
      title: 'Old deck',
    },
    ...wallAndPlate(layout.eaveId, survey, wallBottom),
    ...windowHead(survey, geometry.overhangIn + geometry.edgeThicknessIn),
  ];
}

/** An old rafter from its end. */
export function rafterShape(layout: EaveLayout, rafter: PlacedRafter, minX: number, oldTailIn = 0): Shape {
  return {
    kind: 'polygon',
    points: oldRafterOutline(rafter, minX, oldTailIn),
    pen: 'old',
    fill: 'old',
    ref: `reading/${layout.eaveId}/${rafter.id}`,
    title: `Old rafter ${rafter.number}`,
  };
}

/** The wall's upper end with the plate on it. */
export function wallAndPlate(eaveId: string, survey: EaveSurvey, wallBottom: number): readonly Shape[] {
  const { plateWidthIn: plate } = survey;
  const box = (high: number, low: number): readonly Point[] => [
    [-plate, high],
    [0, high],
    [0, low],
    [-plate, low],
  ];
  return [
    { kind: 'polygon', points: box(-1.5, wallBottom), pen: 'old', fill: 'paper', title: 'Wall' },
    {
      kind: 'polygon',
      points: box(0, -1.5),
      pen: 'old',
      fill: 'plate',
      ref: `eave/${eaveId}/plateWidthIn`,
      title: 'Wall plate',
    },
  ];
}

/** The line of the lowest window or door head, where one was measured. */
export function windowHead(survey: EaveSurvey, toX: number): readonly Shape[] {
  const { windowHeadBelowPlateIn: below, plateWidthIn } = survey;
  return below === null
    ? []
    : [{ kind: 'line', from: [-plateWidthIn - 3, -below], to: [toX, -below], pen: 'hidden' }];
}
