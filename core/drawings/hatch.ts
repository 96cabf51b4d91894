import type { Fill } from './drawing.ts';
import type { Pixel } from './painted.ts';

/** Lines of one direction over an area: distance on paper, and angle from level, clockwise with y down. */
export type Hatch = { readonly spacingPt: number; readonly degrees: number };

/** What is drawn over areas, so that they differ in black and white. */
export const hatches: Readonly<Partial<Record<Fill, readonly Hatch[]>>> = {
  joist: [{ spacingPt: 3, degrees: 45 }],
  waste: [{ spacingPt: 2, degrees: -45 }],
  plate: [{ spacingPt: 5, degrees: -45 }],
  hung: [{ spacingPt: 3, degrees: 0 }],
  header: [{ spacingPt: 2, degrees: 90 }],
  filler: [
    { spacingPt: 2.4, degrees: 45 },
    { spacingPt: 2.4, degrees: -45 },
  ],
  whole: [{ spacingPt: 4, degrees: -30 }],
};

/**
 * Fills a polygon with parallel lines, clipped to it (even-odd).
 * @param points - corners of the polygon. [px]
 * @param spacing - distance between lines. [px]
 * @param degrees - direction of the lines from level. [deg]
 * @returns the ends of each line. [px]
 */
export function hatchLines(
  points: readonly Pixel[],
  spacing: number,
  degrees: number,
): readonly (readonly [Pixel, Pixel])[] {
  const angle = (degrees * Math.PI) / 180;
  const along: Pixel = [Math.cos(angle), Math.sin(angle)];
  const across: Pixel = [-along[1], along[0]];
  const heights = points.map(([x, y]) => x * across[0] + y * across[1]);
  const lines: (readonly [Pixel, Pixel])[] = [];
  // Lines stand on whole multiples of the spacing, so that neighbouring areas hatch alike.
  for (
    let height = Math.ceil(Math.min(...heights) / spacing) * spacing;
    height <= Math.max(...heights);
    height += spacing
  ) {
    const crossings: number[] = [];
    points.forEach((from, index) => {
      const to = points[(index + 1) % points.length] ?? from;
      const low = from[0] * across[0] + from[1] * across[1];
      const high = to[0] * across[0] + to[1] * across[1];
      if (low <= height === high <= height) return;
      const share = (height - low) / (high - low);
      const x = from[0] + (to[0] - from[0]) * share;
      const y = from[1] + (to[1] - from[1]) * share;
      crossings.push(x * along[0] + y * along[1]);
    });
    crossings.sort((a, b) => a - b);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const place = (distance: number): Pixel => [
        along[0] * distance + across[0] * height,
        along[1] * distance + across[1] * height,
      ];
      lines.push([place(crossings[pair] ?? 0), place(crossings[pair + 1] ?? 0)]);
    }
  }
  return lines;
}
