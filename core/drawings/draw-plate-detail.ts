import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { clipToBox } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { oldRafterOutline, sectionGeometry } from './section-geometry.ts';

/**
 * Draws the seat of one extender large: seat, heel, throat, height above plate and plumb depth.
 * @param layout - the eave. [in]
 * @param extender - the extender that is drawn. [in]
 * @param survey - the old house at this eave. [in]
 * @param design - the overhang's design. [in]
 */
export function drawPlateDetail(
  layout: EaveLayout,
  extender: Extender,
  survey: EaveSurvey,
  design: EaveDesign,
): Drawing {
  const geometry = sectionGeometry({ layout, extender, survey, design });
  const { section } = extender;
  const plate = survey.plateWidthIn;
  const seatIn = section.bearing.kind === 'notched' ? section.bearing.seatIn : 0;
  const topAtWall = geometry.top(0);
  const box = {
    minX: -Math.max(plate, seatIn) - 2.5,
    maxX: 3,
    minY: Math.min(-3, geometry.top(3) - section.plumbDepthIn),
    maxY: geometry.top(-Math.max(plate, seatIn) - 2.5),
  };
  const shapes: Shape[] = [];
  const area = (points: readonly Point[], pen: 'old' | 'new', fill: 'old' | 'new' | 'plate' | 'paper') => {
    const clipped = clipToBox(points, box);
    if (clipped.length > 2) shapes.push({ kind: 'polygon', points: clipped, pen, fill });
  };
  if (geometry.rafter !== undefined) area(oldRafterOutline(geometry.rafter, box.minX - 10), 'old', 'old');
  area(
    [
      [-plate, -1.5],
      [0, -1.5],
      [0, box.minY],
      [-plate, box.minY],
    ],
    'old',
    'paper',
  );
  area(
    [
      [-plate, 0],
      [0, 0],
      [0, -1.5],
      [-plate, -1.5],
    ],
    'old',
    'plate',
  );
  const extenderShape = clipToBox(section.outline, box);
  shapes.push({
    kind: 'polygon',
    points: extenderShape,
    pen: 'new',
    fill: 'new',
    ref: `section/${layout.eaveId}/${extender.id}`,
    title: `Extender ${extender.mark}`,
  });
  shapes.push(...seatDimensions(extender, survey), ...heights(extender, topAtWall, box.maxX));
  if (section.slopeAngleDeg > 0) {
    shapes.push({
      kind: 'text',
      at: [box.minX + 0.5, geometry.top(box.minX + 0.5) - section.plumbDepthIn * 0.35],
      text: `${section.slopeAngleDeg.toFixed(1)} deg`,
      anchor: 'start',
      sizePt: 8,
      rotateDeg: -section.slopeAngleDeg,
    });
  }
  return {
    title: `Seat of ${extender.mark}`,
    description: `The extender over the wall plate at rafter ${extender.rafterNumber}, drawn large: height above plate ${formatLength(topAtWall)}, plumb depth ${formatLength(section.plumbDepthIn)}, throat ${formatLength(section.throatIn)}.`,
    shapes,
    ...box,
  };
}

/** Heights at the wall's face, carried out to the right of the wood: above plate, heel or shim, whole plumb depth. */
function heights(extender: Extender, topAtWall: number, rightIn: number): readonly Shape[] {
  const { bearing, plumbDepthIn } = extender.section;
  const foot = topAtWall - plumbDepthIn;
  const level = (y: number): Shape => ({ kind: 'line', from: [0, y], to: [rightIn, y], pen: 'light' });
  const height = (fromY: number, toY: number, offsetPt: number, text: string): Shape => ({
    kind: 'dimension',
    from: [rightIn, fromY],
    to: [rightIn, toY],
    offsetPt,
    text,
  });
  const shapes: Shape[] = [
    level(topAtWall),
    level(0),
    height(topAtWall, 0, 16, `HAP ${formatLength(topAtWall)}`),
    height(topAtWall, foot, 60, `plumb depth ${formatLength(plumbDepthIn)}`),
  ];
  if (bearing.kind === 'notched') {
    shapes.push(level(foot), height(0, foot, 16, `heel ${formatLength(bearing.heelCutIn)}`));
  } else if (bearing.kind === 'shimmed') {
    shapes.push(level(foot), height(foot, 0, 38, `shim ${formatLength(bearing.shimIn)}`));
  }
  return shapes;
}

function seatDimensions(extender: Extender, survey: EaveSurvey): readonly Shape[] {
  const { section } = extender;
  const angle = (section.slopeAngleDeg * Math.PI) / 180;
  const notched = section.bearing.kind === 'notched';
  // Without a notch the whole depth is the throat, measured from the bottom edge over the plate.
  const middle = -survey.plateWidthIn / 2;
  const topAtWall = section.tailTopAbovePlateIn + section.tailDropIn;
  const foot: Point = notched
    ? [0, 0]
    : [middle, topAtWall - middle * Math.tan(angle) - section.plumbDepthIn];
  const throat: Shape = {
    kind: 'dimension',
    from: foot,
    to: [foot[0] + section.throatIn * Math.sin(angle), foot[1] + section.throatIn * Math.cos(angle)],
    offsetPt: 0,
    text: `throat ${formatLength(section.throatIn)}`,
  };
  if (section.bearing.kind !== 'notched') return [throat];
  const { seatIn } = section.bearing;
  return [
    throat,
    {
      kind: 'dimension',
      from: [0, -1.5],
      to: [-seatIn, -1.5],
      offsetPt: 14,
      text: `seat ${formatLength(seatIn)}`,
    },
    { kind: 'line', from: [-seatIn, 0], to: [-seatIn, -1.5], pen: 'light' },
  ];
}
