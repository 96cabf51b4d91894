import type { Point } from './drawing.ts';

export type Box = {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};

/** Cuts a polygon to a box, side by side of the box (Sutherland and Hodgman, 1974). */
export function clipToBox(points: readonly Point[], box: Box): readonly Point[] {
  let result = points;
  result = clipSide(result, ([x]) => x - box.minX);
  result = clipSide(result, ([x]) => box.maxX - x);
  result = clipSide(result, ([, y]) => y - box.minY);
  return clipSide(result, ([, y]) => box.maxY - y);
}

function clipSide(points: readonly Point[], inside: (point: Point) => number): readonly Point[] {
  return points.flatMap((point, index): readonly Point[] => {
    const next = points[(index + 1) % points.length] ?? point;
    const here = inside(point);
    const there = inside(next);
    const kept: readonly Point[] = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [...kept, [point[0] + (next[0] - point[0]) * share, point[1] + (next[1] - point[1]) * share]];
  });
}
