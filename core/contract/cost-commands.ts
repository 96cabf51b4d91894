import { z } from 'zod';
import { billSchema, timeEntrySchema } from '../jobcost/cost-entries.ts';
import { costKinds } from '../billing/change-order.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { decimalField } from '../survey/fields.ts';
import { id, namedBytes, none, read, write } from './command.ts';

const usd = z.string();
const decimal = z.string();

const entryHead = {
  id,
  sequence: z.int(),
  enteredOn: civilDate,
  replaces: id.nullable(),
  takesBack: z.boolean(),
};

const keptTime = z.strictObject({
  ...entryHead,
  person: z.string(),
  workedOn: civilDate,
  phase: z.string(),
  hours: decimal,
  note: z.string(),
  rateUsd: decimal,
  costUsd: usd,
});

const keptBill = z.strictObject({ ...entryHead, bill: billSchema, totalUsd: usd });

const phaseFigures = {
  budgetUsd: usd,
  budgetHours: decimal,
  committedUsd: usd,
  actualUsd: usd,
  actualHours: decimal,
  percent: decimal.nullable(),
  percentByCost: decimal.nullable(),
  percentsDisagree: z.boolean(),
  earnedUsd: usd,
  varianceUsd: usd.nullable(),
  performance: decimal.nullable(),
  forecastUsd: usd,
  leftUsd: usd,
};

/** Where a job stands, phase by phase and whole. */
export const standingSchema = z.strictObject({
  phases: z.array(
    z.strictObject({
      phase: z.string(),
      ...phaseFigures,
      percentFrom: z.enum(['quantity', 'hand']).nullable(),
      forecastFrom: z.enum(['own', 'pace', 'plan', 'done', 'spent']),
    }),
  ),
  whole: z.strictObject(phaseFigures),
});

const progressWord = z.strictObject({
  phase: z.string(),
  notedOn: civilDate,
  quantity: decimal.nullable(),
  percent: decimal.nullable(),
  toCompleteUsd: usd.nullable(),
});

/** A material line of the accepted estimate, and what came of it. */
const purchaseLine = z.strictObject({
  costLineId: z.string(),
  itemId: id.nullable(),
  phase: z.string(),
  description: z.string(),
  supplier: z.string(),
  quantity: decimal,
  unit: z.string(),
  unitCostUsd: decimal,
  costUsd: usd,
  /** Of it, on receipts and returns. [$] */
  boughtUsd: usd,
});

const attachment = z.strictObject({ id, name: z.string(), addedOn: civilDate, bytes: z.int() });

/** Time, receipts, orders, progress: what a job really takes. */
export const costCommands = {
  /** All that the job-cost part of a job shows; budget and standing are null while no quote is accepted. */
  'costs.get': read(
    z.strictObject({ jobId: id }),
    z.strictObject({
      today: civilDate,
      /** The shop's phases, in order. */
      phases: z.array(z.string()),
      people: z.array(z.string()),
      contract: z
        .strictObject({
          quoteNumber: z.int(),
          revision: z.int(),
          acceptedOn: civilDate,
          priceUsd: usd,
          changesUsd: usd,
        })
        .nullable(),
      contingencyUsd: usd,
      standing: standingSchema,
      byKind: z.array(z.strictObject({ kind: z.enum(costKinds), budgetUsd: usd, actualUsd: usd })),
      countable: z.array(
        z.strictObject({
          phase: z.string(),
          what: z.string(),
          unit: z.string(),
          total: decimal,
          /** Known to be in place from what was typed back into the layout; null where nothing tells. */
          inPlace: decimal.nullable(),
        }),
      ),
      progress: z.array(progressWord),
      times: z.array(keptTime),
      bills: z.array(keptBill),
      openOrders: z.array(z.strictObject({ id, receivedUsd: usd, openUsd: usd })),
      purchaseLines: z.array(purchaseLine),
      attachments: z.array(attachment),
      earned: z.strictObject({
        contractUsd: usd,
        billedUsd: usd,
        percentByCost: decimal,
        earnedUsd: usd,
        overBilledUsd: usd,
      }),
      finishedOn: civilDate.nullable(),
    }),
  ),
  /** Enters the hours of one or more people at once; all or none. */
  'costs.addTime': write(
    z.strictObject({ jobId: id, entries: z.array(timeEntrySchema).min(1).max(500) }),
    z.strictObject({ added: z.int() }),
  ),
  /** Puts another entry in the place of one, or takes it back; the earlier one stays to be seen. */
  'costs.correctTime': write(z.strictObject({ id, entry: timeEntrySchema.nullable() }), none),
  /** Enters a receipt, an order, a bill or a return; prices that it is to note are noted with it. */
  'costs.addBill': write(
    z.strictObject({ jobId: id, bill: billSchema }),
    z.strictObject({ id, pricesNoted: z.int() }),
  ),
  'costs.correctBill': write(z.strictObject({ id, bill: billSchema.nullable() }), none),
  /** Notes how far a phase is; the earlier word stays in the record. */
  'costs.noteProgress': write(
    z.strictObject({
      jobId: id,
      phase: z.string().min(1).max(60),
      quantity: decimalField({ least: 0, most: 1_000_000 }).nullable(),
      percent: decimalField({ least: 0, most: 100 }).nullable(),
      toCompleteUsd: decimalField({ least: 0, most: 100_000_000 }).nullable(),
    }),
    none,
  ),
  /** Keeps a photo or PDF in the shop's folder. */
  'costs.attach': write(
    z.strictObject({
      jobId: id,
      name: z.string().min(1).max(200),
      base64: z.base64().max(30_000_000),
    }),
    z.strictObject({ id }),
  ),
  'costs.openAttachment': read(z.strictObject({ id }), namedBytes),
} as const;
