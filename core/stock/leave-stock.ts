import type { JobCutting } from '../eave/job-cutting.ts';
import { onHandIdOf } from '../pricing/boards-on-hand.ts';
import { boardIdElsewhere, pieceOfBoard } from './stock-piece.ts';

/**
 * The wishes of a job for a copy of it: without the pieces of the shop's stock, which are one job's alone, and without the
 * pins on them.
 */
export function withoutStockPieces(cutting: JobCutting): JobCutting {
  return {
    ...cutting,
    onHand: cutting.onHand.filter(({ id }) => pieceOfBoard(id) === undefined),
    pins: cutting.pins.filter(({ itemId }) => !isPiece(itemId)),
  };
}

/**
 * The wishes of a job that comes in as a file: its boards on hand stay boards that somebody has, and are no pieces of this
 * shop's stock.
 */
export function withBoardsOfOthers(cutting: JobCutting): JobCutting {
  return {
    ...cutting,
    onHand: cutting.onHand.map((board) => ({ ...board, id: boardIdElsewhere(board.id) })),
    pins: cutting.pins.map((pin) =>
      isPiece(pin.itemId)
        ? { ...pin, itemId: `${onHandPrefix}${boardIdElsewhere(onHandIdOf(pin.itemId))}` }
        : pin,
    ),
  };
}

const onHandPrefix = 'on-hand-';

function isPiece(itemId: string): boolean {
  return itemId.startsWith(onHandPrefix) && pieceOfBoard(onHandIdOf(itemId)) !== undefined;
}
