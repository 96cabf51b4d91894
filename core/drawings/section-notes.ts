import type { Extender } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import type { Point, Shape } from './drawing.ts';
import { methodTags, reachesRidge } from './plan-new.ts';
import { along, type SectionGeometry, type SectionParts } from './section-geometry.ts';

/** Who reads the drawing: the shop builds from it, the client sees what he gets. */
export type SectionReader = 'shop' | 'client';

/** Names of the members. */
export function sectionLabels(
  { extender, survey, design }: SectionParts,
  geometry: SectionGeometry,
  minX: number,
  wallBottom: number,
  reader: SectionReader,
): readonly Shape[] {
  const { section } = extender;
  const turn = -section.slopeAngleDeg;
  const depth = section.plumbDepthIn / section.slopeFactor;
  const backIn = reachesRidge(extender) ? -section.overhangAlongIn * 2 : -section.backspanIn;
  const shapes: Shape[] = [
    {
      kind: 'text',
      at: geometry.onSlope(backIn / 2 - 2, -depth / 2 - 0.5),
      text: `${reader === 'shop' ? `${extender.mark} ${methodTags[extender.method]}`.trim() : 'new tail'}  ${design.extender.section}`,
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
  if (reader === 'shop') shapes.push(...headerLabels(extender, geometry));
  if (survey.windowHeadBelowPlateIn !== null) {
    shapes.push({
      kind: 'text',
      at: [geometry.overhangIn + geometry.edgeThicknessIn + 1, -survey.windowHeadBelowPlateIn - 0.6],
      text: 'window head',
      anchor: 'start',
      sizePt: 7.5,
    });
  }
  return shapes;
}

function headerLabels(extender: Extender, geometry: SectionGeometry): readonly Shape[] {
  return extender.headers.map(
    (header): Shape => ({
      kind: 'text',
      at: geometry.onSlope(-header.alongIn - 1, -extender.section.plumbDepthIn - 3.5),
      text: `header ${header.mark}`,
      anchor: 'middle',
      sizePt: 7,
    }),
  );
}

/** The dimensions that the reader needs. */
export function sectionDimensions(
  parts: SectionParts,
  geometry: SectionGeometry,
  wallBottom: number,
  reader: SectionReader,
): readonly Shape[] {
  return reader === 'shop'
    ? shopDimensions(parts, geometry, wallBottom)
    : clientDimensions(parts, geometry, wallBottom);
}

function shopDimensions(
  parts: SectionParts,
  geometry: SectionGeometry,
  wallBottom: number,
): readonly Shape[] {
  const { section } = parts.extender;
  const deck = parts.survey.deckThicknessIn;
  const topAtWall = geometry.top(0);
  const faceX = geometry.overhangIn + geometry.edgeThicknessIn;
  return [
    ...(reachesRidge(parts.extender)
      ? []
      : [
          dimension(
            geometry.onSlope(-section.backspanIn, deck),
            geometry.onSlope(0, deck),
            20,
            `backspan ${formatLength(section.backspanIn)}`,
          ),
        ]),
    ...kickUpNotes(parts),
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

/** Where a kicked-up tail leaves the roof, and how far it stands over the rafter at the wall. */
function kickUpNotes({ extender, survey }: SectionParts): readonly Shape[] {
  const { kickUp, pitchRisePer12 } = extender.section;
  if (kickUp === null) return [];
  const at: Point = [kickUp.breakOutIn, kickUp.breakAbovePlateIn];
  const label: Point = [Math.min(at[0], -survey.plateWidthIn) - 5, -5];
  return [
    { kind: 'line', from: at, to: label, pen: 'light' },
    {
      kind: 'text',
      at: [label[0] - 0.5, label[1] - 0.6],
      text: `break ${formatLength(Math.abs(kickUp.breakOutIn))} ${kickUp.breakOutIn > 0 ? 'outside' : 'inside'} the wall, ${formatPitch(kickUp.roofPitchRisePer12)} to ${formatPitch(pitchRisePer12)}`,
      anchor: 'end',
      sizePt: 7.5,
    },
  ];
}

function clientDimensions(
  { extender }: SectionParts,
  geometry: SectionGeometry,
  wallBottom: number,
): readonly Shape[] {
  const { soffitBelowPlateIn, overhangLevelIn } = extender.section;
  const faceX = geometry.overhangIn + geometry.edgeThicknessIn;
  const foot = Math.min(wallBottom, geometry.lowestIn);
  const overhang = dimension(
    [geometry.overhangIn, foot],
    [0, foot],
    14,
    `${formatLength(overhangLevelIn)} level`,
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
