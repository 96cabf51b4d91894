import type { KeptState } from '../../core/quotes/quote-state.ts';
import { canonicalJson, sha256 } from './canonical-json.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

/** The way of a quote that the client took, where it is not the one that was offered first. */
export type ChosenWay = { readonly id: string; readonly name: string; readonly totalUsd: string };

export type StoredQuote = {
  readonly id: string;
  readonly jobId: string;
  readonly number: number;
  readonly revision: number;
  readonly state: KeptState;
  readonly madeOn: string;
  readonly sentOn: string | null;
  readonly validUntil: string;
  readonly decidedOn: string | null;
  readonly totalUsd: string;
  readonly lacks: number;
  readonly note: string;
  readonly chosen: ChosenWay | null;
  /** False where the frozen record does not match its hash any more. */
  readonly intact: boolean;
};

/** What is frozen of a quote: everything but where it stands. */
export type FrozenQuote = Pick<
  StoredQuote,
  'id' | 'jobId' | 'number' | 'revision' | 'madeOn' | 'validUntil' | 'totalUsd' | 'lacks'
> & { readonly record: object };

/** Adds a quote as a draft; a draft of the same number and revision is replaced. */
export function putDraft(db: WritableDb, quote: FrozenQuote): void {
  db.run(
    query
      .deleteFrom('quotes')
      .where('number', '=', quote.number)
      .where('revision', '=', quote.revision)
      .where('state', '=', 'draft'),
  );
  const json = canonicalJson(quote);
  db.run(
    query.insertInto('quotes').values({
      id: quote.id,
      job_id: quote.jobId,
      number: quote.number,
      revision: quote.revision,
      state: 'draft',
      made_on: quote.madeOn,
      sent_on: null,
      valid_until: quote.validUntil,
      decided_on: null,
      total_usd: quote.totalUsd,
      lacks: quote.lacks,
      note: '',
      json,
      sha256: sha256(json),
    }),
  );
}

/** The quotes of a job, the newest first, each held against its hash. */
export function listQuotes(db: ReadableDb, jobId: string): StoredQuote[] {
  return db
    .rows(
      query
        .selectFrom('quotes')
        .selectAll()
        .where('job_id', '=', jobId)
        .orderBy('number', 'desc')
        .orderBy('revision', 'desc'),
    )
    .map(quoteOf);
}

/** A quote by id, with its frozen record. */
export function getQuote(
  db: ReadableDb,
  id: string,
): (StoredQuote & { readonly record: unknown }) | undefined {
  const row = db.row(query.selectFrom('quotes').selectAll().where('id', '=', id));
  if (row === undefined) return undefined;
  return { ...quoteOf(row), record: (JSON.parse(row.json) as { readonly record?: unknown }).record };
}

/** The newest quote of a job that was accepted, with its frozen record. */
export function newestAccepted(
  db: ReadableDb,
  jobId: string,
): (StoredQuote & { readonly record: unknown }) | undefined {
  const row = db.row(
    query
      .selectFrom('quotes')
      .select('id')
      .where('job_id', '=', jobId)
      .where('state', '=', 'accepted')
      .orderBy('number', 'desc')
      .orderBy('revision', 'desc'),
  );
  return row === undefined ? undefined : getQuote(db, row.id);
}

/** A quote as it is stored, its record held against its hash. */
function quoteOf(row: Schema['quotes']): StoredQuote {
  return {
    id: row.id,
    jobId: row.job_id,
    number: row.number,
    revision: row.revision,
    state: row.state,
    madeOn: row.made_on,
    sentOn: row.sent_on,
    validUntil: row.valid_until,
    decidedOn: row.decided_on,
    totalUsd: row.total_usd,
    lacks: row.lacks,
    note: row.note,
    chosen: row.chosen === null ? null : (JSON.parse(row.chosen) as ChosenWay),
    intact: sha256(row.json) === row.sha256,
  };
}

/** Moves a quote to where it stands now. */
export function moveQuote(
  db: WritableDb,
  id: string,
  to:
    | { readonly state: 'sent'; readonly sentOn: string }
    | {
        readonly state: 'accepted' | 'declined';
        readonly decidedOn: string;
        readonly note: string;
        readonly chosen: ChosenWay | null;
      },
): void {
  db.run(
    query
      .updateTable('quotes')
      .set(
        to.state === 'sent'
          ? { state: to.state, sent_on: to.sentOn }
          : {
              state: to.state,
              decided_on: to.decidedOn,
              note: to.note,
              chosen: to.chosen === null ? null : JSON.stringify(to.chosen),
            },
      )
      .where('id', '=', id),
  );
}

export type NewestQuote = Pick<StoredQuote, 'number' | 'revision' | 'state' | 'sentOn' | 'validUntil'>;

/** The newest quote of every job that has one. */
export function newestQuotes(db: ReadableDb): ReadonlyMap<string, NewestQuote> {
  const rows = db.rows(
    query
      .selectFrom('quotes')
      .select(['job_id', 'number', 'revision', 'state', 'sent_on', 'valid_until'])
      .orderBy('number')
      .orderBy('revision'),
  );
  return new Map(
    rows.map((row) => [
      row.job_id,
      {
        number: row.number,
        revision: row.revision,
        state: row.state,
        sentOn: row.sent_on,
        validUntil: row.valid_until,
      },
    ]),
  );
}
