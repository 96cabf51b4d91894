import type { Saw } from '../cutting/board-use.ts';
import type { Board, CutPlan } from '../cutting/cut-plan-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { type CutLine, layBoard } from './board-geometry.ts';
import type { Drawing, Shape } from './drawing.ts';

/** Height of a bar and distance from bar to bar, in inches along the boards: widths are not to scale. */
const barIn = 11;
const rowIn = 19;

/**
 * Draws boards as bars with their pieces in the order of the saw, crown edge up; lengths and slants to scale, widths not.
 * @param plan - the plan they belong to.
 * @param boards - the boards to draw, one below another.
 * @param saw - end trim, kerf and depth. [1/16 in]
 */
export function drawBoards(plan: CutPlan, boards: readonly Board[], saw: Saw): Drawing {
  // The longest board of the plan, so that all its drawings come out at one scale.
  const longest = Math.max(12, ...plan.boards.map((board) => inchesOf(board.lengthSixteenths)));
  return {
    title: `Boards of ${plan.group}`,
    description: boards.map(describe).join(' '),
    shapes: boards.flatMap((board, row) => drawBoard(plan, board, -row * rowIn, saw)),
    minX: 0,
    maxX: longest,
    minY: -(boards.length - 1) * rowIn - barIn,
    maxY: 8,
  };
}

function drawBoard(plan: CutPlan, board: Board, topY: number, saw: Saw): readonly Shape[] {
  const length = inchesOf(board.lengthSixteenths);
  const bottomY = topY - barIn;
  const bar = (from: CutLine, to: CutLine): readonly (readonly [number, number])[] => [
    [from.bottom / 16, bottomY],
    [to.bottom / 16, bottomY],
    [to.top / 16, topY],
    [from.top / 16, topY],
  ];
  const middleY = (topY + bottomY) / 2;
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: bar(squareAt(0), squareAt(board.lengthSixteenths)),
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
      text: `${plan.stock.section} x ${formatLength(length)}${board.onHand ? ', on hand' : ''}`,
      anchor: 'end',
      sizePt: 7,
    },
  ];
  const { pieces, leftOver } = layBoard(saw, board);
  for (const { item, from, to } of pieces) {
    const piece = inchesOf(item.lengthSixteenths);
    const middleX = (from.top + to.bottom) / 32;
    shapes.push(
      {
        kind: 'polygon',
        points: bar(from, to),
        pen: 'old',
        fill: 'paper',
        ref: `piece/${item.mark}`,
        title: `${item.mark}, ${formatLength(piece)}`,
      },
      {
        kind: 'text',
        at: [middleX, middleY + 0.4],
        text: item.mark,
        anchor: 'middle',
        sizePt: piece < 9 ? 5.5 : piece < 18 ? 7 : 9,
        bold: true,
      },
      {
        kind: 'text',
        at: [middleX, bottomY + 1.2],
        text: formatLength(piece),
        anchor: 'middle',
        sizePt: piece < 9 ? 5 : piece < 18 ? 6.5 : 8,
      },
    );
  }
  const offcut = inchesOf(board.offcutSixteenths);
  if (leftOver !== null) {
    shapes.push({
      kind: 'polygon',
      points: bar(leftOver.from, leftOver.to),
      pen: 'hidden',
      fill: 'offcut',
      title: `Left over, ${formatLength(offcut)}`,
    });
    if (offcut >= 12) {
      shapes.push({
        kind: 'text',
        at: [leftOver.from.bottom / 16 + offcut / 2, middleY - 1],
        text: `left ${formatLength(offcut)}`,
        anchor: 'middle',
        sizePt: 6,
      });
    }
  }
  return shapes;
}

function squareAt(sixteenths: number): CutLine {
  return { top: sixteenths, bottom: sixteenths };
}

function describe(board: Board): string {
  const pieces = board.items.map((item) => `${item.mark} ${formatLength(inchesOf(item.lengthSixteenths))}`);
  return `Board ${board.number} of ${formatLength(inchesOf(board.lengthSixteenths))}: ${pieces.join(', ')}; left over ${formatLength(inchesOf(board.offcutSixteenths))}.`;
}
