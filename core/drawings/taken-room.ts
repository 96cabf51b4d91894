import { boxesOverlap, type TextBox } from './text-box.ts';

/** Where texts stand already, by squares of the paper, so that a look at one place does not go through all of them. */
export type TakenRoom = {
  /** Marks a box as taken. */
  readonly take: (box: TextBox) => void;
  /** Whether a box would cover none that is taken. */
  readonly isFree: (box: TextBox) => boolean;
  /** Taken boxes that reach into the rectangle between two corners, in the order they were taken. [px] */
  readonly near: (x1: number, y1: number, x2: number, y2: number) => readonly TextBox[];
  /** All that is taken, in order. */
  readonly boxes: readonly TextBox[];
};

/** An upright rectangle. [px] */
type Bounds = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** A taken box with its bounds and its place in the order. */
type Taken = { readonly box: TextBox; readonly bounds: Bounds; readonly index: number };

/** About as wide as a figure: a text lies in a few squares, and a square holds a few texts. [px] */
const squarePx = 24;

/** Makes room in which nothing is taken yet. */
export function takenRoom(): TakenRoom {
  const boxes: TextBox[] = [];
  const all: Taken[] = [];
  const squares = new Map<number, Map<number, Taken[]>>();

  /** Some taken boxes whose bounds meet these pass the test; a box in several squares may be tested more than once. */
  const anyMeeting = (bounds: Bounds, test: (taken: Taken) => boolean): boolean => {
    const passes = (taken: Taken): boolean => meet(taken.bounds, bounds) && test(taken);
    const [left, right] = [squareOf(bounds.left), squareOf(bounds.right)];
    const [top, bottom] = [squareOf(bounds.top), squareOf(bounds.bottom)];
    // A line across the whole drawing would go through more squares than there are boxes.
    if ((right - left + 1) * (bottom - top + 1) > all.length) return all.some(passes);
    for (let column = left; column <= right; column += 1) {
      const rows = squares.get(column);
      if (rows === undefined) continue;
      for (let row = top; row <= bottom; row += 1) {
        if (rows.get(row)?.some(passes) === true) return true;
      }
    }
    return false;
  };

  return {
    boxes,
    isFree: (box) => !anyMeeting(boundsOf(box), (taken) => boxesOverlap(taken.box, box)),
    near: (x1, y1, x2, y2) => {
      const bounds = {
        left: Math.min(x1, x2),
        top: Math.min(y1, y2),
        right: Math.max(x1, x2),
        bottom: Math.max(y1, y2),
      };
      const found = new Map<number, TextBox>();
      anyMeeting(bounds, ({ box, index }) => {
        found.set(index, box);
        return false;
      });
      return [...found].sort(([a], [b]) => a - b).map(([, box]) => box);
    },
    take: (box) => {
      const bounds = boundsOf(box);
      const taken = { box, bounds, index: boxes.length };
      boxes.push(box);
      all.push(taken);
      for (let column = squareOf(bounds.left); column <= squareOf(bounds.right); column += 1) {
        const rows = squares.get(column) ?? new Map<number, Taken[]>();
        squares.set(column, rows);
        for (let row = squareOf(bounds.top); row <= squareOf(bounds.bottom); row += 1) {
          const here = rows.get(row);
          if (here === undefined) rows.set(row, [taken]);
          else here.push(taken);
        }
      }
    },
  };
}

function boundsOf([a, b, c, d]: TextBox): Bounds {
  return {
    left: Math.min(a[0], b[0], c[0], d[0]),
    top: Math.min(a[1], b[1], c[1], d[1]),
    right: Math.max(a[0], b[0], c[0], d[0]),
    bottom: Math.max(a[1], b[1], c[1], d[1]),
  };
}

function meet(one: Bounds, other: Bounds): boolean {
  return (
    one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom
  );
}

function squareOf(px: number): number {
  return Math.floor(px / squarePx);
}
