import type { EaveLayout } from '../layout/layout-types.ts';
import type { WallReading } from '../survey/survey-document.ts';
import { wallOutIn } from '../survey/wall-line.ts';
import { formatInches } from '../units/format-length.ts';
import { outText } from '../units/offset-words.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { exaggerationOf } from './exaggeration.ts';

/** Drawn between the outermost point of the wall and the innermost of the tails, so that the lines stand apart. [in] */
const apartIn = 14;

/**
 * Draws the bow of the wall in plan, exaggerated: the wall's framing face against its straight reference line, the
 * line of the tails, and each tail's own overhang. Across, only what differs is to scale: the stated overhang between wall
 * and tails is left out.
 * @param layout - the eave, seen from above with the outside below. [in]
 * @param readings - of the wall. [in]
 */
export function drawWallBow(
  layout: EaveLayout,
  readings: readonly Pick<WallReading, 'stationIn' | 'outIn'>[],
): Drawing {
  const { wallLengthIn, extenders } = layout;
  const outs = [0, ...readings.map(({ outIn }) => outIn)];
  const exaggeration = exaggerationOf(Math.max(...outs) - Math.min(...outs), wallLengthIn);
  const stations = [
    0,
    ...readings.map(({ stationIn }) => stationIn).filter((at) => at > 0 && at < wallLengthIn),
    wallLengthIn,
  ].toSorted((a, b) => a - b);
  const wallY = (outIn: number): number => -outIn * exaggeration;
  const wall = stations.map((at): Point => [at, wallY(wallOutIn(readings, at))]);
  // What the line of the tails lies further out than the wall by, beyond the overhang as stated.
  const beyondIn = (outIn: number, overhangIn: number): number => outIn + overhangIn - layout.overhangLevelIn;
  const lowest = Math.min(0, ...wall.map(([, y]) => y));
  const highestTail = Math.max(
    0,
    ...extenders.map(({ wallOutIn: outIn, overhangLevelIn }) => wallY(beyondIn(outIn, overhangLevelIn))),
  );
  const tailY = (outIn: number, overhangIn: number): number =>
    lowest - apartIn - highestTail + wallY(beyondIn(outIn, overhangIn));
  const tails = extenders.map((extender) => ({
    extender,
    end: [extender.centreIn, tailY(extender.wallOutIn, extender.overhangLevelIn)] as Point,
    root: [extender.centreIn, wallY(extender.wallOutIn)] as Point,
  }));
  const heights = [0, ...wall.map(([, y]) => y), ...tails.map(({ end }) => end[1])];
  return {
    title: `Bow of the wall of ${layout.name} in plan, ${exaggeration} times exaggerated`,
    description: describe(layout),
    shapes: [
      { kind: 'line', from: [0, 0], to: [wallLengthIn, 0], pen: 'centre' },
      ...joined(wall, 'old'),
      ...joined(
        tails.map(({ end }) => end),
        'new',
      ),
      ...tails.flatMap(({ extender, end, root }): readonly Shape[] => [
        { kind: 'line', from: root, to: end, pen: 'light' },
        {
          kind: 'polygon',
          points: [
            [end[0] - 1, end[1] - 1],
            [end[0] + 1, end[1] - 1],
            [end[0] + 1, end[1] + 1],
            [end[0] - 1, end[1] + 1],
          ],
          pen: 'new',
          fill: 'new',
          ref: `section/${layout.eaveId}/${extender.id}`,
          title: `${extender.mark}: ${formatInches(extender.overhangLevelIn)} of overhang`,
        },
        {
          kind: 'text',
          at: [end[0] + 1.5, end[1] - 4],
          text: formatInches(extender.overhangLevelIn),
          anchor: 'end',
          sizePt: 6.5,
          rotateDeg: 90,
        },
      ]),
      ...readings
        .filter(({ stationIn }) => stationIn >= 0 && stationIn <= wallLengthIn)
        .map(
          ({ stationIn, outIn }): Shape => ({
            kind: 'text',
            at: [stationIn + 1.5, Math.max(0, wallY(outIn)) + 3],
            text: outText(outIn),
            anchor: 'start',
            sizePt: 6.5,
            rotateDeg: 90,
          }),
        ),
    ],
    minX: 0,
    maxX: wallLengthIn,
    minY: Math.min(...heights) - 4,
    maxY: Math.max(...heights) + 4,
  };
}

function describe({ lineInPlan: { kind, least, most } }: EaveLayout): string {
  const range =
    least === null || most === null
      ? 'No tail stands.'
      : `The tails stick out ${formatInches(least.overhangIn)} to ${formatInches(most.overhangIn)}.`;
  const line = kind === 'straight' ? 'runs straight' : "follows the wall's bow";
  return `The wall's framing face against its straight reference line. The line of the tails ${line}. ${range}`;
}

function joined(points: readonly Point[], pen: 'old' | 'new'): readonly Shape[] {
  return points.slice(1).map((to, index): Shape => ({ kind: 'line', from: points[index] ?? to, to, pen }));
}
