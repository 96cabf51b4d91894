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
    minX: -Math.max(plate, seatIn) - 5,
    maxX: 6,
    minY: Math.min(-4, topAtWall - section.plumbDepthIn - 3),
    maxY: geometry.top(-Math.max(plate, seatIn) - 5) + 0.5,
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
    ref: `section/${layout.eaveId}/${extender.rafterId}`,
    title: `Extender ${extender.mark}`,
  });
  shapes.push(...seatDimensions(extender, geometry.top, survey), {
    kind: 'dimension',
    from: [0, topAtWall],
    to: [0, 0],
    offsetPt: 22,
    text: `HAP ${formatLength(topAtWall)}`,
  });
  if (section.slopeAngleDeg > 0) {
    shapes.push({
      kind: 'text',
      at: [box.minX + 1, geometry.top(box.minX + 1) - section.plumbDepthIn / 2],
      text: `${section.slopeAngleDeg.toFixed(1)} deg`,
      anchor: 'start',
      sizePt: 7.5,
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

function seatDimensions(
  extender: Extender,
  top: (x: number) => number,
  survey: EaveSurvey,
): readonly Shape[] {
  const { section } = extender;
  const throatFoot: Point =
    section.bearing.kind === 'notched'
      ? [0, 0]
      : [-survey.plateWidthIn / 2, top(-survey.plateWidthIn / 2) - section.plumbDepthIn];
  const angle = (section.slopeAngleDeg * Math.PI) / 180;
  const throat: Shape = {
    kind: 'dimension',
    from: throatFoot,
    to: [
      throatFoot[0] + section.throatIn * Math.sin(angle),
      throatFoot[1] + section.throatIn * Math.cos(angle),
    ],
    offsetPt: 0,
    text: `throat ${formatLength(section.throatIn)}`,
  };
  if (section.bearing.kind === 'notched') {
    const { seatIn, heelCutIn } = section.bearing;
    return [
      throat,
      {
        kind: 'dimension',
        from: [0, 0],
        to: [-seatIn, 0],
        offsetPt: 20,
        text: `seat ${formatLength(seatIn)}`,
      },
      {
        kind: 'dimension',
        from: [0, 0],
        to: [0, -heelCutIn],
        offsetPt: 50,
        text: `heel ${formatLength(heelCutIn)}`,
      },
    ];
  }
  if (section.bearing.kind === 'shimmed') {
    const { shimIn } = section.bearing;
    return [
      throat,
      {
        kind: 'dimension',
        from: [0, shimIn],
        to: [0, 0],
        offsetPt: 50,
        text: `shim ${formatLength(shimIn)}`,
      },
    ];
  }
  return [throat];
}
