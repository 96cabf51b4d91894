import type { Box } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { textWidth } from './text-box.ts';

/** One page of a drawing that is printed at full size. */
export type Tile = {
  readonly drawing: Drawing;
  /** From 1, from left to right and from the top down. */
  readonly number: number;
  readonly column: number;
  readonly row: number;
};

/** So much of the drawing stands on both of two neighbouring pages. [in] */
const overlapIn = 0.75;

/** Arms of an alignment cross, and how far from the page's edges it stands. [in] */
const crossIn = 0.2;

/**
 * Divides a drawing over pages at full size. Neighbouring pages share a strip of 3/4 in. with two crosses in it, which
 * are laid one over the other. Lines are cut at the page's window; a text goes on the page that its place is on.
 * @param drawing - of lines, texts and areas. [in]
 * @param roomIn - width and height that a page leaves. [in]
 * @returns one page where the drawing fits; else as few as hold it, evenly filled.
 */
export function tileDrawing(
  drawing: Drawing,
  roomIn: { readonly widthIn: number; readonly heightIn: number },
): readonly Tile[] {
  const columns = windows(drawing.minX, drawing.maxX, roomIn.widthIn);
  // Rows count from the top down.
  const rows = windows(-drawing.maxY, -drawing.minY, roomIn.heightIn);
  return rows.flatMap(({ from: top, to: bottom }, row) =>
    columns.map(({ from: minX, to: maxX }, column): Tile => {
      const box: Box = { minX, maxX, minY: -bottom, maxY: -top };
      return {
        number: row * columns.length + column + 1,
        column,
        row,
        drawing: {
          ...drawing,
          ...box,
          shapes: [
            ...drawing.shapes.flatMap((shape) => within(shape, box)),
            ...crosses(box, {
              left: column > 0,
              right: column < columns.length - 1,
              above: row > 0,
              below: row < rows.length - 1,
            }),
          ],
        },
      };
    }),
  );
}

function windows(
  from: number,
  to: number,
  room: number,
): readonly { readonly from: number; readonly to: number }[] {
  const whole = to - from;
  if (whole <= room) return [{ from, to }];
  const count = Math.ceil((whole - overlapIn) / (room - overlapIn) - 1e-9);
  const each = (whole + (count - 1) * overlapIn) / count;
  return Array.from({ length: count }, (_, index) => {
    const start = from + index * (each - overlapIn);
    return { from: start, to: start + each };
  });
}

/** What of a shape stands in a page's window. */
function within(shape: Shape, box: Box): readonly Shape[] {
  switch (shape.kind) {
    case 'line': {
      const part = clipLine(shape.from, shape.to, box);
      return part === undefined ? [] : [{ ...shape, from: part[0], to: part[1] }];
    }
    case 'text': {
      const [x, y] = shape.at;
      if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) return [];
      return [(shape.rotateDeg ?? 0) === 0 ? { ...shape, at: [moveInside(shape, box), y] } : shape];
    }
    case 'polygon':
      return shape.points.flatMap((from, index) =>
        within(
          { kind: 'line', from, to: shape.points[(index + 1) % shape.points.length] ?? from, pen: shape.pen },
          box,
        ),
      );
    default:
      throw new Error(`a ${shape.kind} is not drawn at full size`);
  }
}

/** Where a level text stands so that none of it runs past the window, as far as it fits in. [in] */
function moveInside(text: Extract<Shape, { kind: 'text' }>, box: Box): number {
  const widthIn = textWidth(text.text, text.sizePt) / 72;
  const before = { start: 0, middle: widthIn / 2, end: widthIn }[text.anchor];
  const [x] = text.at;
  return Math.max(box.minX + before, Math.min(box.maxX - (widthIn - before), x));
}

/** The part of a line inside a window (Liang and Barsky, 1984). */
export function clipLine(from: Point, to: Point, box: Box): readonly [Point, Point] | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let enters = 0;
  let leaves = 1;
  for (const [step, room] of [
    [-dx, from[0] - box.minX],
    [dx, box.maxX - from[0]],
    [-dy, from[1] - box.minY],
    [dy, box.maxY - from[1]],
  ] as const) {
    if (step === 0) {
      if (room < 0) return undefined;
    } else if (step < 0) enters = Math.max(enters, room / step);
    else leaves = Math.min(leaves, room / step);
  }
  if (enters >= leaves) return undefined;
  const at = (share: number): Point => [from[0] + dx * share, from[1] + dy * share];
  return [at(enters), at(leaves)];
}

/** Crosses in the strips that a page shares with its neighbours. */
function crosses(
  box: Box,
  shared: {
    readonly left: boolean;
    readonly right: boolean;
    readonly above: boolean;
    readonly below: boolean;
  },
): readonly Shape[] {
  const half = overlapIn / 2;
  const centres: Point[] = [];
  for (const y of quarters(box.minY, box.maxY)) {
    if (shared.left) centres.push([box.minX + half, y]);
    if (shared.right) centres.push([box.maxX - half, y]);
  }
  for (const x of quarters(box.minX, box.maxX)) {
    if (shared.above) centres.push([x, box.maxY - half]);
    if (shared.below) centres.push([x, box.minY + half]);
  }
  return centres.flatMap(([x, y]): readonly Shape[] => [
    { kind: 'line', from: [x - crossIn, y], to: [x + crossIn, y], pen: 'old' },
    { kind: 'line', from: [x, y - crossIn], to: [x, y + crossIn], pen: 'old' },
  ]);
}

/** A quarter of the way in from either end. [in] */
function quarters(low: number, high: number): readonly number[] {
  return [low + (high - low) / 4, high - (high - low) / 4];
}
