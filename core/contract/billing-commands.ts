import { z } from 'zod';
import { changeOrderSchema, changeOrderStates } from '../billing/change-order.ts';
import { billAskSchema, invoiceKinds } from '../billing/invoice.ts';
import { ages } from '../billing/ledger.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { decimalField } from '../survey/fields.ts';
import { id, none, paperSize, printedSheet, read, write } from './command.ts';

const usd = z.string();
const decimal = z.string();

const contractChange = z.strictObject({ number: z.int(), description: z.string(), priceUsd: usd });

const invoiceFigures = z.strictObject({
  kind: z.enum(['deposit', 'stage', 'progress', 'final']),
  stage: z.string(),
  quotedUsd: usd,
  changes: z.array(contractChange),
  revisedUsd: usd,
  parts: z.array(
    z.strictObject({
      key: z.string(),
      label: z.string(),
      priceUsd: usd,
      taxableUsd: usd,
      percent: decimal,
      percentBefore: decimal,
      doneUsd: usd,
      doneBeforeUsd: usd,
    }),
  ),
  workToDateUsd: usd,
  retainagePercent: decimal,
  retainedUsd: usd,
  depositBeforeUsd: usd,
  billedBeforeUsd: usd,
  amountUsd: usd,
  taxUsd: usd,
  totalUsd: usd,
  balanceToFinishUsd: usd,
});

/** A job's money with the client. */
export const billingSummary = z.strictObject({
  quotedUsd: usd,
  changesUsd: usd,
  revisedUsd: usd,
  billedUsd: usd,
  retainedUsd: usd,
  toBillUsd: usd,
  taxUsd: usd,
  paidUsd: usd,
  balanceUsd: usd,
  aged: z.record(z.enum(ages), usd),
});

const unitPrice = z.strictObject({
  id: z.string(),
  what: z.string(),
  unit: z.string(),
  priceUsd: usd,
  costUsd: usd,
  hours: decimal,
});

/** Change orders, invoices, credits and payments. */
export const billingCommands = {
  /** All that the billing part of a job shows; contract and summary are null while no quote is accepted. */
  'billing.get': read(
    z.strictObject({ jobId: id }),
    z.strictObject({
      today: civilDate,
      phases: z.array(z.string()),
      summary: billingSummary.nullable(),
      /** The contract in the parts it is billed by, with how far the job cost says each is; null where it does not. */
      parts: z.array(
        z.strictObject({
          key: z.string(),
          label: z.string(),
          priceUsd: usd,
          taxableUsd: usd,
          percentBilled: decimal,
          percentDone: decimal.nullable(),
          /** What it can be counted by; null where nothing of it is counted. */
          counted: z.strictObject({ what: z.string(), unit: z.string(), total: decimal }).nullable(),
        }),
      ),
      clientTaxPercent: decimal,
      /** Most that may be asked for as a deposit by the rule that the shop has set; null where it has set none. */
      depositLimitUsd: usd.nullable(),
      unitPrices: z.array(unitPrice),
      /** The payments that the accepted quote has planned, before tax. */
      planned: z.array(z.strictObject({ when: z.string(), amountUsd: usd })),
      changeOrders: z.array(
        z.strictObject({
          id,
          number: z.int(),
          state: z.enum(changeOrderStates),
          madeOn: civilDate,
          sentOn: civilDate.nullable(),
          decidedOn: civilDate.nullable(),
          note: z.string(),
          priceUsd: usd,
          order: changeOrderSchema,
          intact: z.boolean(),
        }),
      ),
      invoices: z.array(
        z.strictObject({
          id,
          number: z.int(),
          kind: z.enum(invoiceKinds),
          credits: z.int().nullable(),
          issuedOn: civilDate,
          dueOn: civilDate,
          amountUsd: usd,
          taxUsd: usd,
          totalUsd: usd,
          /** Of an invoice: credited, paid and open; of a credit nothing. [$] */
          creditedUsd: usd,
          paidUsd: usd,
          openUsd: usd,
          daysPast: z.int(),
          age: z.enum(ages),
          intact: z.boolean(),
        }),
      ),
      payments: z.array(
        z.strictObject({
          id,
          sequence: z.int(),
          paidOn: civilDate,
          amountUsd: usd,
          how: z.string(),
          note: z.string(),
          takesBack: id.nullable(),
        }),
      ),
      settings: z.strictObject({ retainagePercent: decimal, dueDays: z.int() }),
    }),
  ),
  /** Makes a change order, or changes one that is a draft. */
  'billing.saveChange': write(
    z.strictObject({ jobId: id, id: id.nullable(), order: changeOrderSchema }),
    z.strictObject({ id, number: z.int() }),
  ),
  /** Sends it, or notes what the client said; approved, it is frozen and belongs to the contract. */
  'billing.moveChange': write(
    z.strictObject({
      id,
      to: z.enum(['sent', 'approved', 'declined']),
      on: civilDate,
      note: z.string().max(2000).default(''),
    }),
    none,
  ),
  /**
   * The lines of a change order that brings the accepted contract, with what is approved from the design already, to the job
   * as it is designed now; `open` numbers those of this kind that are not answered yet and would be counted twice.
   */
  'billing.changeFromDesign': read(
    z.strictObject({ jobId: id }),
    z.strictObject({
      order: changeOrderSchema.nullable(),
      priceUsd: usd,
      lacks: z.int(),
      open: z.array(z.int()),
    }),
  ),
  'billing.changePaper': read(z.strictObject({ id, paperSize }), printedSheet),
  /** What a bill would say, without issuing it. */
  'billing.preview': read(z.strictObject({ jobId: id, ask: billAskSchema }), invoiceFigures),
  /** Issues it: it takes the next number and stays as it is. With `seenUsd`, only where it still comes to what was shown. */
  'billing.issue': write(
    z.strictObject({
      jobId: id,
      ask: billAskSchema,
      issuedOn: civilDate,
      seenUsd: usd.nullable().default(null),
    }),
    z.strictObject({ id, number: z.int() }),
  ),
  /** Takes an invoice back, in whole or in part, by a paper of its own. */
  'billing.credit': write(
    z.strictObject({
      invoiceId: id,
      /** Before tax. [$] */
      amountUsd: decimalField({ least: 0, most: 100_000_000 }),
      reason: z.string().trim().min(1, 'Say why.').max(1000),
      issuedOn: civilDate,
    }),
    z.strictObject({ id, number: z.int() }),
  ),
  'billing.pay': write(
    z.strictObject({
      jobId: id,
      paidOn: civilDate,
      amountUsd: decimalField({ least: 0, most: 100_000_000 }),
      how: z.string().max(60).default(''),
      note: z.string().max(500).default(''),
    }),
    z.strictObject({ id }),
  ),
  'billing.takeBackPayment': write(z.strictObject({ id, note: z.string().max(500).default('') }), none),
  'billing.invoicePaper': read(z.strictObject({ id, paperSize }), printedSheet),
  /** What a client was billed and paid on all of his jobs. */
  'billing.statement': read(z.strictObject({ jobId: id, paperSize }), printedSheet),
} as const;
