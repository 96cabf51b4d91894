import type { BoardEnd, FasciaPiece } from '../layout/layout-types.ts';
import { clipToBox } from './clip.ts';
import type { Point, Shape } from './drawing.ts';
import { type PlanLayout, type PlanView, tailLineAt } from './plan-view.ts';

/** Fascia and sub-fascia boards with their marks and joints, along the line of the tails' ends. */
export function edge(view: PlanView): readonly Shape[] {
  const { layout, edgeBoards } = view;
  return [
    ...run(view, layout.subFascia, 'Sub-fascia', 0, edgeBoards.subFasciaIn),
    ...run(view, layout.fascia, 'Fascia', edgeBoards.subFasciaIn, edgeBoards.fasciaIn),
    ...marksAndJoints(view),
  ];
}

/** The boards of a run, so far outside the tails' ends and so thick; a mitred end slants across its thickness. */
function run(
  { layout, box }: PlanView,
  pieces: readonly FasciaPiece[],
  name: string,
  standsOffIn: number,
  thicknessIn: number,
): readonly Shape[] {
  if (thicknessIn <= 0) return [];
  return pieces.flatMap((piece): readonly Shape[] => {
    const back = { fromIn: piece.fromIn + setIn(piece.leftEnd), toIn: piece.toIn - setIn(piece.rightEnd) };
    const points = clipToBox(
      [...side(layout, piece, standsOffIn + thicknessIn), ...side(layout, back, standsOffIn).toReversed()],
      box,
    );
    return points.length < 3
      ? []
      : [
          {
            kind: 'polygon',
            points,
            pen: 'new',
            fill: 'paper',
            ref: `piece/${piece.mark}`,
            title: `${name} ${piece.mark}`,
          },
        ];
  });

  function setIn(end: BoardEnd): number {
    return end === 'mitre' ? thicknessIn : end === 'inside-mitre' ? -thicknessIn : 0;
  }
}

/** One side of a board from end to end, so far outside the tails' ends, by way of the tails where it may bend. */
function side(
  layout: PlanLayout,
  { fromIn, toIn }: { readonly fromIn: number; readonly toIn: number },
  outIn: number,
): readonly Point[] {
  const tails = layout.extenders.map(({ centreIn }) => centreIn).filter((at) => at > fromIn && at < toIn);
  return [fromIn, ...tails, toIn].map((station): Point => [station, tailLineAt(layout, station) - outIn]);
}

function marksAndJoints(view: PlanView): readonly Shape[] {
  const { layout, box, edgeBoards } = view;
  return layout.fascia.flatMap((piece, index): readonly Shape[] => {
    if (piece.toIn <= box.minX || piece.fromIn >= box.maxX) return [];
    const at = markStation(view, piece);
    const shapes: Shape[] = [
      {
        kind: 'text',
        at: [at, tailLineAt(layout, at) + 2.2],
        text: piece.mark,
        anchor: 'middle',
        sizePt: 6.5,
        bold: true,
      },
    ];
    if (index > 0 && view.inside(piece.fromIn)) {
      const inner = tailLineAt(layout, piece.fromIn);
      shapes.push(
        {
          kind: 'line',
          from: [piece.fromIn, inner - edgeBoards.thicknessIn - 2],
          to: [piece.fromIn, inner + 2],
          pen: 'new',
        },
        {
          kind: 'text',
          at: [piece.fromIn + 2, inner + 2.5],
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
  return jointsIn.filter(view.inside).map(
    (stationIn): Shape => ({
      kind: 'line',
      from: [stationIn, tailLineAt(view.layout, stationIn) - view.edgeBoards.thicknessIn],
      to: [stationIn, insideIn],
      pen: 'cut',
    }),
  );
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
