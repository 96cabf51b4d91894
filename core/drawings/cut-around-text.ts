import type { Pixel, Primitive } from './painted.ts';
import type { TextBox } from './text-box.ts';

type Line = Extract<Primitive, { kind: 'line' }>;

/**
 * Takes out of a thin line what would run through a text, so that no figure is struck through.
 * @param line - a dimension's or reference line. [px]
 * @param boxes - what the texts cover. [px]
 * @returns the parts of the line outside every box, in order; the line itself where it meets none.
 */
export function cutAroundText(line: Line, boxes: readonly TextBox[]): readonly Line[] {
  const inside = boxes.flatMap((box) => insideOf(line, box)).toSorted((a, b) => a[0] - b[0]);
  if (inside.length === 0) return [line];
  const parts: Line[] = [];
  let from = 0;
  for (const [enters, leaves] of inside) {
    if (enters > from) parts.push(part(line, from, enters));
    from = Math.max(from, leaves);
  }
  if (from < 1) parts.push(part(line, from, 1));
  return parts;
}

/** The stretch of a line inside a convex box as shares of its length, by clipping against each side in turn. */
function insideOf(line: Line, box: TextBox): readonly (readonly [enters: number, leaves: number])[] {
  const direction: Pixel = [line.x2 - line.x1, line.y2 - line.y1];
  let enters = 0;
  let leaves = 1;
  for (const [index, corner] of box.entries()) {
    const next = box[(index + 1) % box.length] ?? corner;
    // Corners go clockwise with y down, so that inside is where this is positive.
    const inward: Pixel = [corner[1] - next[1], next[0] - corner[0]];
    const distance = (line.x1 - corner[0]) * inward[0] + (line.y1 - corner[1]) * inward[1];
    const approach = direction[0] * inward[0] + direction[1] * inward[1];
    if (approach === 0) {
      if (distance <= 0) return [];
    } else if (approach > 0) {
      enters = Math.max(enters, -distance / approach);
    } else {
      leaves = Math.min(leaves, -distance / approach);
    }
  }
  return enters < leaves ? [[enters, leaves]] : [];
}

function part(line: Line, from: number, to: number): Line {
  const at = (share: number): Pixel => [
    line.x1 + (line.x2 - line.x1) * share,
    line.y1 + (line.y2 - line.y1) * share,
  ];
  const [x1, y1] = at(from);
  const [x2, y2] = at(to);
  return { ...line, x1, y1, x2, y2 };
}
