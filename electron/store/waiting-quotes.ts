import { usd, type Usd } from '../../core/units/money.ts';
import type { ReadableDb } from './database.ts';
import { query } from './query.ts';

export type WaitingQuote = {
  readonly jobId: string;
  readonly jobName: string;
  readonly number: number;
  readonly revision: number;
  readonly totalUsd: Usd;
  readonly sentOn: string;
  readonly validUntil: string;
};

/** Quotes of jobs that are not put away, sent and answered by nobody, where no later revision has gone out; oldest first. */
export function listWaitingQuotes(db: ReadableDb): WaitingQuote[] {
  const rows = db.rows(
    query
      .selectFrom('quotes')
      .innerJoin('jobs', 'jobs.id', 'quotes.job_id')
      .select([
        'jobs.id',
        'jobs.name',
        'quotes.number',
        'quotes.revision',
        'quotes.state',
        'quotes.total_usd',
        'quotes.sent_on',
        'quotes.valid_until',
      ])
      .where('jobs.archived', '=', 0)
      .where('quotes.state', '!=', 'draft')
      .orderBy('quotes.number')
      .orderBy('quotes.revision'),
  );
  const newest = new Map(rows.map((row) => [row.id, row]));
  return [...newest.values()]
    .filter(({ state }) => state === 'sent')
    .map((row) => ({
      jobId: row.id,
      jobName: row.name,
      number: row.number,
      revision: row.revision,
      totalUsd: usd(row.total_usd),
      sentOn: row.sent_on ?? '',
      validUntil: row.valid_until,
    }));
}
