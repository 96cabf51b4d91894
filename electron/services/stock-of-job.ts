import type { Design } from '../../core/eave/design-document.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { pieceOfBoard } from '../../core/stock/stock-piece.ts';
import type { WritableDb } from '../store/database.ts';
import { freePieces, setPieceAside } from '../store/stock.ts';

/**
 * Sets aside for a job the pieces of the stock that its boards on hand name, and puts the others back on the rack. In the
 * transaction of the save, so that no piece is ever another's too.
 * @returns or, with the board's entry, that a piece is not to be had.
 */
export function settleStock(
  db: WritableDb,
  jobId: string,
  { cutting }: Pick<Design, 'cutting'>,
): Result<undefined, Problem> {
  const named = cutting.onHand.map(({ id }) => pieceOfBoard(id));
  freePieces(
    db,
    jobId,
    named.flatMap((sequence) => sequence ?? []),
  );
  for (const [at, sequence] of named.entries()) {
    if (sequence === undefined || setPieceAside(db, sequence, jobId)) continue;
    return fail({
      code: 'prices',
      fault: { what: 'piece-not-here', piece: String(sequence) },
      field: `design.cutting.onHand.${at}.lengthIn`,
    });
  }
  return ok(undefined);
}

/** Takes what it can get of the pieces that a job names: one that comes back from the archive may find some of them gone. */
export function regainStock(db: WritableDb, jobId: string, { cutting }: Pick<Design, 'cutting'>): void {
  for (const { id } of cutting.onHand) {
    const sequence = pieceOfBoard(id);
    if (sequence !== undefined) setPieceAside(db, sequence, jobId);
  }
}
