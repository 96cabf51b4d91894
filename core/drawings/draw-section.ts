import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import {
  along,
  oldRafterOutline,
  type SectionGeometry,
  type SectionParts,
  sectionGeometry,
} from './section-geometry.ts';

/** How far the old rafter is drawn past the extender's back end, level. [in] */
const pastBackIn = 14;

/** Who reads the drawing: the shop builds from it, the client sees what he gets. */
export type SectionReader = 'shop' | 'client';

/**
 * Draws the finished eave in section at one extender, to the plate's axes: x level and outward, y up from the plate.
 * @param layout - the eave. [in]
 * @param extender - the tail that is drawn. [in]
 * @param survey - the old house at this eave. [in]
 * @param design - the overhang's design. [in]
 * @param reader - the client's drawing carries fewer dimensions.
 */
export function drawSection(
  layout: EaveLayout,
  extender: Extender,
  survey: EaveSurvey,
  design: EaveDesign,
  reader: SectionReader = 'shop',
): Drawing {
  const parts: SectionParts = { layout, extender, survey, design };
  const geometry = sectionGeometry(parts);
  const { section } = extender;
  const [minX, maxX] = [leftEnd(parts), geometry.overhangIn + geometry.fasciaThicknessIn];
  const windowHead = survey.windowHeadBelowPlateIn;
  const wallBottom = Math.min(geometry.lowestIn - 4, windowHead === null ? -10 : -windowHead - 4);
  const deckTop = geometry.top(minX) + survey.deckThicknessIn * section.slopeFactor;

  return {
    title: reader === 'shop' ? `Section at ${extender.mark}, ${layout.name}` : `Section of ${layout.name}`,
    description: describe(parts, geometry),
    shapes: [
      ...house(parts, geometry, minX, wallBottom),
      ...newWork(parts, geometry),
      ...labels(parts, geometry, minX, wallBottom, reader),
      ...(reader === 'shop'
        ? shopDimensions(parts, geometry, wallBottom)
        : clientDimensions(parts, geometry, wallBottom)),
    ],
    minX,
    minY: wallBottom,
    maxX,
    maxY: deckTop,
  };
}

function leftEnd({ extender, survey }: SectionParts): number {
  const backX = -extender.section.backspanIn / extender.section.slopeFactor;
  return Math.min(backX - pastBackIn, -survey.plateWidthIn - 8);
}

function house(
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

function newWork(
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
    const start = -section.plumbDepthIn / section.slopeFactor;
    shapes.push({
      kind: 'polygon',
      points: strip(geometry, 0, section.overhangAlongIn, -design.soffit.thicknessIn, start),
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

function labels(
  { extender, survey, design }: SectionParts,
  geometry: SectionGeometry,
  minX: number,
  wallBottom: number,
  reader: SectionReader,
): readonly Shape[] {
  const { section } = extender;
  const turn = -section.slopeAngleDeg;
  const depth = section.plumbDepthIn / section.slopeFactor;
  const backIn = -section.backspanIn;
  const shapes: Shape[] = [
    {
      kind: 'text',
      at: geometry.onSlope(backIn / 2 - 2, -depth / 2 - 0.5),
      text: `${reader === 'shop' ? extender.mark : 'new tail'}  ${design.extender.section}`,
      anchor: 'middle',
      sizePt: 8.5,
      rotateDeg: turn,
      bold: true,
    },
    {
      kind: 'text',
      at: [-survey.plateWidthIn / 2 + 0.6, (wallBottom - 1.5) / 2],
      text: 'wall',
      anchor: 'middle',
      sizePt: 7,
      rotateDeg: 90,
    },
  ];
  if (geometry.rafter !== undefined) {
    const middle = (minX * section.slopeFactor + backIn) / 2;
    shapes.push({
      kind: 'text',
      at: geometry.onSlope(middle, -depth / 2 - 0.5),
      text: reader === 'shop' ? `rafter ${extender.rafterNumber}` : 'old rafter',
      anchor: 'middle',
      sizePt: 7,
      rotateDeg: turn,
    });
  }
  const corner = geometry.fascia[2] ?? geometry.tailBottom;
  const label: Point = [corner[0] + 4, corner[1] - 3];
  shapes.push(
    { kind: 'line', from: along(corner, [-1, 2], 0.3), to: label, pen: 'light' },
    {
      kind: 'text',
      at: [label[0] + 0.5, label[1] - 0.6],
      text: `fascia ${design.fascia.stock.section}`,
      anchor: 'start',
      sizePt: 7.5,
    },
  );
  if (survey.windowHeadBelowPlateIn !== null) {
    shapes.push({
      kind: 'text',
      at: [geometry.overhangIn + geometry.fasciaThicknessIn + 1, -survey.windowHeadBelowPlateIn - 0.6],
      text: 'window head',
      anchor: 'start',
      sizePt: 7.5,
    });
  }
  return shapes;
}

function shopDimensions(
  parts: SectionParts,
  geometry: SectionGeometry,
  wallBottom: number,
): readonly Shape[] {
  const { section } = parts.extender;
  const deck = parts.survey.deckThicknessIn;
  const topAtWall = geometry.top(0);
  const faceX = geometry.overhangIn + geometry.fasciaThicknessIn;
  return [
    dimension(
      geometry.onSlope(-section.backspanIn, deck),
      geometry.onSlope(0, deck),
      20,
      `backspan ${formatLength(section.backspanIn)}`,
    ),
    dimension(
      geometry.onSlope(0, deck),
      geometry.onSlope(section.overhangAlongIn, deck),
      20,
      formatLength(section.overhangAlongIn),
    ),
    { kind: 'line', from: [0, topAtWall], to: [faceX, topAtWall], pen: 'light' },
    dimension(
      [faceX, topAtWall],
      [faceX, geometry.tailTop[1]],
      30,
      `drop ${formatLength(section.tailDropIn)}`,
    ),
    // Upward, so that a text too long for it goes above and not over the soffit's dimension.
    dimension([faceX, 0], [faceX, topAtWall], -62, `HAP ${formatLength(topAtWall)}`),
    ...clientDimensions(parts, geometry, wallBottom),
  ];
}

function clientDimensions(
  { extender, layout }: SectionParts,
  geometry: SectionGeometry,
  wallBottom: number,
): readonly Shape[] {
  const { soffitBelowPlateIn } = extender.section;
  const faceX = geometry.overhangIn + geometry.fasciaThicknessIn;
  const foot = Math.min(wallBottom, geometry.lowestIn);
  const overhang = dimension(
    [geometry.overhangIn, foot],
    [0, foot],
    14,
    `${formatLength(layout.overhangLevelIn)} level`,
  );
  if (soffitBelowPlateIn === null) return [overhang];
  return [
    overhang,
    { kind: 'line', from: [0, 0], to: [faceX, 0], pen: 'light' },
    dimension([faceX, 0], [faceX, -soffitBelowPlateIn], 62, formatLength(soffitBelowPlateIn)),
  ];
}

function dimension(from: Point, to: Point, offsetPt: number, text: string): Shape {
  return { kind: 'dimension', from, to, offsetPt, text };
}

function describe({ extender, layout, design }: SectionParts, geometry: SectionGeometry): string {
  const { section } = extender;
  const bearing =
    section.bearing.kind === 'notched'
      ? `It is notched over the plate: heel cut ${formatLength(section.bearing.heelCutIn)}, level seat ${formatLength(section.bearing.seatIn)}, throat ${formatLength(section.throatIn)}.`
      : section.bearing.kind === 'shimmed'
        ? `It clears the plate by ${formatLength(section.bearing.shimIn)} and needs a shim of that height.`
        : `Its lower edge meets the plate's outer corner.`;
  return [
    `Section through ${layout.name} at rafter ${extender.rafterNumber}, seen with the outside to the right.`,
    `Extender ${extender.mark} of ${design.extender.section} at ${formatPitch(extender.pitchRisePer12)},`,
    `${formatLength(section.overhangLevelIn)} out level, ${formatLength(section.backspanIn)} back along the slope.`,
    bearing,
    `Fascia ${design.fascia.stock.section}, ${formatLength(geometry.fasciaDepthIn)} deep, on a ${design.tailCut} tail.`,
  ].join(' ');
}
