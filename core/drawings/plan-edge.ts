import type { FasciaPiece } from '../layout/layout-types.ts';
import { clipToBox } from './clip.ts';
import type { Shape } from './drawing.ts';
import { band, type PlanView, tailLineAt } from './plan-view.ts';

/** Fascia boards with their marks and joints, along the line of the tails' ends. */
export function fascia(view: PlanView): readonly Shape[] {
  const { layout, box, fasciaIn } = view;
  const outerAt = (stationIn: number) => tailLineAt(layout, stationIn) - fasciaIn;
  return layout.fascia.flatMap((piece): readonly Shape[] => {
    const tails = layout.extenders
      .map(({ centreIn }) => centreIn)
      .filter((at) => at > piece.fromIn && at < piece.toIn);
    const points = clipToBox(band([piece.fromIn, ...tails, piece.toIn], outerAt, fasciaIn), box);
    if (points.length < 3) return [];
    const at = markStation(view, piece);
    const shapes: Shape[] = [
      {
        kind: 'polygon',
        points,
        pen: 'new',
        fill: 'paper',
        ref: `piece/${piece.mark}`,
        title: `Fascia ${piece.mark}`,
      },
      {
        kind: 'text',
        at: [at, outerAt(at) + fasciaIn + 2.2],
        text: piece.mark,
        anchor: 'middle',
        sizePt: 6.5,
        bold: true,
      },
    ];
    if (piece.leftEnd !== 'square' && piece !== layout.fascia[0] && view.inside(piece.fromIn)) {
      const outer = outerAt(piece.fromIn);
      shapes.push(
        {
          kind: 'line',
          from: [piece.fromIn, outer - 2],
          to: [piece.fromIn, outer + fasciaIn + 2],
          pen: 'new',
        },
        {
          kind: 'text',
          at: [piece.fromIn + 2, outer + fasciaIn + 2.5],
          text: 'joint',
          anchor: 'start',
          sizePt: 6,
        },
      );
    }
    return shapes;
  });
}

/** Where panels of the new deck end against one another: a line across the overhang and the tie-in. */
export function panelJoints(view: PlanView, jointsIn: readonly number[], insideIn: number): readonly Shape[] {
  return jointsIn.filter(view.inside).flatMap((stationIn): readonly Shape[] => [
    {
      kind: 'line',
      from: [stationIn, tailLineAt(view.layout, stationIn) - view.fasciaIn],
      to: [stationIn, insideIn],
      pen: 'cut',
    },
    {
      kind: 'text',
      at: [stationIn - 0.8, tailLineAt(view.layout, stationIn) + 3],
      text: 'panel joint',
      anchor: 'start',
      sizePt: 6,
      rotateDeg: 90,
    },
  ]);
}

/** Where a fascia board's mark stands: in the middle of the drawn bay that is nearest to the middle of the board. */
function markStation({ layout, box }: PlanView, piece: FasciaPiece): number {
  const middle = (Math.max(piece.fromIn, box.minX) + Math.min(piece.toIn, box.maxX)) / 2;
  const nearest = layout.bays
    .map((bay) => (bay.fromIn + bay.toIn) / 2)
    .filter((at) => at > box.minX && at < box.maxX)
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
  return nearest ?? middle;
}
