import { z } from 'zod';
import { civilDate } from '../pricing/civil-date-field.ts';
import { indexValueSchema } from '../pricing/history/index-series.ts';
import { priceItemSchema, priceObservationSchema } from '../pricing/price-list.ts';
import { id, none, read, write } from './command.ts';

const seriesName = z.string().trim().min(1, 'Give the series a name.').max(80);

/** What prices did over time. */
export const priceHistoryCommands = {
  /** Items with every price that they had; those that are not on the list are left out. */
  'prices.histories': read(z.strictObject({ itemIds: z.array(id).max(500) }), z.array(priceItemSchema)),
  /** Items whose price is another than on a day, those that rose most first. */
  'prices.changesSince': read(
    z.strictObject({ since: civilDate }),
    z.array(
      z.strictObject({
        itemId: id,
        description: z.string(),
        supplier: z.string(),
        unit: z.string(),
        before: priceObservationSchema.nullable(),
        after: priceObservationSchema,
        percent: z.string().nullable(),
      }),
    ),
  ),
  /** What several suppliers ask for the same thing on a day. */
  'prices.spread': read(
    z.strictObject({ on: civilDate }),
    z.array(
      z.strictObject({
        what: z.string(),
        unit: z.string(),
        spreadPercent: z.string(),
        offers: z.array(
          z.strictObject({
            itemId: id,
            supplier: z.string(),
            description: z.string(),
            eachUsd: z.string(),
            priceOf: civilDate,
            ageDays: z.int(),
            stale: z.boolean(),
          }),
        ),
      }),
    ),
  ),
  /** Index series to hold prices against. */
  'prices.indexes': read(
    none,
    z.array(z.strictObject({ series: z.string(), values: z.array(indexValueSchema) })),
  ),
  /** Takes a series in from CSV of two columns; months that it has already get the new value. All or nothing. */
  'prices.importIndex': write(
    z.strictObject({ series: seriesName, text: z.string().max(1_000_000) }),
    z.strictObject({ months: z.int(), changed: z.int() }),
  ),
  'prices.removeIndex': write(z.strictObject({ series: z.string().min(1).max(80) }), none),
} as const;
