import { designSchema } from '../../core/eave/design-document.ts';
import { daysLeft, quoteStateOn } from '../../core/quotes/quote-state.ts';
import { fail, ok } from '../../core/result.ts';
import { withoutStockPieces } from '../../core/stock/leave-stock.ts';
import { surveySchema } from '../../core/survey/survey-document.ts';
import type { Handlers, ReadInput } from '../handlers.ts';
import { canonicalJson } from '../store/canonical-json.ts';
import { listCustomers, noCustomer } from '../store/customers.ts';
import type { ReadableDb } from '../store/database.ts';
import { getDocuments, putDocuments, type Documents } from '../store/documents.ts';
import {
  addJob,
  archiveJob,
  changeJob,
  getJob,
  listJobs,
  type JobSummary,
  type StoredJob,
} from '../store/jobs.ts';
import { newestQuotes, type NewestQuote } from '../store/quotes.ts';
import { freePieces } from '../store/stock.ts';
import type { Context } from './context.ts';
import { regainStock, settleStock } from './stock-of-job.ts';

type JobCommands =
  | 'jobs.list'
  | 'jobs.create'
  | 'jobs.get'
  | 'jobs.save'
  | 'jobs.copy'
  | 'jobs.archive'
  | 'customers.list';

const noJob = { code: 'not-found', what: 'job' } as const;

/** Jobs and their documents. */
export function jobHandlers(context: Context): Pick<Handlers, JobCommands> {
  const { store } = context;
  const stamp = () => ({ today: context.today(), newId: context.newId });
  return {
    'jobs.list': ({ search, archived }) =>
      store.read((db) => {
        const quotes = newestQuotes(db);
        const jobs = listJobs(db, archived).filter((job) => matches(job, search));
        return ok(jobs.map((job) => ({ ...job, quote: quoteOfJob(quotes.get(job.id), context.today()) })));
      }),
    'customers.list': () => ok(store.read(listCustomers)),
    'jobs.create': ({ name }) =>
      store.write((db) => {
        const info = { name, siteAddress: '', notes: '', customer: noCustomer };
        const id = addJob(db, info, null, stamp());
        putDocuments(db, id, blankDocuments);
        return ok({ id });
      }),
    'jobs.get': ({ id }) =>
      store.read((db) => {
        const job = getJob(db, id);
        return job === undefined
          ? fail(noJob)
          : ok({ ...job, ...getDocuments(db, id), today: context.today() });
      }),
    'jobs.save': (input) =>
      store.write((db) => {
        const job = getJob(db, input.id);
        if (job === undefined) return fail(noJob);
        if (job.revision !== input.baseRevision) {
          return alreadySaved(db, job, input)
            ? ok({ revision: job.revision })
            : fail({ code: 'changed-elsewhere', what: 'job' });
        }
        if (input.design !== undefined && !job.archived) {
          const settled = settleStock(db, job.id, input.design);
          if (!settled.ok) return settled;
        }
        putDocuments(db, job.id, input);
        return ok({ revision: changeJob(db, job, input, stamp()) });
      }),
    'jobs.copy': ({ id, name }) =>
      store.write((db) => {
        const job = getJob(db, id);
        if (job === undefined) return fail(noJob);
        const copy = addJob(db, { ...job.info, name }, job.estimateOn, stamp());
        const { design, ...others } = getDocuments(db, id);
        const cutting = withoutStockPieces(design.cutting);
        putDocuments(db, copy, { ...others, design: { ...design, cutting } });
        return ok({ id: copy });
      }),
    'jobs.archive': ({ id, archived }) =>
      store.write((db) => {
        if (!archiveJob(db, id, archived)) return fail(noJob);
        if (archived) freePieces(db, id, []);
        else regainStock(db, id, getDocuments(db, id).design);
        return ok({});
      }),
  };
}

const blankDocuments: Documents = {
  survey: surveySchema.parse({ version: 1, eaves: [] }),
  design: designSchema.parse({ version: 1, eaves: [] }),
  drafts: {},
};

/** True where the job already says all that a save wants: the same save once more, its first answer lost. */
function alreadySaved(db: ReadableDb, job: StoredJob, input: ReadInput<'jobs.save'>): boolean {
  const stored: Record<string, unknown> = {
    info: job.info,
    estimateOn: job.estimateOn,
    ...getDocuments(db, job.id),
  };
  const { id: _id, baseRevision: _base, ...wanted } = input;
  return Object.entries(wanted).every(
    ([key, value]) => value === undefined || canonicalJson(stored[key]) === canonicalJson(value),
  );
}

/** Where a job's newest quote stands on a day. */
function quoteOfJob(quote: NewestQuote | undefined, day: string) {
  if (quote === undefined) return null;
  const { number, revision, sentOn, validUntil } = quote;
  return {
    number,
    revision,
    sentOn,
    validUntil,
    state: quoteStateOn(quote, day),
    daysLeft: daysLeft(quote, day),
  };
}

/** Every word of the search stands somewhere in what the list shows of the job. */
function matches(job: JobSummary, search: string): boolean {
  const text = `${job.name} ${job.customerName} ${job.siteAddress}`.toLocaleLowerCase();
  return search
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
