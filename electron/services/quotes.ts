import { computeJob } from '../../core/job/compute-job.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { compareEstimates } from '../../core/quotes/compare-estimates.ts';
import { numberQuote } from '../../core/quotes/number-quote.ts';
import { daysLeft, quoteStateOn, stepsFrom } from '../../core/quotes/quote-state.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { WritableDb } from '../store/database.ts';
import { getJob } from '../store/jobs.ts';
import { getQuote, listQuotes, moveQuote, putDraft, type StoredQuote } from '../store/quotes.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';
import { keptSheet, type KeptSheets, sheetsToKeep } from './kept-sheets.ts';
import { printSheet } from './print-sheet.ts';
import { computeProven, provenSupplierCosts } from './proven-job.ts';

type QuoteCommands =
  | 'quotes.make'
  | 'quotes.send'
  | 'quotes.decide'
  | 'quotes.list'
  | 'quotes.paper'
  | 'quotes.compare';

const noJob = { code: 'not-found', what: 'job' } as const;
const noQuote = { code: 'not-found', what: 'quote' } as const;

/** Quotes: numbered and revisioned, drafts until they are sent, frozen from then on. */
export function quoteHandlers(context: Context): Pick<Handlers, QuoteCommands> {
  const { store, today } = context;
  return {
    'quotes.make': async ({ jobId }) => {
      const asked = store.read((db) => loadJobInput(db, jobId, today()));
      if (asked === undefined) return fail(noJob);
      const computed = await computeProven(context, asked);
      if (!computed.ok) return computed;
      const supplierCosts = await provenSupplierCosts(context, asked, computed.value.result);
      return store.write((db) => {
        // Read again, since the job may have been saved while boards were searched; plans that still fit are used.
        const input = loadJobInput(db, jobId, today());
        if (input === undefined) return fail(noJob);
        const result = computeJob(input, computed.value.solved);
        if (!result.ok) return result;
        const { estimate } = result.value;
        const { number, revision } = nextName(db, jobId);
        const id = context.newId();
        putDraft(db, {
          id,
          jobId,
          number,
          revision,
          madeOn: today(),
          validUntil: estimate.validUntil,
          totalUsd: estimate.totalUsd,
          lacks: estimate.lacks.length,
          record: {
            input,
            result: result.value,
            sheets: withNumber(sheetsToKeep(input, result.value, { supplierCosts }), number, revision),
          },
        });
        return ok({ id, number, revision });
      });
    },
    'quotes.send': ({ id }) =>
      step(context, id, 'send', (db, quote) => {
        if (quote.lacks > 0) return fail({ code: 'quote-not-complete', lacks: quote.lacks });
        moveQuote(db, id, { state: 'sent', sentOn: today() });
        return ok({});
      }),
    'quotes.decide': ({ id, decision, on, note }) =>
      step(context, id, decision === 'accepted' ? 'accept' : 'decline', (db) => {
        moveQuote(db, id, { state: decision, decidedOn: on, note });
        return ok({});
      }),
    'quotes.list': ({ jobId }) =>
      store.read((db) =>
        getJob(db, jobId) === undefined
          ? fail(noJob)
          : ok(listQuotes(db, jobId).map((quote) => asShown(quote, today()))),
      ),
    'quotes.paper': async ({ id, sheet, paperSize }) => {
      const quote = store.read((db) => getQuote(db, id));
      if (quote === undefined) return fail(noQuote);
      if (!quote.intact) return fail({ code: 'shop-file-damaged' });
      return ok(await printSheet(keptSheet(quote.record, sheet), paperSize));
    },
    'quotes.compare': async ({ id }) => {
      const quote = store.read((db) => getQuote(db, id));
      if (quote === undefined) return fail(noQuote);
      if (!quote.intact) return fail({ code: 'shop-file-damaged' });
      // Today's prices, whatever day the job itself is pinned to: that is what the boards would cost now.
      const input = store.read((db) => loadJobInput(db, quote.jobId, today(), 'today'));
      if (input === undefined) return fail(noJob);
      const now = await computeProven(context, input);
      if (!now.ok) return now;
      const { estimate } = (quote.record as { readonly result: JobResult }).result;
      const change = compareEstimates(estimate, now.value.result.estimate);
      return ok({ ...change, lines: [...change.lines], asOf: input.asOf });
    },
  };
}

/** The next revision of the job's last quote; a draft keeps its own name. The first takes the shop's next number. */
function nextName(db: WritableDb, jobId: string): { readonly number: number; readonly revision: number } {
  const [last] = listQuotes(db, jobId);
  if (last !== undefined)
    return { number: last.number, revision: last.state === 'draft' ? last.revision : last.revision + 1 };
  const { settings, revision } = getSettings(db);
  const number = settings.nextQuoteNumber;
  putSettings(db, { ...settings, nextQuoteNumber: number + 1 }, revision);
  return { number, revision: 1 };
}

function withNumber(sheets: KeptSheets, number: number, revision: number): KeptSheets {
  return { ...sheets, quote: numberQuote(sheets.quote, number, revision) };
}

/** Does a step with a quote where it stands so that the step may be done. */
function step(
  { store, today }: Context,
  id: string,
  wanted: ReturnType<typeof stepsFrom>[number],
  work: (db: WritableDb, quote: StoredQuote) => Result<object, Problem>,
): Result<Record<string, never>, Problem> {
  return store.write((db) => {
    const quote = getQuote(db, id);
    if (quote === undefined) return fail(noQuote);
    if (!quote.intact) return fail({ code: 'shop-file-damaged' });
    const state = quoteStateOn(quote, today());
    if (!stepsFrom(state).includes(wanted)) return fail({ code: 'changed-elsewhere', what: 'quote' });
    const done = work(db, quote);
    return done.ok ? ok({}) : done;
  });
}

function asShown({ jobId: _jobId, ...quote }: StoredQuote, day: string) {
  return { ...quote, state: quoteStateOn(quote, day), daysLeft: daysLeft(quote, day) };
}
