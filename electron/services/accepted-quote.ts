import type { JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import type { ReadableDb } from '../store/database.ts';
import { newestAccepted, type StoredQuote } from '../store/quotes.ts';
import type { QuoteRecord } from './quote-record.ts';

/** What the client said yes to: the quote as it was frozen, with what it was reckoned from. */
export type AcceptedQuote = StoredQuote & { readonly input: JobInput; readonly result: JobResult };

/**
 * The newest accepted quote of a job: its contract, of the way that the client took. Undefined where none was accepted.
 * `intact` is false where its record does not match its hash any more: then nothing may be built on it.
 */
export function acceptedQuote(db: ReadableDb, jobId: string): AcceptedQuote | undefined {
  const quote = newestAccepted(db, jobId);
  if (quote === undefined) return undefined;
  const { record, ...kept } = quote;
  const { input, result, ways = [] } = record as QuoteRecord;
  const { chosen } = kept;
  if (chosen === null) return { ...kept, input, result };
  const way = ways.find(({ id }) => id === chosen.id);
  // Without the way that was chosen there is no contract to build on.
  if (way === undefined) return { ...kept, intact: false, input, result };
  return {
    ...kept,
    totalUsd: way.result.estimate.totalUsd,
    input: { ...input, design: way.design },
    result: way.result,
  };
}
