import { inputOfWay } from '../../core/offer/offered-ways.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { getEstimateRecord } from '../store/estimates.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';
import { keptSheet } from './kept-sheets.ts';
import { printSheet } from './print-sheet.ts';
import { computeProven, provenSupplierCosts } from './proven-job.ts';
import { provenWays } from './proven-ways.ts';

/** Sheets as PDF. */
export function paperHandlers(context: Context): Pick<Handlers, 'paper.make' | 'paper.ofEstimate'> {
  return {
    'paper.make': async ({ jobId, sheet: kind, paperSize }) => {
      const input = context.store.read((db) => loadJobInput(db, jobId, context.today()));
      if (input === undefined) return fail({ code: 'not-found', what: 'job' });
      const { makeSheet } = await import('../../core/documents/make-sheet.ts');
      if (kind === 'quote') {
        const proven = await provenWays(context, input);
        if (!proven.ok) return proven;
        const { ways } = proven.value;
        const [offered] = ways;
        if (offered === undefined) throw new Error('a job has at least the way that is drawn');
        const sheet = makeSheet(kind, inputOfWay(input, offered), offered.result, { ways });
        return ok(await printSheet(context, sheet, paperSize));
      }
      const computed = await computeProven(context, input);
      if (!computed.ok) return computed;
      const { result } = computed.value;
      const supplierCosts = kind === 'cut-list' ? await provenSupplierCosts(context, input, result) : [];
      return ok(await printSheet(context, makeSheet(kind, input, result, { supplierCosts }), paperSize));
    },
    'paper.ofEstimate': async ({ estimateId, sheet, paperSize }) => {
      const frozen = context.store.read((db) => getEstimateRecord(db, estimateId));
      if (frozen === undefined) return fail({ code: 'not-found', what: 'estimate' });
      if (!frozen.intact) return fail({ code: 'shop-file-damaged' });
      return ok(await printSheet(context, keptSheet(frozen.record, sheet), paperSize));
    },
  };
}
