import { formatLength } from '../units/format-length.ts';
import { clipToBox } from './clip.ts';
import type { Shape } from './drawing.ts';
import { band, faceAt, type PlanView, rectangle } from './plan-view.ts';

/** How far in a joist and what else stands on the plate are drawn past it. [in] */
const joistPastIn = 16;
const otherPastIn = 6;

/** Distance of the wall's readings: past the old rafters' stations. [pt] */
const bowLinePt = 70;

/** Plate, old rafters, joists and what else stands on the plate; the wall's bow where it was read. */
export function oldFraming(view: PlanView): readonly Shape[] {
  const { layout, box, plateIn: plate } = view;
  const shapes: Shape[] = [];
  const push = (shape: Extract<Shape, { kind: 'polygon' }>) => {
    const points = clipToBox(shape.points, box);
    if (points.length > 2) shapes.push({ ...shape, points });
  };
  push({
    kind: 'polygon',
    points: band(wallStations(view), (station) => faceAt(view, station), plate),
    pen: 'old',
    fill: 'plate',
    title: 'Wall plate',
  });
  for (const rafter of layout.rafters) {
    push({
      kind: 'polygon',
      points: rectangle(rafter.leftFaceIn, rafter.rightFaceIn, faceAt(view, rafter.centreIn), box.maxY),
      pen: 'old',
      fill: 'old',
      ref: `station/${layout.eaveId}/${rafter.id}`,
      title: `Rafter ${rafter.number} at ${formatLength(rafter.centreIn)}`,
    });
  }
  for (const thing of layout.occupied) {
    if (thing.kind === 'rafter') continue;
    const middle = (thing.leftIn + thing.rightIn) / 2;
    const face = faceAt(view, middle);
    push({
      kind: 'polygon',
      points: rectangle(
        thing.leftIn,
        thing.rightIn,
        face,
        face + plate + (thing.kind === 'joist' ? joistPastIn : otherPastIn),
      ),
      pen: 'old',
      fill: thing.kind === 'joist' ? 'joist' : 'waste',
      title: thing.label,
    });
    if (thing.kind === 'obstruction' && view.inside(middle)) {
      shapes.push({
        kind: 'text',
        at: [middle, face + plate + otherPastIn + 2],
        text: thing.label,
        anchor: 'middle',
        sizePt: 6.5,
      });
    }
  }
  return [...shapes, ...wallBow(view)];
}

/** The reference line that the wall was read from, and how far the wall stands off it, above the rafters' stations. */
function wallBow({ layout, box, inside, wallReadings }: PlanView): readonly Shape[] {
  if (wallReadings.every(({ outIn }) => outIn === 0)) return [];
  const stops = wallReadings
    .filter(({ stationIn }) => inside(stationIn))
    .toSorted((a, b) => a.stationIn - b.stationIn)
    .map(({ stationIn, outIn }) => ({ atIn: stationIn, text: bowText(outIn) }));
  const [fromIn, toIn] = [Math.max(0, box.minX), Math.min(layout.wallLengthIn, box.maxX)];
  return [
    { kind: 'line', from: [fromIn, 0], to: [toIn, 0], pen: 'centre' },
    {
      kind: 'running',
      origin: [0, box.maxY],
      direction: [1, 0],
      fromIn,
      toIn,
      offsetPt: bowLinePt,
      stops,
    },
  ];
}

/** How far the wall's framing face stands off the reference line: `wall out 5/8"`, `wall in 1/4"`, `wall 0`. */
export function bowText(outIn: number): string {
  const text = formatLength(Math.abs(outIn));
  if (text === '0"') return 'wall 0';
  return outIn > 0 ? `wall out ${text}` : `wall in ${text}`;
}

/** Stations between which the wall is taken as straight. */
function wallStations({ layout, wallReadings }: PlanView): readonly number[] {
  const read = wallReadings
    .map(({ stationIn }) => stationIn)
    .filter((stationIn) => stationIn > 0 && stationIn < layout.wallLengthIn);
  return [0, ...read.toSorted((a, b) => a - b), layout.wallLengthIn];
}
