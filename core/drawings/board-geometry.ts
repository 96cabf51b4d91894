import { kerfAlong, type Saw, slantOf } from '../cutting/board-use.ts';
import type { Board, CutItem } from '../cutting/cut-plan-types.ts';

/** A cut across a board: where it meets the top and the bottom edge, from the board's left end. [1/16 in] */
export type CutLine = { readonly top: number; readonly bottom: number };

/** A piece in its board, between its two cuts. */
export type LaidPiece = {
  readonly item: CutItem;
  readonly from: CutLine;
  readonly to: CutLine;
};

/** A board with everything in its place, crown edge up; pieces in the order of the saw, from the left. */
export type LaidBoard = {
  readonly pieces: readonly LaidPiece[];
  /** What is left in one piece between the last cut and the right end's trim; null where that is nothing. */
  readonly leftOver: { readonly from: CutLine; readonly to: CutLine } | null;
};

/**
 * Lays the pieces of a board from its left end: square ones first, then by slant, so that parallel plumb ends nest. Tails
 * point right: with the crown up, the long point of a plumb end is then on the bottom edge at the right of a piece and on
 * the top edge at its left.
 * @param saw - kerf, end trim, and depth of the boards. [1/16 in]
 * @param board - as planned.
 * @returns cuts along both edges; e.g. trim 8, two pieces of 640 overall with slant 44 and 3 for the kerf: the first
 * from 8 to 604 on the top edge and from 52 to 648 on the bottom edge, the second from 607 and 651. [1/16 in]
 */
export function layBoard(saw: Saw, board: Board): LaidBoard {
  const end = board.lengthSixteenths - saw.endTrimSixteenths;
  const pieces: LaidPiece[] = [];
  let top: number = saw.endTrimSixteenths;
  let lastSlant = 0;
  for (const [index, item] of board.items.entries()) {
    const slant = slantOf(saw, item);
    if (index > 0) top += kerfAlong(saw, slant);
    const middle = item.lengthSixteenths - slant;
    pieces.push({
      item,
      from: { top, bottom: top + slant },
      to: { top: top + middle, bottom: top + middle + slant },
    });
    top += middle;
    lastSlant = slant;
  }
  const kerf = kerfAlong(saw, lastSlant);
  const from = { top: top + kerf, bottom: top + lastSlant + kerf };
  return {
    pieces,
    leftOver: board.offcutSixteenths > 0 ? { from, to: { top: end, bottom: end } } : null,
  };
}
