/** What a stroke stands for; painters choose width and dash, never colour alone. */
export type Pen = 'old' | 'new' | 'hidden' | 'cut' | 'dimension' | 'centre' | 'ground' | 'light';

/** What an area stands for. Painters use tone and hatch so that it reads in black and white. */
export type Fill = 'none' | 'old' | 'new' | 'joist' | 'plate' | 'offcut' | 'waste' | 'paper';

/** A shape of a drawing. Coordinates in inches of the thing drawn, x right, y up. */
export type Shape =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly pen: Pen }
  | {
      readonly kind: 'polygon';
      readonly points: readonly Point[];
      readonly pen: Pen;
      readonly fill: Fill;
      /** Ref of what it shows, so that a click can walk back. */
      readonly ref?: string;
      readonly title?: string;
    }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Size on paper, whatever the scale. [pt] */
      readonly sizePt: number;
      readonly rotateDeg?: number;
      readonly bold?: boolean;
    }
  /** A dimension line between two points, offset square to their line on the left-hand side. */
  | {
      readonly kind: 'dimension';
      readonly from: Point;
      readonly to: Point;
      /** Distance from the points to the dimension line on paper, whatever the scale. [pt] */
      readonly offsetPt: number;
      readonly text: string;
    };

export type Point = readonly [xIn: number, yIn: number];

/** A drawing to scale, as data. */
export type Drawing = {
  readonly title: string;
  /** What it shows, in words, for those who cannot see it. */
  readonly description: string;
  readonly shapes: readonly Shape[];
  /** Extent of the thing drawn; painters add room for text and dimensions. [in] */
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};
