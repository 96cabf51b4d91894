/** A second construction of the section, by points and lines alone, to hold the formulas against. */
export type Point = { readonly x: number; readonly y: number };
export type Line = { readonly through: Point; readonly along: Point };

/** Where two lines meet, by Cramer's rule. */
export function meet(one: Line, other: Line): Point {
  const cross = one.along.x * other.along.y - one.along.y * other.along.x;
  const dx = other.through.x - one.through.x;
  const dy = other.through.y - one.through.y;
  const reach = (dx * other.along.y - dy * other.along.x) / cross;
  return { x: one.through.x + reach * one.along.x, y: one.through.y + reach * one.along.y };
}

/** Distance between two points. */
export function between(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

/** Distance of a point from a line, square to it, by dropping a foot on it. */
export function squareDistance(point: Point, line: Line): number {
  return between(point, meet(line, { through: point, along: turned(line.along) }));
}

/** A direction turned by a right angle. */
export function turned({ x, y }: Point): Point {
  return { x: -y, y: x };
}

/** Area inside corners in order (shoelace); positive counter-clockwise. */
export function areaOf(corners: readonly Point[]): number {
  return corners.reduce((sum, corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    return sum + (corner.x * next.y - next.x * corner.y) / 2;
  }, 0);
}

/** The part of an area that lies inside the wall face and below the plate's top: what a notch takes away. */
export function insideBelowPlate(corners: readonly Point[]): readonly Point[] {
  return keep(
    keep(corners, ({ x }) => -x),
    ({ y }) => -y,
  );
}

/** Cuts an area off where a measure goes below zero, corner by corner. */
function keep(corners: readonly Point[], measure: (point: Point) => number): readonly Point[] {
  return corners.flatMap((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const [here, there] = [measure(corner), measure(next)];
    const kept = here >= 0 ? [corner] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [
      ...kept,
      { x: corner.x + share * (next.x - corner.x), y: corner.y + share * (next.y - corner.y) },
    ];
  });
}
