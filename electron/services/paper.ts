import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';
import { plainFileName } from './app.ts';
import { loadJobInput } from './job-input.ts';
import { computeProven } from './proven-job.ts';

/** Sheets as PDF. The printer is loaded when the first sheet is asked for: it is the heaviest part of the host. */
export function paperHandlers(context: Context): Pick<Handlers, 'paper.make'> {
  return {
    'paper.make': async ({ jobId, sheet: kind, paperSize }) => {
      const input = context.store.read((db) => loadJobInput(db, jobId, context.today()));
      if (input === undefined) return fail({ code: 'not-found', what: 'job' });
      const computed = await computeProven(context.prover, input);
      if (!computed.ok) return computed;
      const { makeSheet } = await import('../../core/documents/make-sheet.ts');
      const { makePaper } = await import('../paper/make-paper.ts');
      const sheet = makeSheet(kind, input, computed.value.result);
      const { pdf, pages } = await makePaper(sheet, paperSize);
      return ok({
        fileName: `${plainFileName(sheet.fileName)}.pdf`,
        pdfBase64: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('base64'),
        pages,
      });
    },
  };
}
