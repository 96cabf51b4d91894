import { lineHeightIn } from '../layout/fascia-line.ts';
import type { EaveLayout, Extender, FasciaLine } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { exaggerationOf } from './exaggeration.ts';

/** A tail on the drawing, before and after it is brought to the line. */
type Place = { readonly extender: Extender; readonly before: Point; readonly after: Point };

/**
 * Draws the wave of the tails along the eave, exaggerated: before, each tail at its own height (diamonds on a
 * dashed line), and after, as it is set (dots). Where the plate was read, so that heights are above a level line, the plate
 * shows in the tails' own heights.
 * @param layout - the eave, seen from outside. [in]
 */
export function drawFasciaLine(layout: EaveLayout): Drawing {
  const { fasciaLine, extenders, wallLengthIn } = layout;
  const exaggeration = waveExaggeration(layout);
  const middleIn = lineHeightIn(fasciaLine, wallLengthIn / 2);
  const raised = (heightIn: number): number => (heightIn - middleIn) * exaggeration;
  const places = extenders.map((extender): Place => {
    const setAtIn = extender.plateUpIn + extender.section.tailTopAbovePlateIn;
    return {
      extender,
      before: [extender.centreIn, raised(setAtIn - extender.liftAtTailIn)],
      after: [extender.centreIn, raised(setAtIn)],
    };
  });
  const ends: readonly Point[] = [0, wallLengthIn].map((at) => [at, raised(lineHeightIn(fasciaLine, at))]);
  const heights = [...places.flatMap(({ before, after }) => [before, after]), ...ends].map(([, y]) => y);
  return {
    title: `Tail heights of ${layout.name}, before and after, ${exaggeration} times exaggerated`,
    description: describe(fasciaLine),
    shapes: [
      ...wave(
        places.map(({ before }) => before),
        'hidden',
      ),
      ...(fasciaLine.mode === 'as-found' ? [] : wave(ends, 'new')),
      ...places.flatMap((place) => tailShapes(place, layout)),
    ],
    minX: 0,
    maxX: wallLengthIn,
    minY: Math.min(...heights) - 4,
    maxY: Math.max(...heights) + 4,
  };
}

/** How many times the heights of the tails are drawn larger than the eave's length, the fall of the line among them. */
export function waveExaggeration({ fasciaLine, wallLengthIn }: EaveLayout): number {
  const fallIn = Math.abs(fasciaLine.risePerInch * wallLengthIn);
  return exaggerationOf(fasciaLine.highestIn - fasciaLine.lowestIn + fallIn, wallLengthIn);
}

function wave(points: readonly Point[], pen: 'hidden' | 'new'): readonly Shape[] {
  return points.slice(1).map((to, index): Shape => ({ kind: 'line', from: points[index] ?? to, to, pen }));
}

function tailShapes({ extender, before, after }: Place, { eaveId }: EaveLayout): readonly Shape[] {
  const lift = liftText(extender.liftAtTailIn);
  const shapes: Shape[] = [
    { kind: 'line', from: before, to: after, pen: 'light' },
    {
      kind: 'polygon',
      points: diamond(before, 1.5),
      pen: 'old',
      fill: 'paper',
      ref: `section/${eaveId}/${extender.id}`,
      title: `${extender.mark}: ${lift}`,
    },
  ];
  if (extender.liftAtTailIn !== 0)
    shapes.push({ kind: 'polygon', points: diamond(after, 0.7), pen: 'new', fill: 'new' });
  return [
    ...shapes,
    {
      kind: 'text',
      at: [extender.centreIn + 1.5, Math.max(before[1], after[1]) + 4],
      text: lift,
      anchor: 'start',
      sizePt: 6.5,
      rotateDeg: 90,
    },
  ];
}

function diamond([x, y]: Point, size: number): readonly Point[] {
  return [
    [x - size, y],
    [x, y + size],
    [x + size, y],
    [x, y - size],
  ];
}

function describe(line: FasciaLine): string {
  const before = `Before, the highest tail stands ${formatLength(line.highestIn)} above the line and the lowest ${formatLength(-line.lowestIn)} below.`;
  if (line.mode === 'as-found') return `Each tail follows its own rafter. ${before} They stay so.`;
  const name = {
    parallel: 'a straight line parallel to the plate',
    level: 'a straight and level line',
    'best-fit': 'the straight line that fits them best',
  }[line.mode];
  return `The tails are brought to ${name}. ${before} After, with seats and shims cut to a sixteenth, they stand within ${formatLength(Math.max(line.highestAfterIn, -line.lowestAfterIn))} of it.`;
}

/** Writes how far a tail is brought up or down, to the sixteenth. */
export function liftText(liftIn: number): string {
  const text = formatLength(Math.abs(liftIn));
  if (text === '0"') return '0';
  return liftIn > 0 ? `up ${text}` : `down ${text}`;
}
