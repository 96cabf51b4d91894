import type { Point, Shape } from './drawing.ts';
import type { PaintedText, Pixel, Primitive } from './painted.ts';
import { spread } from './spread.ts';
import type { TakenRoom } from './taken-room.ts';
import { textBox, textWidth } from './text-box.ts';

type Running = Extract<Shape, { kind: 'running' }>;

const sizePt = 7.5;
const tickPt = 2.6;
const originPt = 2.2;
/** From the line to the figures: straight where there is room, and a bend where a figure has to move aside. [pt] */
const leaderPt = 8;
/** How often a row of figures that would cover other texts is moved further out. */
const mostRows = 6;

/**
 * Resolves running dimensions into their line, the origin's circle, a tick at each stop and the figures, which stand
 * square to the line and move apart where stops crowd, each with a bent leader to its tick.
 * Source: running dimensions with one origin marked by a circle, ISO 129-1, from memory.
 * @param running - the dimensions. [in]
 * @param toPixel - places a point of the drawing. [px]
 * @param pxPerPt - pixels for a point of type. [px/pt]
 * @param taken - where texts stand already; the figures are added.
 */
export function paintRunning(
  running: Running,
  toPixel: (point: Point) => Pixel,
  pxPerPt: number,
  taken: TakenRoom,
): { readonly primitives: readonly Primitive[]; readonly texts: readonly PaintedText[] } {
  const { origin, direction, stops } = running;
  const placeOf = (atIn: number): Pixel =>
    toPixel([origin[0] + direction[0] * atIn, origin[1] + direction[1] * atIn]);
  const zero = placeOf(0);
  // The drawing's scale is the same both ways, so that a unit of direction is a unit on paper with y turned down.
  const along: Pixel = [direction[0], -direction[1]];
  const out: Pixel = [
    along[1] * Math.sign(running.offsetPt || 1),
    -along[0] * Math.sign(running.offsetPt || 1),
  ];
  const offset = Math.abs(running.offsetPt) * pxPerPt;
  const at = (alongPx: number, outPx: number): Pixel => [
    zero[0] + along[0] * alongPx + out[0] * outPx,
    zero[1] + along[1] * alongPx + out[1] * outPx,
  ];
  const alongOf = (atIn: number): number => {
    const place = placeOf(atIn);
    return (place[0] - zero[0]) * along[0] + (place[1] - zero[1]) * along[1];
  };
  const size = sizePt * pxPerPt;
  const tick = tickPt * pxPerPt;
  const wanted = stops.map((stop) => alongOf(stop.atIn));
  const places = spread(wanted, size * 1.15);
  const texts = rowOfFigures(
    stops.map(({ text }) => text),
    (index, outPx) => at(places[index] ?? 0, outPx),
    { out, size, fromPx: offset + leaderPt * pxPerPt },
    taken,
  );
  const primitives: Primitive[] = [
    line(at(alongOf(running.fromIn), offset), at(alongOf(running.toIn), offset)),
  ];
  for (const [index, place] of wanted.entries()) {
    const label = places[index] ?? place;
    const reach = texts.fromPx - 1.5 * pxPerPt;
    primitives.push(line(at(place, offset - tick), at(place, offset + tick)));
    if (Math.abs(label - place) < 0.75 * pxPerPt)
      primitives.push(line(at(place, offset + tick), at(place, reach)));
    else primitives.push(line(at(place, offset + tick), at(label, reach)));
  }
  if (running.fromIn <= 1e-6 && running.toIn >= -1e-6) {
    const radius = originPt * pxPerPt;
    primitives.push({
      kind: 'polygon',
      points: Array.from({ length: 16 }, (_, index): Pixel => {
        const angle = (index * Math.PI) / 8;
        const [x, y] = at(0, offset);
        return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
      }),
      pen: 'dimension',
      fill: 'paper',
    });
  }
  return { primitives, texts: texts.painted };
}

function line(a: Pixel, b: Pixel): Primitive {
  return { kind: 'line', x1: a[0], y1: a[1], x2: b[0], y2: b[1], pen: 'dimension' };
}

/** All figures in one row, as far out as they cover no other text. */
function rowOfFigures(
  figures: readonly string[],
  placeOf: (index: number, outPx: number) => Pixel,
  row: { readonly out: Pixel; readonly size: number; readonly fromPx: number },
  taken: TakenRoom,
): { readonly painted: readonly PaintedText[]; readonly fromPx: number } {
  // The figures read outward where that runs right or up the page, and inward where it would stand on its head.
  const outward = row.out[0] > 1e-9 || (Math.abs(row.out[0]) <= 1e-9 && row.out[1] < 0);
  const reading: Pixel = outward ? row.out : [-row.out[0], -row.out[1]];
  const rotateDeg = (Math.atan2(reading[1], reading[0]) * 180) / Math.PI;
  // Half of a figure's height to the right of its reading, so that it stands on its leader's line.
  const drop: Pixel = [-reading[1] * 0.26 * row.size, reading[0] * 0.26 * row.size];
  const painted = (fromPx: number): readonly PaintedText[] =>
    figures.map((text, index) => {
      const [x, y] = placeOf(index, fromPx);
      return {
        kind: 'text',
        x: x + drop[0],
        y: y + drop[1],
        text,
        anchor: outward ? 'start' : 'end',
        sizePx: row.size,
        rotateDeg,
        bold: false,
      };
    });
  let fromPx = row.fromPx;
  for (let tries = 0; tries < mostRows; tries += 1) {
    if (painted(fromPx).every((text) => taken.isFree(textBox(text)))) break;
    fromPx += Math.max(...figures.map((text) => textWidth(text, row.size)), row.size) / 2;
  }
  const texts = painted(fromPx);
  for (const text of texts) taken.take(textBox(text));
  return { painted: texts, fromPx };
}
