import { z } from 'zod';
import { civilDate } from '../pricing/civil-date-field.ts';

const quoteState = z.enum(['draft', 'sent', 'accepted', 'declined', 'lapsed']);

/** Where a job's newest quote stands. */
export const quoteOfJob = z.strictObject({
  number: z.int(),
  revision: z.int(),
  state: quoteState,
  sentOn: civilDate.nullable(),
  validUntil: civilDate,
  /** Set while few days are left to answer it. [d] */
  daysLeft: z.int().nullable(),
});

/** A quote in the list of a job. */
export const shownQuote = quoteOfJob.extend({
  id: z.string(),
  madeOn: civilDate,
  decidedOn: civilDate.nullable(),
  totalUsd: z.string(),
  lacks: z.int(),
  note: z.string(),
  /** The way that the client took, where it is not the one that was offered first. */
  chosen: z.strictObject({ id: z.string(), name: z.string(), totalUsd: z.string() }).nullable(),
  /** False where the frozen record was changed outside of the program: not to be relied on. */
  intact: z.boolean(),
});

const sideOfLine = z.strictObject({ quantity: z.string(), unitCostUsd: z.string(), costUsd: z.string() });

/** What changed since a quote was made. Amounts as decimal text. */
export const quoteChange = z.strictObject({
  asOf: civilDate,
  lines: z.array(
    z.strictObject({
      id: z.string(),
      description: z.string(),
      unit: z.string(),
      before: sideOfLine.nullable(),
      after: sideOfLine.nullable(),
      costDifferenceUsd: z.string(),
    }),
  ),
  directBeforeUsd: z.string(),
  directAfterUsd: z.string(),
  totalBeforeUsd: z.string(),
  totalAfterUsd: z.string(),
  marginBeforePercent: z.string(),
  marginIfPriceStaysPercent: z.string(),
});

/** What a quote offers, the way that comes first at the head, and what it does not say of what is usually forgotten. */
export const quoteWays = z.strictObject({
  unanswered: z.array(z.string()),
  ways: z.array(
    z.strictObject({
      /** Blank: the design as it was drawn. */
      id: z.string(),
      name: z.string(),
      /** Against the one that comes first, in the client's words. */
      differences: z.array(z.string()),
      totalUsd: z.string(),
    }),
  ),
});
