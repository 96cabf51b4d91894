import { assertNever } from '../result.ts';
import type { Drawing, Point } from './drawing.ts';
import { cutAroundText } from './cut-around-text.ts';
import { paintDimension } from './paint-dimension.ts';
import { paintRunning } from './paint-running.ts';
import type { Painted, PaintedText, Pixel, Primitive } from './painted.ts';
import { type TakenRoom, takenRoom } from './taken-room.ts';
import { type TextBox, textBox, textWidth } from './text-box.ts';

export type PaintOptions = {
  /** Pixels for one point of type: 96/72 on a screen, 1 on paper. [px/pt] */
  readonly pxPerPt: number;
  /** Clear border around everything. [pt] */
  readonly paddingPt?: number;
};

/**
 * Turns a drawing into flat primitives in pixels: scales it, turns y down, resolves dimensions, and moves texts that
 * would cover one another. The result is as large as what is on it.
 * @param drawing - the drawing. [in]
 * @param pxPerInch - pixels for one inch of the thing drawn, e.g. 1.5 for 1/4" = 1' on paper (1 px = 1 pt). [px/in]
 * @param options - size of type and border.
 */
export function paint(drawing: Drawing, pxPerInch: number, options: PaintOptions): Painted {
  const { pxPerPt } = options;
  const toPixel = ([x, y]: Point): Pixel => [(x - drawing.minX) * pxPerInch, (drawing.maxY - y) * pxPerInch];
  const primitives: Primitive[] = [];
  const texts: PaintedText[] = [];
  const taken = takenRoom();

  for (const shape of drawing.shapes) {
    if (shape.kind === 'line') {
      const [x1, y1] = toPixel(shape.from);
      const [x2, y2] = toPixel(shape.to);
      primitives.push({ kind: 'line', x1, y1, x2, y2, pen: shape.pen });
    } else if (shape.kind === 'polygon') {
      primitives.push({
        kind: 'polygon',
        points: shape.points.map(toPixel),
        pen: shape.pen,
        fill: shape.fill,
        ...(shape.ref === undefined ? {} : { ref: shape.ref }),
        ...(shape.title === undefined ? {} : { title: shape.title }),
      });
    } else if (shape.kind === 'text') {
      const [x, y] = toPixel(shape.at);
      const placed = clearOf(
        {
          kind: 'text',
          x,
          y,
          text: shape.text,
          anchor: shape.anchor,
          sizePx: shape.sizePt * pxPerPt,
          // Drawings turn counter-clockwise (y up), primitives clockwise (y down).
          rotateDeg: -(shape.rotateDeg ?? 0) || 0,
          bold: shape.bold ?? false,
        },
        taken,
      );
      texts.push(placed);
      taken.take(textBox(placed));
    }
  }
  for (const shape of drawing.shapes) {
    if (shape.kind !== 'running') continue;
    const painted = paintRunning(shape, toPixel, pxPerPt, taken);
    primitives.push(...painted.primitives);
    texts.push(...painted.texts);
  }
  for (const shape of drawing.shapes) {
    if (shape.kind !== 'dimension') continue;
    const painted = paintDimension(shape, toPixel, pxPerPt, taken);
    primitives.push(...painted.lines);
    texts.push(painted.text);
    taken.take(textBox(painted.text));
  }
  return shiftIntoView(
    drawing,
    [
      ...primitives.flatMap((primitive): readonly Primitive[] =>
        isThin(primitive)
          ? cutAroundText(primitive, taken.near(primitive.x1, primitive.y1, primitive.x2, primitive.y2))
          : [primitive],
      ),
      ...texts,
    ],
    taken.boxes,
    pxPerInch,
    (options.paddingPt ?? 4) * pxPerPt,
  );
}

/** Lines that only help to read: they give way to figures. Members do not. */
function isThin(primitive: Primitive): primitive is Extract<Primitive, { kind: 'line' }> {
  return primitive.kind === 'line' && (primitive.pen === 'dimension' || primitive.pen === 'light');
}

/** Moves a text along a stagger until it is clear: a turned text further along itself, a level one row by row. */
function clearOf(text: PaintedText, taken: TakenRoom): PaintedText {
  const angle = (text.rotateDeg * Math.PI) / 180;
  const level = Math.abs(Math.sin(angle)) < 0.2;
  const step = level ? text.sizePx * 1.15 : textWidth(text.text, text.sizePx) + text.sizePx * 0.6;
  const direction: Pixel = level
    ? [-Math.sin(angle), Math.cos(angle)]
    : text.anchor === 'end'
      ? [-Math.cos(angle), -Math.sin(angle)]
      : [Math.cos(angle), Math.sin(angle)];
  for (let tries = 0; tries < 9; tries += 1) {
    const moved = {
      ...text,
      x: text.x + direction[0] * step * tries,
      y: text.y + direction[1] * step * tries,
    };
    if (taken.isFree(textBox(moved))) return moved;
  }
  return text;
}

function shiftIntoView(
  drawing: Drawing,
  primitives: readonly Primitive[],
  boxes: readonly TextBox[],
  pxPerInch: number,
  padding: number,
): Painted {
  const extent = {
    left: 0,
    top: 0,
    right: (drawing.maxX - drawing.minX) * pxPerInch,
    bottom: (drawing.maxY - drawing.minY) * pxPerInch,
  };
  const include = (x: number, y: number) => {
    extent.left = Math.min(extent.left, x);
    extent.right = Math.max(extent.right, x);
    extent.top = Math.min(extent.top, y);
    extent.bottom = Math.max(extent.bottom, y);
  };
  for (const primitive of primitives) {
    if (primitive.kind === 'line') {
      include(primitive.x1, primitive.y1);
      include(primitive.x2, primitive.y2);
    } else if (primitive.kind === 'polygon') {
      for (const [x, y] of primitive.points) include(x, y);
    }
  }
  for (const box of boxes) for (const [x, y] of box) include(x, y);

  const dx = padding - extent.left;
  const dy = padding - extent.top;
  return {
    title: drawing.title,
    description: drawing.description,
    widthPx: extent.right - extent.left + 2 * padding,
    heightPx: extent.bottom - extent.top + 2 * padding,
    pxPerInch,
    originPx: [dx - drawing.minX * pxPerInch, dy + drawing.maxY * pxPerInch],
    primitives: primitives.map((primitive) => shifted(primitive, dx, dy)),
  };
}

function shifted(primitive: Primitive, dx: number, dy: number): Primitive {
  switch (primitive.kind) {
    case 'line':
      return {
        ...primitive,
        x1: primitive.x1 + dx,
        x2: primitive.x2 + dx,
        y1: primitive.y1 + dy,
        y2: primitive.y2 + dy,
      };
    case 'polygon':
      return { ...primitive, points: primitive.points.map(([x, y]): Pixel => [x + dx, y + dy]) };
    case 'text':
      return { ...primitive, x: primitive.x + dx, y: primitive.y + dy };
    default:
      return assertNever(primitive);
  }
}
