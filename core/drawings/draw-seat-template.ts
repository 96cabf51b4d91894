import type { Extender } from '../layout/layout-types.ts';
import { formatInches } from '../units/format-length.ts';
import { clipToBox } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { toPieceAxes } from './piece-axes.ts';

/** How far the template runs on past its cuts, along the top edge. [in] */
const pastIn = 0.75;

/**
 * Draws the seat cut of a tail at full size as it lies on the bench: top edge level and up, tail to the right; the notch,
 * and the plumb line at the wall over the whole depth, to which the tail's plumb cut is parallel.
 * @param extender - the tail that it is drawn from. [in]
 * @param title - stands under it.
 */
export function drawSeatTemplate(extender: Extender, title: string): Drawing {
  const { section } = extender;
  const turn = toPieceAxes(section);
  const depthIn = section.plumbDepthIn / section.slopeFactor;
  const plumbFoot: Point = [(depthIn * section.pitchRisePer12) / 12, -depthIn];
  const { bearing } = section;
  const notch: readonly Point[] =
    bearing.kind === 'notched'
      ? [[0, -bearing.heelCutIn] as const, [0, 0] as const, [-bearing.seatIn, 0] as const].map(turn)
      : [];
  const xs = [0, plumbFoot[0], ...notch.map(([x]) => x)];
  const box = { minX: Math.min(...xs) - pastIn, maxX: Math.max(...xs) + pastIn, minY: -depthIn, maxY: 0 };
  const edges = clipToBox(section.outline.map(turn), { ...box, minX: box.minX - 1, maxX: box.maxX + 1 });
  return {
    title,
    description: describe(extender, depthIn),
    shapes: [
      // The edges of the piece run on past the paper's end, so that it is never taken for a cut.
      { kind: 'line', from: [box.minX, 0], to: [box.maxX, 0], pen: 'new' },
      ...bottomEdges(edges, notch, box, depthIn),
      ...notch
        .slice(1)
        .map((to, index): Shape => ({ kind: 'line', from: notch[index] ?? to, to, pen: 'ground' })),
      { kind: 'line', from: [0, 0], to: notch[1] ?? plumbFoot, pen: 'cut' },
      ...labels(extender, notch, plumbFoot, box),
    ],
    ...box,
  };
}

/** The bottom edge left and right of the notch. */
function bottomEdges(
  outline: readonly Point[],
  notch: readonly Point[],
  box: { readonly minX: number; readonly maxX: number },
  depthIn: number,
): readonly Shape[] {
  const [heelFoot, , seatEnd] = notch;
  const line = (fromX: number, toX: number): readonly Shape[] =>
    toX > fromX ? [{ kind: 'line', from: [fromX, -depthIn], to: [toX, -depthIn], pen: 'new' }] : [];
  if (heelFoot === undefined || seatEnd === undefined) return line(box.minX, box.maxX);
  // A seat that runs out at the back end leaves no bottom edge behind it.
  const hasBack = outline.some(([x, y]) => y < -depthIn + 1e-6 && x < seatEnd[0] - 1e-6);
  return [...(hasBack ? line(box.minX, seatEnd[0]) : []), ...line(heelFoot[0], box.maxX)];
}

function labels(
  extender: Extender,
  notch: readonly Point[],
  plumbFoot: Point,
  box: { readonly minX: number; readonly maxX: number },
): readonly Shape[] {
  const { section } = extender;
  const plumbDeg = section.slopeAngleDeg - 90;
  const texts: Shape[] = [
    text([(box.minX + box.maxX) / 2, -0.22], 'top edge of the piece, crown up', 11),
    text([box.maxX - 0.1, -0.55], 'tail this way', 11, 'end'),
    text([box.minX + 0.1, -0.55], 'back end', 11, 'start'),
    {
      kind: 'text',
      at: [plumbFoot[0] * 0.32 + 0.14, plumbFoot[1] * 0.32],
      text: 'wall line, plumb',
      anchor: 'middle',
      sizePt: 11,
      rotateDeg: plumbDeg,
    },
  ];
  const { bearing } = section;
  const [heelFoot, corner, seatEnd] = notch;
  if (bearing.kind === 'notched' && heelFoot !== undefined && corner !== undefined && seatEnd !== undefined) {
    const seat = middle(corner, seatEnd);
    const heel = middle(corner, heelFoot);
    texts.push(
      {
        kind: 'text',
        at: [seat[0] - 0.04, seat[1] + 0.1],
        text: `seat ${formatInches(bearing.seatIn)}`,
        anchor: 'middle',
        sizePt: 11,
        rotateDeg: section.slopeAngleDeg,
      },
      {
        kind: 'text',
        at: [heel[0] + 0.14, heel[1] + 0.06],
        text: `heel ${formatInches(bearing.heelCutIn)}`,
        anchor: 'start',
        sizePt: 11,
      },
    );
  }
  return texts;
}

function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function text(
  at: Point,
  words: string,
  sizePt: number,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): Shape {
  return { kind: 'text', at, text: words, anchor, sizePt };
}

function describe(extender: Extender, depthIn: number): string {
  const { bearing, heightAbovePlateIn, slopeAngleDeg } = extender.section;
  return [
    `Seat of ${extender.mark} at full size, its top edge level and up, the tail to the right, ${formatInches(depthIn)} deep.`,
    bearing.kind === 'notched'
      ? `From the wall line on the top edge plumb down ${formatInches(heightAbovePlateIn)} to the seat; level seat ${formatInches(bearing.seatIn)}, heel ${formatInches(bearing.heelCutIn)}.`
      : 'It has no seat cut.',
    `Plumb lines stand ${slopeAngleDeg.toFixed(1)} degrees off square to the top edge.`,
  ].join(' ');
}
