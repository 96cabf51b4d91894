import type { Point, Shape } from './drawing.ts';
import { oldRafterOutline, type SectionGeometry, type SectionParts } from './section-geometry.ts';

/** The old house in section: rafter beyond, old deck, wall, plate, and the line of the lowest window head. */
export function oldHouse(
  { extender, survey, layout, design }: SectionParts,
  geometry: SectionGeometry,
  minX: number,
  wallBottom: number,
): readonly Shape[] {
  const { plateWidthIn: plate, deckThicknessIn: deck } = survey;
  const shapes: Shape[] = [];
  if (geometry.rafter !== undefined) {
    shapes.push({
      kind: 'polygon',
      points: oldRafterOutline(geometry.rafter, minX),
      pen: 'old',
      fill: 'old',
      ref: `reading/${layout.eaveId}/${extender.rafterId}`,
      title: `Old rafter ${extender.rafterNumber}`,
    });
  }
  const slopeFactor = extender.section.slopeFactor;
  const oldDeckEnd = design.sheathing.kind === 'none' ? 0 : -design.sheathing.tieBackIn;
  const oldDeckStart = minX * slopeFactor;
  shapes.push(
    {
      kind: 'polygon',
      points: strip(geometry, oldDeckStart, oldDeckEnd, deck),
      pen: 'old',
      fill: 'paper',
      title: 'Old deck',
    },
    {
      kind: 'polygon',
      points: [
        [-plate, -1.5],
        [0, -1.5],
        [0, wallBottom],
        [-plate, wallBottom],
      ],
      pen: 'old',
      fill: 'paper',
      title: 'Wall',
    },
    {
      kind: 'polygon',
      points: [
        [-plate, 0],
        [0, 0],
        [0, -1.5],
        [-plate, -1.5],
      ],
      pen: 'old',
      fill: 'plate',
      ref: `eave/${layout.eaveId}/plateWidthIn`,
      title: 'Wall plate',
    },
  );
  if (survey.windowHeadBelowPlateIn !== null) {
    shapes.push({
      kind: 'line',
      from: [-plate - 3, -survey.windowHeadBelowPlateIn],
      to: [geometry.overhangIn + geometry.fasciaThicknessIn, -survey.windowHeadBelowPlateIn],
      pen: 'hidden',
    });
  }
  return shapes;
}

/** What is new in section: extender, fascia, shim, deck and soffit. */
export function newWork(
  { extender, survey, layout, design }: SectionParts,
  geometry: SectionGeometry,
): readonly Shape[] {
  const { section } = extender;
  const { deckThicknessIn: deck } = survey;
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: section.outline,
      pen: 'new',
      fill: 'new',
      ref: `section/${layout.eaveId}/${extender.rafterId}`,
      title: `Extender ${extender.mark}`,
    },
    {
      kind: 'polygon',
      points: geometry.fascia,
      pen: 'new',
      fill: 'paper',
      ref: `design/${layout.eaveId}/fascia`,
      title: `Fascia ${design.fascia.stock.section}`,
    },
  ];
  if (section.bearing.kind === 'shimmed') {
    const under = section.bearing.shimIn;
    shapes.push({
      kind: 'polygon',
      points: [
        [-survey.plateWidthIn, 0],
        [-survey.plateWidthIn, under + (extender.pitchRisePer12 / 12) * survey.plateWidthIn],
        [0, under],
        [0, 0],
      ],
      pen: 'new',
      fill: 'waste',
      title: 'Bearing shim',
    });
  }
  if (design.sheathing.kind !== 'none') {
    const end =
      section.overhangAlongIn +
      (design.sheathing.coversFascia ? geometry.fasciaThicknessIn * section.slopeFactor : 0);
    shapes.push({
      kind: 'polygon',
      points: strip(geometry, -design.sheathing.tieBackIn, end, deck),
      pen: 'new',
      fill: 'paper',
      title: 'New deck',
    });
  }
  if (design.soffit.kind === 'level' && section.soffitBelowPlateIn !== null) {
    const under = -section.soffitBelowPlateIn;
    shapes.push({
      kind: 'polygon',
      points: [
        [0, under],
        [0, under + design.soffit.thicknessIn],
        [geometry.overhangIn, under + design.soffit.thicknessIn],
        [geometry.overhangIn, under],
      ],
      pen: 'old',
      fill: 'new',
      title: 'Soffit',
    });
  } else if (design.soffit.kind === 'sloped') {
    // Under the tails: from the wall's face to the tail's lowest corner.
    const depth = section.plumbDepthIn / section.slopeFactor;
    const slope = extender.pitchRisePer12 / 12;
    const end = section.overhangAlongIn + (design.tailCut === 'plumb' ? depth * slope : 0);
    shapes.push({
      kind: 'polygon',
      points: strip(geometry, depth * slope, end, -design.soffit.thicknessIn, -depth),
      pen: 'old',
      fill: 'new',
      title: 'Soffit along the slope',
    });
  }
  return shapes;
}

/** A strip along the slope: from, to, its thickness above `fromAbove`. */
function strip(
  geometry: SectionGeometry,
  fromIn: number,
  toIn: number,
  thicknessIn: number,
  fromAboveIn = 0,
): readonly Point[] {
  return [
    geometry.onSlope(fromIn, fromAboveIn),
    geometry.onSlope(fromIn, fromAboveIn + thicknessIn),
    geometry.onSlope(toIn, fromAboveIn + thicknessIn),
    geometry.onSlope(toIn, fromAboveIn),
  ];
}
