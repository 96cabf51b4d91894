import type { Drawing, Fill, Pen } from './drawing.ts';

/** A primitive in pixels: x right, y down, nothing left to work out. */
export type Primitive =
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly pen: Pen;
    }
  | {
      readonly kind: 'polygon';
      readonly points: readonly Pixel[];
      readonly pen: Pen;
      readonly fill: Fill;
      readonly ref?: string;
      readonly title?: string;
    }
  | PaintedText;

/** A text; `x`, `y` is the anchor on its baseline, and it turns about that point, clockwise. */
export type PaintedText = {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly sizePx: number;
  readonly rotateDeg: number;
  readonly bold: boolean;
};

export type Pixel = readonly [x: number, y: number];

/** A drawing, painted: primitives in the order to paint them, inside `0 0 widthPx heightPx`. */
export type Painted = {
  readonly title: Drawing['title'];
  readonly description: Drawing['description'];
  readonly widthPx: number;
  readonly heightPx: number;
  /** Pixels for one inch of the thing drawn. [px/in] */
  readonly pxPerInch: number;
  /** Where 0, 0 of the thing drawn stands, so that a pointer can be told in inches. */
  readonly originPx: Pixel;
  readonly primitives: readonly Primitive[];
};
