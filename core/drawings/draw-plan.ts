import type { EaveLayout, Extender, FasciaPiece } from '../layout/layout-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { type Box, clipToBox } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';

export type PlanOptions = {
  /** Actual thickness of the fascia. [in] */
  readonly fasciaThicknessIn?: number;
  /** Width of the wall plate. [in] */
  readonly plateWidthIn?: number;
  /** Actual thickness of the blocks. [in] */
  readonly blockThicknessIn?: number;
  /** The stretch of wall to draw, by station; the whole eave where absent. [in] */
  readonly fromIn?: number;
  readonly toIn?: number;
};

/** How far old members are drawn in past the longest backspan. [in] */
const pastBackIn = 10;

/**
 * Draws an eave from above at the plate: the outside is below, station 0 at the left as seen from outside.
 * @param layout - the eave. [in]
 * @param options - sizes and stretch. [in]
 */
export function drawPlan(layout: EaveLayout, options: PlanOptions = {}): Drawing {
  const plate = options.plateWidthIn ?? 3.5;
  const fasciaThickness = options.fasciaThicknessIn ?? 1.5;
  const deepest = Math.max(24, ...layout.extenders.map((extender) => backspanLevel(extender)));
  const fasciaEnds = layout.fascia.flatMap((piece) => [piece.fromIn, piece.toIn]);
  const wholeFrom = Math.min(0, ...fasciaEnds);
  const wholeTo = Math.max(layout.wallLengthIn, ...fasciaEnds);
  const box: Box = {
    minX: options.fromIn === undefined || options.fromIn <= 0 ? wholeFrom : options.fromIn,
    maxX: options.toIn === undefined || options.toIn >= layout.wallLengthIn ? wholeTo : options.toIn,
    minY: -layout.overhangLevelIn - fasciaThickness,
    maxY: deepest + pastBackIn,
  };
  const inside = (station: number) =>
    station >= box.minX - 1e-6 && (station < box.maxX || box.maxX === wholeTo);
  const shapes: Shape[] = [
    ...oldMembers(layout, box, plate),
    ...blocks(layout, box, inside, options.blockThicknessIn ?? 1.5),
    ...extenders(layout, box, inside),
    ...fascia(layout, box, inside, fasciaThickness),
    ...stations(layout, box, inside),
    ...unplaced(layout, box, inside),
  ];
  const stretch =
    box.minX === wholeFrom && box.maxX === wholeTo
      ? ''
      : `, ${formatLength(Math.max(0, box.minX))} to ${formatLength(Math.min(layout.wallLengthIn, box.maxX))}`;
  return {
    title: `Plan of ${layout.name}${stretch}`,
    description: describe(layout),
    shapes,
    ...box,
  };
}

function backspanLevel(extender: Extender): number {
  return extender.section.backspanIn / extender.section.slopeFactor;
}

function rectangle(left: number, right: number, low: number, high: number): readonly Point[] {
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

function oldMembers(layout: EaveLayout, box: Box, plate: number): readonly Shape[] {
  const shapes: Shape[] = [];
  const push = (shape: Extract<Shape, { kind: 'polygon' }>) => {
    const points = clipToBox(shape.points, box);
    if (points.length > 2) shapes.push({ ...shape, points });
  };
  push({
    kind: 'polygon',
    points: rectangle(0, layout.wallLengthIn, 0, plate),
    pen: 'old',
    fill: 'plate',
    title: 'Wall plate',
  });
  for (const rafter of layout.rafters) {
    push({
      kind: 'polygon',
      points: rectangle(rafter.leftFaceIn, rafter.rightFaceIn, 0, box.maxY),
      pen: 'old',
      fill: 'old',
      ref: `station/${layout.eaveId}/${rafter.id}`,
      title: `Rafter ${rafter.number} at ${formatLength(rafter.centreIn)}`,
    });
  }
  for (const thing of layout.occupied) {
    if (thing.kind === 'rafter') continue;
    push({
      kind: 'polygon',
      points: rectangle(thing.leftIn, thing.rightIn, 0, plate + (thing.kind === 'joist' ? 16 : 6)),
      pen: 'old',
      fill: thing.kind === 'joist' ? 'joist' : 'waste',
      title: thing.label,
    });
    const middle = (thing.leftIn + thing.rightIn) / 2;
    if (thing.kind === 'obstruction' && middle >= box.minX && middle < box.maxX) {
      shapes.push({
        kind: 'text',
        at: [middle, plate + 8],
        text: thing.label,
        anchor: 'middle',
        sizePt: 6.5,
      });
    }
  }
  return shapes;
}

function blocks(
  layout: EaveLayout,
  box: Box,
  inside: (station: number) => boolean,
  thickness: number,
): readonly Shape[] {
  return layout.bays.flatMap((bay): readonly Shape[] => {
    const middle = (bay.fromIn + bay.toIn) / 2;
    if (!inside(middle)) return [];
    const label: Shape = {
      kind: 'text',
      at: [middle, -4.5],
      text: bay.block === 'block' ? formatInches(bay.clearIn) : 'open',
      anchor: 'middle',
      sizePt: 6,
    };
    if (bay.block !== 'block') return bay.block === 'left-open' ? [label] : [];
    return [
      {
        kind: 'polygon',
        points: clipToBox(rectangle(bay.fromIn, bay.toIn, 0, thickness), box),
        pen: 'new',
        fill: 'new',
        ref: `bay/${layout.eaveId}/${bay.leftRafterId}`,
        title: `Block ${bay.mark}, ${formatLength(bay.clearIn)}`,
      },
      label,
    ];
  });
}

function extenders(layout: EaveLayout, box: Box, inside: (station: number) => boolean): readonly Shape[] {
  return layout.extenders.flatMap((extender): readonly Shape[] => {
    if (!inside(extender.centreIn)) return [];
    const shapes: Shape[] = [
      {
        kind: 'polygon',
        points: clipToBox(
          rectangle(extender.leftIn, extender.rightIn, -layout.overhangLevelIn, backspanLevel(extender)),
          box,
        ),
        pen: 'new',
        fill: 'new',
        ref: `piece/${extender.mark}`,
        title: `${extender.mark}, ${extender.side} of rafter ${extender.rafterNumber}`,
      },
      {
        kind: 'text',
        at: [extender.centreIn + 1, box.minY - 3],
        text: extender.mark,
        anchor: 'end',
        sizePt: 6.5,
        rotateDeg: 90,
      },
    ];
    if (extender.because === 'moved' || extender.clash !== null) {
      // A triangle, so that a moved piece shows without colour.
      const x = extender.centreIn;
      const y = -layout.overhangLevelIn / 2;
      shapes.push({
        kind: 'polygon',
        points: [
          [x - 2.4, y - 2],
          [x + 2.4, y - 2],
          [x, y + 2.4],
        ],
        pen: 'new',
        fill: 'paper',
        title:
          extender.because === 'moved'
            ? `Moved to the ${extender.side}: ${extender.clash ?? 'the other side is taken'}`
            : `Clash: ${extender.clash ?? ''}`,
      });
    }
    return shapes;
  });
}

function fascia(
  layout: EaveLayout,
  box: Box,
  inside: (station: number) => boolean,
  thickness: number,
): readonly Shape[] {
  const outer = -layout.overhangLevelIn - thickness;
  return layout.fascia.flatMap((piece): readonly Shape[] => {
    const points = clipToBox(rectangle(piece.fromIn, piece.toIn, outer, -layout.overhangLevelIn), box);
    if (points.length < 3) return [];
    const shapes: Shape[] = [
      {
        kind: 'polygon',
        points,
        pen: 'new',
        fill: 'paper',
        ref: `piece/${piece.mark}`,
        title: `Fascia ${piece.mark}`,
      },
    ];
    const at = markStation(layout, piece, box);
    shapes.push({
      kind: 'text',
      at: [at, outer + thickness + 2.2],
      text: piece.mark,
      anchor: 'middle',
      sizePt: 6.5,
      bold: true,
    });
    if (piece.leftEnd !== 'square' && inside(piece.fromIn)) {
      shapes.push(
        {
          kind: 'line',
          from: [piece.fromIn, outer - 2],
          to: [piece.fromIn, outer + thickness + 2],
          pen: 'new',
        },
        {
          kind: 'text',
          at: [piece.fromIn + 2, outer + thickness + 2.5],
          text: 'joint',
          anchor: 'start',
          sizePt: 6,
        },
      );
    }
    return shapes;
  });
}

/** Where a fascia board's mark stands: in the middle of the drawn bay that is nearest to the middle of the board. */
function markStation(layout: EaveLayout, piece: FasciaPiece, box: Box): number {
  const middle = (Math.max(piece.fromIn, box.minX) + Math.min(piece.toIn, box.maxX)) / 2;
  const nearest = layout.bays
    .map((bay) => (bay.fromIn + bay.toIn) / 2)
    .filter((at) => at > box.minX && at < box.maxX)
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
  return nearest ?? middle;
}

function stations(layout: EaveLayout, box: Box, inside: (station: number) => boolean): readonly Shape[] {
  return layout.rafters.flatMap((rafter): readonly Shape[] => {
    if (!inside(rafter.centreIn)) return [];
    return [
      {
        kind: 'text',
        at: [rafter.centreIn, box.maxY + 2],
        text: String(rafter.number),
        anchor: 'middle',
        sizePt: 8,
        bold: true,
      },
      {
        kind: 'text',
        at: [rafter.centreIn + 1.6, box.maxY + 8.5],
        text: formatLength(rafter.centreIn),
        anchor: 'start',
        sizePt: 6.5,
        rotateDeg: 90,
      },
    ];
  });
}

function unplaced(layout: EaveLayout, box: Box, inside: (station: number) => boolean): readonly Shape[] {
  return layout.unplaced.flatMap((missing): readonly Shape[] => {
    if (!inside(missing.stationIn)) return [];
    const x = missing.stationIn;
    const y = -layout.overhangLevelIn / 2;
    return [
      { kind: 'line', from: [x - 3, y - 3], to: [x + 3, y + 3], pen: 'new' },
      { kind: 'line', from: [x - 3, y + 3], to: [x + 3, y - 3], pen: 'new' },
      {
        kind: 'text',
        at: [x + 1, box.minY - 3],
        text: missing.reason === 'no-side-free' ? 'no side free' : 'none wanted',
        anchor: 'end',
        sizePt: 6.5,
        rotateDeg: 90,
        bold: true,
      },
    ];
  });
}

function describe(layout: EaveLayout): string {
  const moved = layout.extenders.filter((extender) => extender.because === 'moved');
  const joints = Math.max(0, layout.fascia.length - 1);
  return [
    `Plan of ${layout.name} at the plate, outside below, station 0 at the left as seen from outside.`,
    `Wall ${formatLength(layout.wallLengthIn)}, ${layout.rafters.length} old rafters, ${layout.extenders.length} extenders sticking out ${formatLength(layout.overhangLevelIn)} level.`,
    moved.length === 0
      ? 'None had to move to the other side.'
      : `Moved to the other side: ${moved.map((extender) => extender.mark).join(', ')}.`,
    layout.unplaced.length === 0
      ? 'Every rafter has an extender.'
      : `Without an extender: rafter ${layout.unplaced.map((missing) => missing.rafterNumber).join(', ')}.`,
    `Fascia ${formatLength(layout.fasciaLengthIn)} with ${joints} ${joints === 1 ? 'joint' : 'joints'}.`,
  ].join(' ');
}
