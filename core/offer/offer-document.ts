import { z } from 'zod';
import { decimalField } from '../survey/fields.ts';

/** How far the client's paper splits the price: one sum, a sum a phase, or a sum a line. Cost never shows. */
export const printLevelSchema = z.enum(['one-sum', 'by-phase', 'by-line']);
export type PrintLevel = z.infer<typeof printLevelSchema>;

/** A price agreed before hidden work is opened up: a rotted tail, a foot of plank. */
export const unitPriceSchema = z.strictObject({
  id: z.string().min(1).max(40),
  description: z.string().min(1).max(200),
  unit: z.string().min(1).max(20),
  /** What the client pays for one. [$] */
  priceUsd: decimalField({ least: 0, most: 1000000 }),
});
export type UnitPrice = z.infer<typeof unitPriceSchema>;

/**
 * Another way to do the same job, reckoned from the same survey: entries of the design that differ, by dotted path, and
 * extra costs that it adds or leaves out.
 */
export const alternateSchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(80),
  description: z.string().max(2000).default(''),
  changes: z
    .array(z.strictObject({ path: z.string().min(1).max(200), value: z.json() }))
    .max(200)
    .default([]),
  addedCosts: z.array(z.string().max(40)).max(200).default([]),
  leftOutCosts: z.array(z.string().max(40)).max(200).default([]),
});
export type Alternate = z.infer<typeof alternateSchema>;

/** A payment and when it falls due; the last takes the rest, so that the payments add up to the price. */
export const paymentSchema = z.strictObject({
  id: z.string().min(1).max(40),
  when: z.string().min(1).max(120),
  percent: decimalField({ least: 0, most: 100 }),
});
export type Payment = z.infer<typeof paymentSchema>;

/** An answer to what is usually forgotten. */
export const reminderAnswerSchema = z.strictObject({
  /** A key of core/offer/reminders.ts. */
  key: z.string().min(1).max(60),
  answer: z.enum(['in-price', 'not-in-price', 'not-needed']),
  note: z.string().max(500).default(''),
});

/** What the client is offered, beside what is built. */
export const offerSchema = z.strictObject({
  printLevel: printLevelSchema.default('by-phase'),
  /** In the person's own words; blank takes the words made from the design. */
  scopeText: z.string().max(20000).default(''),
  unitPrices: z.array(unitPriceSchema).max(100).default([]),
  alternates: z.array(alternateSchema).max(10).default([]),
  payments: z.array(paymentSchema).max(20).default([]),
  reminders: z.array(reminderAnswerSchema).max(100).default([]),
  startWindow: z.string().max(200).default(''),
  warranty: z.string().max(2000).default(''),
  /** Days that the price stays good; null takes the shop's own number. [d] */
  validDays: z.int().min(1).max(365).nullable().default(null),
  /** A clause by which the price follows the price of lumber beyond this change; null: none. [%] */
  escalationPercent: decimalField({ least: 0, most: 100 }).nullable().default(null),
});
export type Offer = z.infer<typeof offerSchema>;
