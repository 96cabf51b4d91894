import type { EaveLayout } from '../layout/layout-types.ts';
import type { CoverBoard } from '../takeoff/panel-layout.ts';
import { formatLength } from '../units/format-length.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { rectangle } from './plan-view.ts';

/** Distance of the running dimensions of the lowest course's joints, below the edge. [pt] */
const linePt = 12;

/**
 * Draws the new deck laid flat, its lower edge below: every panel or plank with its length, the tails under it as thin
 * lines, and joints that no tail carries marked.
 * @param layout - the eave. [in]
 * @param boards - panels or planks as laid. [in]
 */
export function drawDeck(layout: EaveLayout, boards: readonly CoverBoard[]): Drawing {
  const [first] = boards;
  if (first === undefined) throw new Error('a deck without a board cannot be drawn');
  const minX = Math.min(...boards.map(({ fromIn }) => fromIn));
  const maxX = Math.max(...boards.map(({ toIn }) => toIn));
  const minY = Math.min(...boards.map(({ lowIn }) => lowIn));
  const maxY = Math.max(...boards.map(({ highIn }) => highIn));
  const loose = boards.flatMap(({ rightJoint, lowIn, highIn }) =>
    rightJoint !== null && rightJoint.tailId === null ? [{ ...rightJoint, lowIn, highIn }] : [],
  );
  return {
    title: `New deck of ${layout.name}, laid flat`,
    description: describe(layout, boards, loose.length),
    shapes: [
      ...boards.flatMap(boardShapes),
      ...layout.extenders.flatMap(({ leftIn, rightIn }) =>
        [leftIn, rightIn]
          .filter((x) => x > minX && x < maxX)
          .map((x): Shape => ({ kind: 'line', from: [x, minY], to: [x, maxY], pen: 'light' })),
      ),
      ...loose.flatMap(({ stationIn, lowIn, highIn }) => cross([stationIn, (lowIn + highIn) / 2])),
      jointLine(boards, minX, minY),
    ],
    minX,
    maxX,
    minY,
    maxY,
  };
}

function boardShapes({ fromIn, toIn, lowIn, highIn, course, whole }: CoverBoard): readonly Shape[] {
  const length = formatLength(toIn - fromIn);
  return [
    {
      kind: 'polygon',
      points: rectangle(fromIn, toIn, lowIn, highIn),
      pen: 'new',
      fill: 'paper',
      title: `Course ${course}, ${length} by ${formatLength(highIn - lowIn)}${whole ? '' : ', cut'}`,
    },
    {
      kind: 'text',
      at: [(fromIn + toIn) / 2, (lowIn + highIn) / 2],
      text: `${length}${whole ? ' whole' : ''}`,
      anchor: 'middle',
      sizePt: 7,
    },
  ];
}

/** A joint that no tail carries. */
function cross([x, y]: Point): readonly Shape[] {
  return [
    { kind: 'line', from: [x - 2.5, y - 2.5], to: [x + 2.5, y + 2.5], pen: 'new' },
    { kind: 'line', from: [x - 2.5, y + 2.5], to: [x + 2.5, y - 2.5], pen: 'new' },
    { kind: 'text', at: [x + 3.5, y - 1], text: 'block under', anchor: 'start', sizePt: 6.5, bold: true },
  ];
}

/** Joints of the lowest course, and its ends. */
function jointLine(boards: readonly CoverBoard[], minX: number, minY: number): Shape {
  const lowest = boards.filter(({ course }) => course === 1);
  const stops = [
    ...lowest.map(({ fromIn, leftJoint }) => leftJoint?.stationIn ?? fromIn),
    ...lowest.slice(-1).map(({ toIn }) => toIn),
  ].map((atIn) => ({ atIn, text: formatLength(atIn) }));
  return {
    kind: 'running',
    origin: [0, minY],
    direction: [1, 0],
    fromIn: Math.min(minX, 0),
    toIn: Math.max(...stops.map(({ atIn }) => atIn)),
    offsetPt: -linePt,
    stops,
  };
}

function describe(layout: EaveLayout, boards: readonly CoverBoard[], loose: number): string {
  const courses = Math.max(...boards.map(({ course }) => course));
  return [
    `New deck of ${layout.name} laid flat, lower edge below: ${boards.length} ${boards.length === 1 ? 'board' : 'boards'} in ${courses} ${courses === 1 ? 'course' : 'courses'}.`,
    loose === 0
      ? 'Every joint lands on a tail.'
      : `${loose} ${loose === 1 ? 'joint has' : 'joints have'} no tail under it.`,
  ].join(' ');
}
