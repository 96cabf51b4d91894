import { completeness, unanswered } from '../../core/offer/completeness.ts';
import { inputOfWay, type PricedWay } from '../../core/offer/offered-ways.ts';
import { paymentPlan } from '../../core/offer/payments.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import type { SupplierCost } from '../../core/job/supplier-ways.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { numberQuote } from '../../core/quotes/number-quote.ts';
import { type KeptSheets, sheetsToKeep } from './kept-sheets.ts';

/** What is frozen of a quote. The first ones were kept without sheets, ways and questions. */
export type QuoteRecord = {
  /** Of the way that is offered first. */
  readonly input: JobInput;
  readonly result: JobResult;
  readonly sheets?: KeptSheets;
  readonly offered?: { readonly id: string; readonly name: string };
  /** The other ways, each with its design and figures; the survey and the prices are the same. */
  readonly ways?: readonly PricedWay[];
  /** What is usually forgotten and was not answered when the quote was made, by short names. */
  readonly unanswered?: readonly string[];
};

/**
 * Freezes a quote with all of its ways, the offered one first.
 * @param name - its number and revision, put on its sheet.
 */
export function quoteRecord(
  drawn: JobInput,
  ways: readonly [PricedWay, ...PricedWay[]],
  supplierCosts: readonly SupplierCost[],
  name: { readonly number: number; readonly revision: number },
): Required<QuoteRecord> {
  const [offered, ...others] = ways;
  const input = inputOfWay(drawn, offered);
  const sheets = sheetsToKeep(input, offered.result, { supplierCosts, ways });
  return {
    input,
    result: offered.result,
    sheets: { ...sheets, quote: numberQuote(sheets.quote, name.number, name.revision) },
    offered: { id: offered.id, name: offered.name },
    ways: others,
    unanswered: unanswered(completeness(input, offered.result)),
  };
}

/** The figures of the way that the client took, or of the one that is offered first. */
export function resultTaken(record: QuoteRecord, chosen: { readonly id: string } | null): JobResult {
  const way = chosen === null ? undefined : record.ways?.find(({ id }) => id === chosen.id);
  return way?.result ?? record.result;
}

/** Why a quote cannot be sent as it was made; null where it can. */
export function notReady(record: QuoteRecord, knowing: boolean): Problem | null {
  const payments = record.input.design.offer?.payments ?? [];
  const { fault } = paymentPlan(payments, record.result.estimate.totalUsd);
  if (fault !== null) return { code: 'offer', fault: fault.fault };
  const questions = record.unanswered ?? [];
  return questions.length > 0 && !knowing
    ? { code: 'offer', fault: { what: 'not-all-asked', questions } }
    : null;
}
