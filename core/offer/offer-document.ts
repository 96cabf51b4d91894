import { z } from 'zod';
import { stockSchema } from '../eave/stock.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { decimalField, lengthField } from '../survey/fields.ts';

/** A price that is agreed before the walls are opened, for work that nobody can see yet. */
export const unitPriceSchema = z.strictObject({
  id: z.string().min(1).max(40),
  what: z.string().min(1, 'Say what it is for.').max(200),
  unit: z.string().min(1).max(20).default('each'),
  /** For the client, before tax; and what one costs the shop. [$/unit] */
  priceUsd: decimalField({ least: 0, most: 1_000_000 }),
  costUsd: decimalField({ least: 0, most: 1_000_000 }).default('0'),
  /** [h/unit] */
  hours: decimalField({ least: 0, most: 10_000 }).default('0'),
});
export type UnitPrice = z.infer<typeof unitPriceSchema>;

/** A payment on the way: part of the total, a sum, or what is left. */
export const paymentSchema = z.strictObject({
  id: z.string().min(1).max(40),
  /** When it is due: `at signing`, `when the framing is in`. */
  when: z.string().min(1, 'Say when it is due.').max(120),
  kind: z.enum(['percent', 'amount', 'rest']),
  /** Percent or dollars; of the rest nothing. */
  value: decimalField({ least: 0, most: 100_000_000 }).default('0'),
});
export type PlannedPayment = z.infer<typeof paymentSchema>;

/** One thing that another way of building the same eaves does otherwise. */
export const alternateChangeSchema = z.discriminatedUnion('what', [
  z.strictObject({
    what: z.literal('soffit'),
    kind: z.enum(['open', 'level', 'sloped']),
    itemId: z.string().max(60).default(''),
  }),
  z.strictObject({ what: z.literal('vents'), itemId: z.string().max(60) }),
  z.strictObject({ what: z.literal('fascia'), stock: stockSchema }),
  z.strictObject({
    what: z.literal('sub-fascia'),
    wanted: z.boolean(),
    stock: stockSchema.prefault({ section: '2x6' }),
  }),
  z.strictObject({ what: z.literal('rakes'), built: z.boolean() }),
  z.strictObject({
    what: z.literal('sheathing'),
    kind: z.enum(['panels', 'planks', 'none']),
    itemId: z.string().max(60).default(''),
  }),
  z.strictObject({ what: z.literal('overhang'), overhangIn: lengthField({ least: 1, most: 96 }) }),
  z.strictObject({
    what: z.literal('extra-cost'),
    extraId: z.string().min(1).max(40),
    included: z.boolean(),
  }),
]);
export type AlternateChange = z.infer<typeof alternateChangeSchema>;

/** Another way to build the same job, priced from the same survey. */
export const alternateSchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(60),
  changes: z.array(alternateChangeSchema).max(40).default([]),
});
export type Alternate = z.infer<typeof alternateSchema>;

/** A paragraph of the scope that the person words himself. */
export const scopeTextSchema = z.strictObject({
  /** Which: `eave/ID`, `rake/ID`. */
  key: z.string().min(1).max(80),
  /** Blank leaves the paragraph out. */
  text: z.string().max(4000),
  /** What the program wrote when he began, so that a later change of the design is told. */
  writtenFrom: z.string().max(4000).default(''),
});
export type ScopeText = z.infer<typeof scopeTextSchema>;

/** What is offered to the client, beside what is built. */
export const offerSchema = z.strictObject({
  /** How much of the price is broken out: one sum, by phase, or line by line; never cost or hours. */
  printLevel: z.enum(['sum', 'phase', 'line']).default('phase'),
  /** Paragraphs of the scope in the person's own words; of the others the program's words hold. */
  scopeTexts: z.array(scopeTextSchema).max(100).default([]),
  /** What the design itself is called beside its alternates. */
  baseName: z.string().min(1).max(60).default('As designed'),
  /** Which of the alternates is offered first, and frozen where none is named; blank: the design as it is drawn. */
  offeredId: z.string().max(40).default(''),
  alternates: z.array(alternateSchema).max(6).default([]),
  unitPrices: z.array(unitPriceSchema).max(60).default([]),
  assumptions: z.array(z.string().min(1).max(300)).max(60).default([]),
  payments: z.array(paymentSchema).max(20).default([]),
  start: z.string().max(200).default(''),
  workingDays: z.int().min(1).max(400).nullable().default(null),
  warranty: z.string().max(1000).default(''),
  escalation: z
    .strictObject({
      wanted: z.boolean().default(false),
      materials: z.string().max(200).default('lumber and panels'),
      /** Prices have to move by so much before the clause holds. [%] */
      triggerPercent: decimalField({ least: 0, most: 100 }).default('5'),
      /** Day whose prices it is reckoned from; null: the day of the quote's prices. */
      baseOn: civilDate.nullable().default(null),
      /** How the new price is shown. */
      proof: z.string().max(200).default('the supplier’s dated invoice'),
      /** A fall of prices is passed on as a rise is. */
      bothWays: z.boolean().default(true),
    })
    .prefault({}),
  /** Key of a rule in the settings, for deposit and cooling-off; blank: none looked up. */
  ruleId: z.string().max(40).default(''),
  signedAtHome: z.boolean().default(false),
  /** What is usually forgotten and not needed here, with why. */
  notNeeded: z
    .array(z.strictObject({ topic: z.string().min(1).max(40), because: z.string().max(300).default('') }))
    .max(60)
    .default([]),
});
export type Offer = z.infer<typeof offerSchema>;
