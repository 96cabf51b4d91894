import type { StockPiece } from '../../core/stock/stock-piece.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

/** What a piece is, as somebody says it. */
export type NewPiece = {
  readonly section: string;
  readonly grade: string;
  readonly lengthSixteenths: number;
  readonly valueUsd: string;
  readonly note: string;
};

/**
 * Boards and offcuts of the shop in the order of their numbers.
 * @param withGone - those used up and thrown out too.
 */
export function listStock(db: ReadableDb, withGone: boolean): StockPiece[] {
  const all = query
    .selectFrom('stock_pieces')
    .leftJoin('jobs as from_job', 'from_job.id', 'stock_pieces.from_job_id')
    .leftJoin('jobs as for_job', 'for_job.id', 'stock_pieces.for_job_id')
    .selectAll('stock_pieces')
    .select(['from_job.name as from_name', 'for_job.name as for_name'])
    .orderBy('stock_pieces.sequence');
  const rows = db.rows(withGone ? all : all.where('gone_on', 'is', null));
  return rows.map((row) => ({
    id: row.id,
    sequence: row.sequence,
    section: row.section,
    grade: row.grade,
    lengthIn: row.length_sixteenths / 16,
    valueUsd: row.value_usd,
    fromJob: row.from_job_id === null ? null : { id: row.from_job_id, name: row.from_name ?? '' },
    forJob: row.for_job_id === null ? null : { id: row.for_job_id, name: row.for_name ?? '' },
    addedOn: row.added_on,
    goneOn: row.gone_on,
    note: row.note,
  }));
}

/** Puts pieces on the rack, each under the next number. */
export function addPieces(
  db: WritableDb,
  pieces: readonly NewPiece[],
  from: { readonly jobId: string | null; readonly today: string; readonly newId: () => string },
): void {
  for (const piece of pieces) {
    db.run(
      query.insertInto('stock_pieces').values({
        id: from.newId(),
        sequence: takeNumber(db, 'stock'),
        ...rowOf(piece),
        from_job_id: from.jobId,
        for_job_id: null,
        added_on: from.today,
        gone_on: null,
      }),
    );
  }
}

/** Corrects a piece on the rack; answers whether it is there. */
export function changePiece(db: WritableDb, id: string, piece: NewPiece): boolean {
  return (
    db.run(
      query
        .updateTable('stock_pieces')
        .set(rowOf(piece))
        .where('id', '=', id)
        .where('for_job_id', 'is', null)
        .where('gone_on', 'is', null),
    ) === 1
  );
}

/** Throws a piece out that is on the rack; answers whether it was there. */
export function throwOutPiece(db: WritableDb, id: string, today: string): boolean {
  return (
    db.run(
      query
        .updateTable('stock_pieces')
        .set({ gone_on: today })
        .where('id', '=', id)
        .where('for_job_id', 'is', null)
        .where('gone_on', 'is', null),
    ) === 1
  );
}

/** Puts a piece back on the rack that was thrown out; answers whether it was. */
export function bringBackPiece(db: WritableDb, id: string): boolean {
  return (
    db.run(
      query
        .updateTable('stock_pieces')
        .set({ gone_on: null })
        .where('id', '=', id)
        .where('for_job_id', 'is', null)
        .where('gone_on', 'is not', null),
    ) === 1
  );
}

/** Every piece that has to do with a job: set aside for it, used up on it, or left over from it. */
export function piecesOfJob(db: ReadableDb, jobId: string): Schema['stock_pieces'][] {
  return db.rows(
    query
      .selectFrom('stock_pieces')
      .selectAll()
      .where((eb) => eb.or([eb('for_job_id', '=', jobId), eb('from_job_id', '=', jobId)]))
      .orderBy('sequence'),
  );
}

/**
 * Sets a piece aside for a job; one that is set aside for it already, or used up on it, stays as it is.
 * @returns whether the job has it now.
 */
export function setPieceAside(db: WritableDb, sequence: number, jobId: string): boolean {
  const piece = db.row(query.selectFrom('stock_pieces').selectAll().where('sequence', '=', sequence));
  if (piece === undefined) return false;
  if (piece.for_job_id === jobId) return true;
  if (piece.for_job_id !== null || piece.gone_on !== null) return false;
  db.run(query.updateTable('stock_pieces').set({ for_job_id: jobId }).where('sequence', '=', sequence));
  return true;
}

/** Puts every piece that is set aside for a job back on the rack, but for those named; what is used up stays used. */
export function freePieces(db: WritableDb, jobId: string, but: readonly number[]): void {
  const rows = db.rows(
    query
      .selectFrom('stock_pieces')
      .select('sequence')
      .where('for_job_id', '=', jobId)
      .where('gone_on', 'is', null),
  );
  const kept = new Set(but);
  for (const { sequence } of rows) {
    if (kept.has(sequence)) continue;
    db.run(query.updateTable('stock_pieces').set({ for_job_id: null }).where('sequence', '=', sequence));
  }
}

/** Notes that a piece set aside for a job was cut up on it; answers whether it was set aside for it. */
export function usePiece(db: WritableDb, sequence: number, jobId: string, today: string): boolean {
  return (
    db.run(
      query
        .updateTable('stock_pieces')
        .set({ gone_on: today })
        .where('sequence', '=', sequence)
        .where('for_job_id', '=', jobId)
        .where('gone_on', 'is', null),
    ) === 1
  );
}

/** Takes back that a job is cut: its offcuts were never there, and what it used is set aside for it again. */
export function takeBackOffcuts(db: WritableDb, jobId: string): void {
  db.run(query.deleteFrom('stock_pieces').where('from_job_id', '=', jobId));
  db.run(query.updateTable('stock_pieces').set({ gone_on: null }).where('for_job_id', '=', jobId));
}

function rowOf(
  piece: NewPiece,
): Pick<Schema['stock_pieces'], 'section' | 'grade' | 'length_sixteenths' | 'value_usd' | 'note'> {
  return {
    section: piece.section,
    grade: piece.grade,
    length_sixteenths: piece.lengthSixteenths,
    value_usd: piece.valueUsd,
    note: piece.note,
  };
}
