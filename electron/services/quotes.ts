import { computeJob } from '../../core/job/compute-job.ts';
import { inputOfWay, priceWays, waysOf } from '../../core/offer/offered-ways.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { compareEstimates } from '../../core/quotes/compare-estimates.ts';
import { daysLeft, quoteStateOn, stepsFrom } from '../../core/quotes/quote-state.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { earliestDate } from '../../core/units/civil-date.ts';
import type { Handlers } from '../handlers.ts';
import type { WritableDb } from '../store/database.ts';
import { getJob } from '../store/jobs.ts';
import {
  type ChosenWay,
  getQuote,
  listQuotes,
  moveQuote,
  putDraft,
  type StoredQuote,
} from '../store/quotes.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';
import { keptSheet } from './kept-sheets.ts';
import { printSheet } from './print-sheet.ts';
import { computeProven, provenSupplierCosts } from './proven-job.ts';
import { provenWays } from './proven-ways.ts';
import { notReady, quoteRecord, type QuoteRecord, resultTaken } from './quote-record.ts';

type QuoteCommands =
  | 'quotes.make'
  | 'quotes.send'
  | 'quotes.decide'
  | 'quotes.ways'
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
      const proven = await provenWays(context, asked);
      if (!proven.ok) return proven;
      const [offered] = proven.value.ways;
      if (offered === undefined) throw new Error('a job has at least the way that is drawn');
      const supplierCosts = await provenSupplierCosts(context, inputOfWay(asked, offered), offered.result);
      return store.write((db) => {
        // Read again, since the job may have been saved while boards were searched; plans that still fit are used.
        const input = loadJobInput(db, jobId, today());
        if (input === undefined) return fail(noJob);
        const priced = priceWays(input, (way) => computeJob(way, proven.value.solved));
        if (!priced.ok) return priced;
        const [first, ...others] = priced.value;
        if (first === undefined) throw new Error('a job has at least the way that is drawn');
        const { estimate } = first.result;
        const { number, revision } = nextName(db, jobId);
        const id = context.newId();
        putDraft(db, {
          id,
          jobId,
          number,
          revision,
          madeOn: today(),
          validUntil: earliestDate(
            estimate.validUntil,
            others.map(({ result }) => result.estimate.validUntil),
          ),
          totalUsd: estimate.totalUsd,
          lacks: priced.value.reduce((sum, { result }) => sum + result.estimate.lacks.length, 0),
          record: quoteRecord(input, [first, ...others], supplierCosts, { number, revision }),
        });
        return ok({ id, number, revision });
      });
    },
    'quotes.send': ({ id, knowing }) =>
      step(context, id, 'send', (db, quote, record) => {
        if (quote.lacks > 0) return fail({ code: 'quote-not-complete', lacks: quote.lacks });
        const problem = notReady(record, knowing);
        if (problem !== null) return fail(problem);
        moveQuote(db, id, { state: 'sent', sentOn: today() });
        return ok({});
      }),
    'quotes.decide': ({ id, decision, on, note, wayId }) =>
      step(context, id, decision === 'accepted' ? 'accept' : 'decline', (db, _quote, record) => {
        const chosen = decision === 'accepted' ? chosenWay(record, wayId) : ok(null);
        if (!chosen.ok) return chosen;
        moveQuote(db, id, { state: decision, decidedOn: on, note, chosen: chosen.value });
        return ok({});
      }),
    'quotes.ways': ({ id }) => {
      const quote = store.read((db) => getQuote(db, id));
      if (quote === undefined) return fail(noQuote);
      if (!quote.intact) return fail({ code: 'shop-file-damaged' });
      const record = quote.record as QuoteRecord;
      return ok({
        unanswered: [...(record.unanswered ?? [])],
        ways: [
          { ...(record.offered ?? { id: '', name: '' }), differences: [], result: record.result },
          ...(record.ways ?? []),
        ].map(({ id: wayId, name, differences, result }) => ({
          id: wayId,
          name,
          differences: [...differences],
          totalUsd: result.estimate.totalUsd,
        })),
      });
    },
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
      return ok(await printSheet(context, keptSheet(quote.record, sheet), paperSize));
    },
    'quotes.compare': async ({ id, withId }) => {
      const quote = store.read((db) => getQuote(db, id));
      const other = withId === null ? null : store.read((db) => getQuote(db, withId));
      if (quote === undefined || other === undefined) return fail(noQuote);
      if (!quote.intact || other?.intact === false) return fail({ code: 'shop-file-damaged' });
      const before = resultTaken(quote.record as QuoteRecord, quote.chosen).estimate;
      if (other !== null) {
        const after = resultTaken(other.record as QuoteRecord, other.chosen).estimate;
        const change = compareEstimates(before, after);
        return ok({ ...change, lines: [...change.lines], asOf: after.asOf });
      }
      // Today's prices, whatever day the job itself is pinned to: that is what the boards would cost now.
      const input = store.read((db) => loadJobInput(db, quote.jobId, today(), 'today'));
      if (input === undefined) return fail(noJob);
      const [offered] = waysOf(input);
      const now = await computeProven(context, offered === undefined ? input : inputOfWay(input, offered));
      if (!now.ok) return now;
      const change = compareEstimates(before, now.value.result.estimate);
      return ok({ ...change, lines: [...change.lines], asOf: input.asOf });
    },
  };
}

/** Which way the client took; null for the one that was offered first. */
function chosenWay(record: QuoteRecord, wayId: string | null): Result<ChosenWay | null, Problem> {
  if (wayId === null || wayId === (record.offered?.id ?? '')) return ok(null);
  const way = record.ways?.find(({ id }) => id === wayId);
  return way === undefined
    ? fail({ code: 'offer', fault: { what: 'no-such-way' } })
    : ok({ id: way.id, name: way.name, totalUsd: way.result.estimate.totalUsd });
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

/** Does a step with a quote where it stands so that the step may be done. */
function step(
  { store, today }: Context,
  id: string,
  wanted: ReturnType<typeof stepsFrom>[number],
  work: (db: WritableDb, quote: StoredQuote, record: QuoteRecord) => Result<object, Problem>,
): Result<Record<string, never>, Problem> {
  return store.write((db) => {
    const quote = getQuote(db, id);
    if (quote === undefined) return fail(noQuote);
    if (!quote.intact) return fail({ code: 'shop-file-damaged' });
    const state = quoteStateOn(quote, today());
    if (!stepsFrom(state).includes(wanted)) return fail({ code: 'changed-elsewhere', what: 'quote' });
    const done = work(db, quote, quote.record as QuoteRecord);
    return done.ok ? ok({}) : done;
  });
}

function asShown({ jobId: _jobId, ...quote }: StoredQuote, day: string) {
  return { ...quote, state: quoteStateOn(quote, day), daysLeft: daysLeft(quote, day) };
}
