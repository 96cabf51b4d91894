/** What a stroke stands for; painters choose width and dash, never colour alone. */
export type Pen = 'old' | 'new' | 'hidden' | 'cut' | 'dimension' | 'centre' | 'ground' | 'light';

/**
 * What an area stands for. Painters use tone and hatch so that it reads in black and white. `hung`: a tail on header
 * blocks; `header`: those blocks; `filler`: what fills a joist's thickness; `whole`: a new rafter in full.
 */
export type Fill =
  | 'none'
  | 'old'
  | 'new'
  | 'joist'
  | 'plate'
  | 'offcut'
  | 'waste'
  | 'paper'
  | 'hung'
  | 'header'
  | 'filler'
  | 'whole';

/** A stop of running dimensions. */
export type RunningStop = {
  /** From the origin along the line. [in] */
  readonly atIn: number;
  readonly text: string;
};

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
    }
  /**
   * Running dimensions: one line, a tick and a figure at each stop, all counted from one origin, which a small circle
   * marks. Set off like a dimension, on the left-hand side of a walk along the line; the figures stand square to it.
   */
  | {
      readonly kind: 'running';
      readonly origin: Point;
      /** Of length one. */
      readonly direction: Point;
      /** The stretch that is drawn, from the origin. [in] */
      readonly fromIn: number;
      readonly toIn: number;
      readonly offsetPt: number;
      readonly stops: readonly RunningStop[];
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
