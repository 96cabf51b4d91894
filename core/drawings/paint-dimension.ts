import type { Shape } from './drawing.ts';
import type { PaintedText, Pixel, Primitive } from './painted.ts';
import type { TakenRoom } from './taken-room.ts';
import { textBox, textWidth } from './text-box.ts';

type Dimension = Extract<Shape, { kind: 'dimension' }>;

const tickPt = 2.6;
const gapPt = 2;
const overrunPt = 3;
const sizePt = 7.5;

/**
 * Resolves a dimension into its lines, ticks and text.
 *
 * The text stands on the line and reads from below or from the right; where it does not fit between the ticks or would
 * cover another text, it moves past an end, under the line, or a row further out.
 * @param dimension - the dimension. [in]
 * @param toPixel - places a point of the drawing. [px]
 * @param pxPerPt - pixels for a point of type. [px/pt]
 * @param taken - where texts stand already.
 */
export function paintDimension(
  dimension: Dimension,
  toPixel: (point: readonly [number, number]) => Pixel,
  pxPerPt: number,
  taken: TakenRoom,
): { readonly lines: readonly Primitive[]; readonly text: PaintedText } {
  const from = toPixel(dimension.from);
  const to = toPixel(dimension.to);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Pixel = length === 0 ? [1, 0] : [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  // The left-hand side of a walk from `from` to `to`, with y down.
  const out: Pixel = [along[1], -along[0]];
  const offset = dimension.offsetPt * pxPerPt;
  const start = move(from, out, offset);
  const end = move(to, out, offset);

  const lines: Primitive[] = [];
  const line = (a: Pixel, b: Pixel) =>
    lines.push({ kind: 'line', x1: a[0], y1: a[1], x2: b[0], y2: b[1], pen: 'dimension' });
  if (Math.abs(dimension.offsetPt) > gapPt + 1) {
    const sign = Math.sign(dimension.offsetPt);
    for (const [point, foot] of [
      [from, start],
      [to, end],
    ] as const) {
      line(move(point, out, sign * gapPt * pxPerPt), move(foot, out, sign * overrunPt * pxPerPt));
    }
  }
  const tick = tickPt * pxPerPt;
  for (const foot of [start, end]) {
    line(move(move(foot, along, -tick), out, -tick), move(move(foot, along, tick), out, tick));
  }

  const size = sizePt * pxPerPt;
  const width = textWidth(dimension.text, size);
  const fits = length >= width + 2 * tick;
  const text = place(
    candidates(start, end, along, width, size, fits, dimension.offsetPt),
    dimension.text,
    size,
    along,
    taken,
  );
  const beside = Math.abs((text.x - start[0]) * along[0] + (text.y - start[1]) * along[1] - length / 2);
  const reach = beside + width / 2;
  if (reach > length / 2 + tick && beside > length / 2) {
    // The text stands past an end: the line runs on under it.
    const past =
      (text.x - start[0]) * along[0] + (text.y - start[1]) * along[1] > length / 2
        ? [move(start, along, 0), move(start, along, length / 2 + reach)]
        : [move(end, along, 0), move(end, along, -(length / 2 + reach))];
    line(past[0] ?? start, past[1] ?? end);
  } else {
    line(start, end);
  }
  return { lines, text };
}

function candidates(
  start: Pixel,
  end: Pixel,
  along: Pixel,
  width: number,
  size: number,
  fits: boolean,
  offsetPt: number,
): readonly Pixel[] {
  // The side of the line that is up on the page for upright text.
  const upright = uprightOf(along);
  const up: Pixel = [upright[1], -upright[0]];
  const middle: Pixel = [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2];
  const above = size * 0.28;
  const below = -size * 0.95;
  const pastEnd = move(end, along, width / 2 + size * 0.5);
  const pastStart = move(start, along, -(width / 2 + size * 0.5));
  const outward = offsetPt >= 0 ? 1 : -1;
  const row = (rows: number): number =>
    outward * sideOf(along, up) > 0 ? above + rows * size * 1.15 : below - rows * size * 1.15;
  const between = [move(middle, up, above), move(middle, up, below)];
  const past = [move(pastEnd, up, above), move(pastStart, up, above)];
  const rows = [1, 2, 3].map((count) => move(middle, up, row(count)));
  return fits ? [...between, ...past, ...rows] : [...past, ...rows, ...between];
}

function place(
  spots: readonly Pixel[],
  text: string,
  sizePx: number,
  along: Pixel,
  taken: TakenRoom,
): PaintedText {
  const upright = uprightOf(along);
  const rotateDeg = (Math.atan2(upright[1], upright[0]) * 180) / Math.PI;
  const at = (spot: Pixel): PaintedText => ({
    kind: 'text',
    x: spot[0],
    y: spot[1],
    text,
    anchor: 'middle',
    sizePx,
    rotateDeg,
    bold: false,
  });
  const free = spots.find((spot) => taken.isFree(textBox(at(spot))));
  return at(free ?? spots[0] ?? [0, 0]);
}

/** Text reads from below or from the right, never upside down. */
function uprightOf(along: Pixel): Pixel {
  const flips = along[0] < -1e-9 || (Math.abs(along[0]) <= 1e-9 && along[1] > 0);
  return flips ? [-along[0], -along[1]] : along;
}

function sideOf(along: Pixel, up: Pixel): number {
  const out: Pixel = [along[1], -along[0]];
  return out[0] * up[0] + out[1] * up[1];
}

function move(point: Pixel, direction: Pixel, by: number): Pixel {
  return [point[0] + direction[0] * by, point[1] + direction[1] * by];
}
