import type { JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import type { ReadableDb } from '../store/database.ts';
import { getQuote, listQuotes, type StoredQuote } from '../store/quotes.ts';

/** What the client said yes to: the quote as it was frozen, with what it was reckoned from. */
export type AcceptedQuote = StoredQuote & { readonly input: JobInput; readonly result: JobResult };

/**
 * The newest accepted quote of a job: its contract. Undefined where none was accepted.
 * `intact` is false where its record does not match its hash any more: then nothing may be built on it.
 */
export function acceptedQuote(db: ReadableDb, jobId: string): AcceptedQuote | undefined {
  const newest = listQuotes(db, jobId).find(({ state }) => state === 'accepted');
  const quote = newest === undefined ? undefined : getQuote(db, newest.id);
  if (quote === undefined) return undefined;
  const { record, ...kept } = quote;
  return { ...kept, ...(record as { readonly input: JobInput; readonly result: JobResult }) };
}
