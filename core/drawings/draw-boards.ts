import type { Board, CutPlan } from '../cutting/cut-plan-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { Drawing, Shape } from './drawing.ts';

/** Height of a bar and distance from bar to bar, in inches along the boards: widths are not to scale. */
const barIn = 11;
const rowIn = 23;

export type BoardOptions = {
  /** Cut off each end of every board. [in] */
  readonly endTrimIn: number;
  /** Width of the saw's cut. [in] */
  readonly kerfIn: number;
};

/**
 * Draws bought boards as bars with their pieces in the order of the saw; lengths to scale, widths not.
 * @param plan - the plan they belong to.
 * @param boards - the boards to draw, one below another.
 * @param options - end trim and kerf. [in]
 */
export function drawBoards(plan: CutPlan, boards: readonly Board[], options: BoardOptions): Drawing {
  // The longest board of the plan, so that all its drawings come out at one scale.
  const longest = Math.max(12, ...plan.boards.map((board) => inchesOf(board.lengthSixteenths)));
  return {
    title: `Boards of ${plan.group}`,
    description: boards.map(describe).join(' '),
    shapes: boards.flatMap((board, row) => drawBoard(plan, board, -row * rowIn, options)),
    minX: 0,
    maxX: longest,
    minY: -(boards.length - 1) * rowIn - barIn,
    maxY: 8,
  };
}

function drawBoard(plan: CutPlan, board: Board, topY: number, options: BoardOptions): readonly Shape[] {
  const length = inchesOf(board.lengthSixteenths);
  const bottomY = topY - barIn;
  const bar = (fromIn: number, toIn: number): readonly (readonly [number, number])[] => [
    [fromIn, bottomY],
    [toIn, bottomY],
    [toIn, topY],
    [fromIn, topY],
  ];
  const middleY = (topY + bottomY) / 2;
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: bar(0, length),
      pen: 'old',
      fill: 'waste',
      ref: `board/${plan.group}/${board.number}`,
      title: `Board ${board.number}, ${formatLength(length)}`,
    },
    {
      kind: 'text',
      at: [0, topY + 2.2],
      text: `${board.number}`,
      anchor: 'start',
      sizePt: 8,
      bold: true,
    },
    {
      kind: 'text',
      at: [length, topY + 2.2],
      text: `${plan.stock.section} x ${formatLength(length)}`,
      anchor: 'end',
      sizePt: 7,
    },
  ];
  let at = options.endTrimIn;
  for (const item of board.items) {
    const piece = inchesOf(item.lengthSixteenths);
    shapes.push(
      {
        kind: 'polygon',
        points: bar(at, at + piece),
        pen: 'old',
        fill: 'paper',
        ref: `piece/${item.mark}`,
        title: `${item.mark}, ${formatLength(piece)}`,
      },
      {
        kind: 'text',
        at: [at + piece / 2, middleY + 0.4],
        text: item.mark,
        anchor: 'middle',
        sizePt: piece < 9 ? 5.5 : piece < 18 ? 7 : 9,
        bold: true,
      },
      {
        kind: 'text',
        at: [at + piece / 2, bottomY + 1.2],
        text: formatLength(piece),
        anchor: 'middle',
        sizePt: piece < 9 ? 5 : piece < 18 ? 6.5 : 8,
      },
    );
    at += piece + options.kerfIn;
  }
  const offcut = inchesOf(board.offcutSixteenths);
  if (offcut > 0) {
    shapes.push({
      kind: 'polygon',
      points: bar(Math.min(at, length), Math.min(at + offcut, length)),
      pen: 'hidden',
      fill: 'offcut',
      title: `Left over, ${formatLength(offcut)}`,
    });
    if (offcut >= 12) {
      shapes.push({
        kind: 'text',
        at: [at + offcut / 2, middleY - 1],
        text: `left ${formatLength(offcut)}`,
        anchor: 'middle',
        sizePt: 6,
      });
    }
  }
  return shapes;
}

function describe(board: Board): string {
  const pieces = board.items.map((item) => `${item.mark} ${formatLength(inchesOf(item.lengthSixteenths))}`);
  return `Board ${board.number} of ${formatLength(inchesOf(board.lengthSixteenths))}: ${pieces.join(', ')}; left over ${formatLength(inchesOf(board.offcutSixteenths))}.`;
}
