import type { Sheet } from '../../core/documents/sheet.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { PaperSize } from '../paper/paper-size.ts';
import { getEstimateRecord } from '../store/estimates.ts';
import type { Context } from './context.ts';
import { plainFileName } from './app.ts';
import { loadJobInput } from './job-input.ts';
import { keptSheet } from './kept-sheets.ts';
import { computeProven, provenSupplierCosts } from './proven-job.ts';

/** Sheets as PDF. The printer is loaded when the first sheet is asked for: it is the heaviest part of the host. */
export function paperHandlers(context: Context): Pick<Handlers, 'paper.make' | 'paper.ofEstimate'> {
  return {
    'paper.make': async ({ jobId, sheet: kind, paperSize }) => {
      const input = context.store.read((db) => loadJobInput(db, jobId, context.today()));
      if (input === undefined) return fail({ code: 'not-found', what: 'job' });
      const computed = await computeProven(context.prover, input);
      if (!computed.ok) return computed;
      const { makeSheet } = await import('../../core/documents/make-sheet.ts');
      const { result } = computed.value;
      const supplierCosts =
        kind === 'cut-list' ? await provenSupplierCosts(context.prover, input, result) : [];
      return ok(await print(makeSheet(kind, input, result, { supplierCosts }), paperSize));
    },
    'paper.ofEstimate': async ({ estimateId, sheet, paperSize }) => {
      const frozen = context.store.read((db) => getEstimateRecord(db, estimateId));
      if (frozen === undefined) return fail({ code: 'not-found', what: 'estimate' });
      if (!frozen.intact) return fail({ code: 'shop-file-damaged' });
      return ok(await print(keptSheet(frozen.record, sheet), paperSize));
    },
  };
}

async function print(
  sheet: Sheet,
  paperSize: PaperSize,
): Promise<{ fileName: string; pdfBase64: string; pages: number }> {
  const { makePaper } = await import('../paper/make-paper.ts');
  const { pdf, pages } = await makePaper(sheet, paperSize);
  return {
    fileName: `${plainFileName(sheet.fileName)}.pdf`,
    pdfBase64: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('base64'),
    pages,
  };
}
