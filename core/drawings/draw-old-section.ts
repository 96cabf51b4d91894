import type { EaveLayout, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch, slopeAngleDeg, slopeFactor } from '../units/pitch.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { rafterShape, wallAndPlate, windowHead } from './section-old.ts';

/** How far inside the wall the rafter is drawn, level. [in] */
const insideIn = 40;

/**
 * Draws the old house in section at a rafter that gets no new tail, to the plate's axes: x level and outward, y up.
 * @param layout - the eave. [in]
 * @param rafter - the old rafter. [in]
 * @param survey - the old house at this eave. [in]
 */
export function drawOldSection(layout: EaveLayout, rafter: PlacedRafter, survey: EaveSurvey): Drawing {
  const slope = rafter.pitchRisePer12 / 12;
  const factor = slopeFactor(rafter.pitchRisePer12);
  const oldTailIn = survey.rafters.find(({ id }) => id === rafter.id)?.oldTailIn ?? 0;
  const top = (x: number) => rafter.heightAbovePlateIn - slope * x;
  const minX = -insideIn;
  const head = survey.windowHeadBelowPlateIn;
  const tailFoot = top(oldTailIn) - rafter.depthIn * factor;
  const wallBottom = Math.min(-10, tailFoot - 4, head === null ? 0 : -head - 4);
  const deck = survey.deckThicknessIn;
  const onDeck = ([x, y]: Point): Point => [x + (deck * slope) / factor, y + deck / factor];
  const [start, end]: readonly [Point, Point] = [
    [minX, top(minX)],
    [oldTailIn, top(oldTailIn)],
  ];
  const shapes: Shape[] = [
    rafterShape(layout, rafter, minX, oldTailIn),
    {
      kind: 'polygon',
      points: [start, onDeck(start), onDeck(end), end],
      pen: 'old',
      fill: 'paper',
      title: 'Old deck',
    },
    ...wallAndPlate(layout.eaveId, survey, wallBottom),
    ...windowHead(survey, Math.max(6, oldTailIn)),
    {
      kind: 'text',
      at: [minX / 2, top(minX / 2) - (rafter.depthIn * factor) / 2 - 0.5],
      text: `rafter ${rafter.number}  ${formatPitch(rafter.pitchRisePer12)}`,
      anchor: 'middle',
      sizePt: 8,
      rotateDeg: -slopeAngleDeg(rafter.pitchRisePer12),
      bold: true,
    },
    { kind: 'line', from: [0, 0], to: [Math.max(8, oldTailIn), 0], pen: 'light' },
    { kind: 'line', from: [0, top(0)], to: [Math.max(8, oldTailIn), top(0)], pen: 'light' },
    dimension(
      [Math.max(8, oldTailIn), 0],
      [Math.max(8, oldTailIn), top(0)],
      -16,
      `HAP ${formatLength(rafter.heightAbovePlateIn)}`,
    ),
  ];
  if (oldTailIn > 0)
    shapes.push(
      dimension([oldTailIn, wallBottom], [0, wallBottom], 14, `old tail ${formatLength(oldTailIn)}`),
    );
  return {
    title: `Section at rafter ${rafter.number}, ${layout.name}, as found`,
    description: [
      `Section through ${layout.name} at rafter ${rafter.number}, which gets no new tail, seen with the outside to the right.`,
      `Rafter ${formatLength(rafter.thicknessIn)} by ${formatLength(rafter.depthIn)} at ${formatPitch(rafter.pitchRisePer12)}, height above plate ${formatLength(rafter.heightAbovePlateIn)}.`,
      oldTailIn > 0 ? `Its old tail sticks out ${formatLength(oldTailIn)} level.` : 'It ends at the wall.',
    ].join(' '),
    shapes,
    minX,
    minY: wallBottom,
    maxX: Math.max(8, oldTailIn),
    maxY: onDeck(start)[1],
  };
}

function dimension(from: Point, to: Point, offsetPt: number, text: string): Shape {
  return { kind: 'dimension', from, to, offsetPt, text };
}
