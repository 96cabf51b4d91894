import type { EaveLayout, Extender, FasciaPiece } from '../layout/layout-types.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { type Box, clipToBox } from './clip.ts';
import type { Point, Shape } from './drawing.ts';

/** Tells whether a station lies on the drawn stretch of the wall. */
export type OnStretch = (stationIn: number) => boolean;

/** How far an extender reaches in from the wall line, level. [in] */
export function backspanLevel(extender: Extender): number {
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

/** Plate, old rafters, joists and what else stands on the plate. */
export function oldMembers(layout: EaveLayout, box: Box, plate: number): readonly Shape[] {
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

/** Blocks at the plate, with the clear length of each bay. */
export function blocks(layout: EaveLayout, box: Box, inside: OnStretch, thickness: number): readonly Shape[] {
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

/** The new pieces with their marks; a triangle where one moved or clashes. */
export function extenders(layout: EaveLayout, box: Box, inside: OnStretch): readonly Shape[] {
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

/** Fascia boards with their marks and joints. */
export function fascia(layout: EaveLayout, box: Box, inside: OnStretch, thickness: number): readonly Shape[] {
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
