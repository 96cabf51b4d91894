import type { EaveLayout } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import type { Drawing, Point, Shape } from './drawing.ts';

/** Heights are drawn this many times larger than lengths. */
export const exaggeration = 10;

/**
 * Draws the tails' own heights along the eave, ten times exaggerated, against the line that they are brought to.
 * @param layout - the eave, seen from outside. [in]
 */
export function drawFasciaLine(layout: EaveLayout): Drawing {
  const { fasciaLine } = layout;
  const middle = fasciaLine.atStartIn + (fasciaLine.risePerInch * layout.wallLengthIn) / 2;
  const raised = (heightIn: number) => (heightIn - middle) * exaggeration;
  const lineAt = (stationIn: number) => fasciaLine.atStartIn + fasciaLine.risePerInch * stationIn;
  const before = layout.extenders.map((extender) => ({
    extender,
    point: [extender.centreIn, raised(lineAt(extender.centreIn) - extender.liftAtTailIn)] as Point,
  }));
  const shapes: Shape[] = [];
  before.forEach(({ extender, point }, index) => {
    const next = before[index + 1];
    if (next !== undefined) shapes.push({ kind: 'line', from: point, to: next.point, pen: 'hidden' });
    const onLine: Point = [extender.centreIn, raised(lineAt(extender.centreIn))];
    shapes.push(
      { kind: 'line', from: point, to: onLine, pen: 'light' },
      {
        kind: 'polygon',
        points: [
          [point[0] - 1.5, point[1]],
          [point[0], point[1] + 1.5],
          [point[0] + 1.5, point[1]],
          [point[0], point[1] - 1.5],
        ],
        pen: 'old',
        fill: 'paper',
        ref: `section/${layout.eaveId}/${extender.rafterId}`,
        title: `${extender.mark}: ${liftText(extender.liftAtTailIn)}`,
      },
      {
        kind: 'text',
        at: [extender.centreIn + 1.5, Math.max(point[1], onLine[1]) + 4],
        text: liftText(extender.liftAtTailIn),
        anchor: 'start',
        sizePt: 6.5,
        rotateDeg: 90,
      },
    );
  });
  if (fasciaLine.mode !== 'as-found') {
    shapes.push({
      kind: 'line',
      from: [0, raised(lineAt(0))],
      to: [layout.wallLengthIn, raised(lineAt(layout.wallLengthIn))],
      pen: 'new',
    });
  }
  const heights = [
    ...before.map(({ point }) => point[1]),
    raised(lineAt(0)),
    raised(lineAt(layout.wallLengthIn)),
  ];
  return {
    title: `Tail heights of ${layout.name}, ${exaggeration} times exaggerated`,
    description: `Each tail's own height against the ${fasciaLine.mode} line: the highest stands ${formatLength(fasciaLine.highestIn)} above it, the lowest ${formatLength(-fasciaLine.lowestIn)} below.`,
    shapes,
    minX: 0,
    maxX: layout.wallLengthIn,
    minY: Math.min(...heights) - 4,
    maxY: Math.max(...heights) + 4,
  };
}

/** Writes how far a tail is brought up or down, to the sixteenth. */
export function liftText(liftIn: number): string {
  const text = formatLength(Math.abs(liftIn));
  if (text === '0"') return '0';
  return liftIn > 0 ? `up ${text}` : `down ${text}`;
}
