import type { z } from 'zod';
import type { stockCommands } from '../../core/contract/stock-commands.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok } from '../../core/result.ts';
import { sixteenthsDown } from '../../core/units/sixteenths.ts';
import { usd } from '../../core/units/money.ts';
import type { Handlers } from '../handlers.ts';
import { getJob } from '../store/jobs.ts';
import {
  addPieces,
  bringBackPiece,
  changePiece,
  listStock,
  type NewPiece,
  piecesOfJob,
  takeBackOffcuts,
  throwOutPiece,
  usePiece,
} from '../store/stock.ts';
import type { Context } from './context.ts';

type AskedPiece = z.output<(typeof stockCommands)['stock.change']['input']>['piece'];

const noPiece: Problem = { code: 'not-found', what: 'board on the rack' };
const noJob: Problem = { code: 'not-found', what: 'job' };

/** Boards and offcuts that the shop has. */
export function stockHandlers(context: Context): Pick<Handlers, keyof typeof stockCommands> {
  const { store } = context;
  const from = (jobId: string | null) => ({ jobId, today: context.today(), newId: context.newId });
  return {
    'stock.list': ({ withGone }) => ok(store.read((db) => listStock(db, withGone))),
    'stock.add': ({ count, ...piece }) =>
      store.write((db) => {
        addPieces(
          db,
          Array.from({ length: count }, () => pieceOf(piece)),
          from(null),
        );
        return ok({ added: count });
      }),
    'stock.change': ({ id, piece }) =>
      store.write((db) => (changePiece(db, id, pieceOf(piece)) ? ok({}) : fail(noPiece))),
    'stock.throwOut': ({ id }) =>
      store.write((db) => (throwOutPiece(db, id, context.today()) ? ok({}) : fail(noPiece))),
    'stock.bringBack': ({ id }) => store.write((db) => (bringBackPiece(db, id) ? ok({}) : fail(noPiece))),
    'stock.finishJob': ({ jobId, used, offcuts }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const before = piecesOfJob(db, jobId);
        if (before.some((piece) => piece.from_job_id === jobId || piece.gone_on !== null))
          return fail({ code: 'prices', fault: { what: 'offcuts-in-already' } });
        for (const sequence of new Set(used)) {
          if (!usePiece(db, sequence, jobId, context.today()))
            return fail({ code: 'prices', fault: { what: 'piece-not-here', piece: String(sequence) } });
        }
        addPieces(db, offcuts.map(pieceOf), from(jobId));
        return ok({ added: offcuts.length });
      }),
    'stock.takeBackJob': ({ jobId }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const left = piecesOfJob(db, jobId).filter((piece) => piece.from_job_id === jobId);
        if (left.some((piece) => piece.for_job_id !== null || piece.gone_on !== null))
          return fail({ code: 'prices', fault: { what: 'offcuts-moved' } });
        takeBackOffcuts(db, jobId);
        return ok({});
      }),
  };
}

function pieceOf(piece: AskedPiece): NewPiece {
  return {
    section: piece.section,
    grade: piece.grade.trim(),
    lengthSixteenths: sixteenthsDown(piece.lengthIn),
    valueUsd: usd(piece.valueUsd),
    note: piece.note.trim(),
  };
}
