import { z } from 'zod';
import { phases } from '../eave/phases.ts';
import { stateRuleSchema, stateRulesToVerify } from '../offer/state-rules.ts';
import { decimalField, lengthField } from '../survey/fields.ts';

/** What stands behind a production rate: a placeholder of ours, or the shop's own number. */
export const rateMarkSchema = z.enum(['placeholder', 'own']);
export type RateMark = z.infer<typeof rateMarkSchema>;

export const labourRateSchema = z.strictObject({
  /** A key of core/takeoff/labour-tasks.ts. */
  task: z.string().min(1).max(60),
  /** Labour hours for one unit of the task. [h/unit] */
  hoursPerUnit: z.number().min(0).max(1000),
  mark: rateMarkSchema.default('own'),
});
export type LabourRate = z.infer<typeof labourRateSchema>;

/** Nails of the extender-to-rafter joint: rows staggered by half the spacing. */
export const sisterPatternSchema = z.strictObject({
  nail: z.string().min(1).max(40).default('16d common'),
  rows: z.int().min(1).max(4).default(2),
  spacingIn: lengthField({ least: 1, most: 48 }).default(16),
  endDistanceIn: lengthField({ least: 0.5, most: 24 }).default(2.5),
});
export type SisterPattern = z.infer<typeof sisterPatternSchema>;

export const fasteningSchema = z.strictObject({
  sister: sisterPatternSchema.prefault({}),
  /** Through an extender and its filler into the rafter: six diameters past a 1-1/2 in. filler (common practice, no source). */
  throughFillerNail: z.string().min(1).default('30d common'),
  plateNail: z.string().min(1).default('16d common'),
  /** Toenails into the plate where one face can be reached, and where both can. [nails/piece] */
  plateToenailsOneFace: z.int().min(0).max(20).default(3),
  plateToenailsBothFaces: z.int().min(0).max(20).default(4),
  blockNail: z.string().min(1).default('8d common'),
  blockNailsPerEnd: z.int().min(0).max(20).default(3),
  fasciaNail: z.string().min(1).default('8d common galvanized'),
  /** Per tail: fascia up to 5-1/2 in. deep, and deeper (common practice, no source). */
  fasciaNailsShallow: z.int().min(1).max(20).default(2),
  fasciaNailsDeep: z.int().min(1).max(20).default(3),
  sheathingNail: z.string().min(1).default('8d common'),
  sheathingSpacingIn: lengthField({ least: 1, most: 24 }).default(6),
  /** Through each end of a header block, and through it into the extender: 2x4, and deeper (common practice, no source). */
  headerNail: z.string().min(1).default('16d common'),
  headerNailsShallow: z.int().min(1).max(20).default(2),
  headerNailsDeep: z.int().min(1).max(20).default(3),
  /** Each layer of a filler, before the extender goes on (common practice, no source). */
  fillerNail: z.string().min(1).default('16d common'),
  fillerNailsPerLayer: z.int().min(0).max(20).default(4),
  /** A whole rafter to the ridge, toenailed: 3 of 10d common or thicker (IRC Table R602.3(1), partly from memory). */
  ridgeNail: z.string().min(1).default('16d common'),
  ridgeNailsPerRafter: z.int().min(0).max(20).default(3),
  /** Sub-fascia to each tail: up to 5-1/2 in. deep, and deeper (common practice, no source). */
  subFasciaNail: z.string().min(1).default('16d common galvanized'),
  subFasciaNailsShallow: z.int().min(1).max(20).default(2),
  subFasciaNailsDeep: z.int().min(1).max(20).default(3),
  /** Fascia to the sub-fascia: groups of nails so far apart (common practice, no source). */
  fasciaOnSubFasciaSpacingIn: lengthField({ least: 1, most: 48 }).default(16),
  /** Lookouts: into the gable rafter, into the first inside rafter, and the barge rafter into each. */
  lookoutNail: z.string().min(1).default('16d common'),
  lookoutNailsPerJoint: z.int().min(1).max(20).default(3),
  soffitNail: z.string().min(1).default('6d common galvanized'),
  soffitSpacingIn: lengthField({ least: 1, most: 24 }).default(6),
  /** Ledger of a level soffit: nails at each stud; nailers: at each end (common practice, no source, each). */
  soffitFramingNail: z.string().min(1).default('16d common'),
  ledgerSpacingIn: lengthField({ least: 4, most: 48 }).default(16),
  ledgerNailsPerStud: z.int().min(1).max(10).default(2),
  nailerNailsPerEnd: z.int().min(1).max(10).default(2),
  plankNailsPerBearing: z.int().min(1).max(10).default(2),
  /** Added to every count for loss (common practice, no source: 5 to 10 %). [%] */
  lossPercent: z.number().min(0).max(100).default(10),
});
export type Fastening = z.infer<typeof fasteningSchema>;

/** How the layout weighs methods, and how wide a gap it lets stand (common practice, no source, each). */
export const layoutRulesSchema = z.strictObject({
  /** Cost of a method against that of a plain side-nailed extender on the preferred side, which is 0. [-] */
  weights: z
    .strictObject({
      otherSide: z.number().min(0).max(1000).default(1),
      filler: z.number().min(0).max(1000).default(4),
      outerFace: z.number().min(0).max(1000).default(6),
      blockHung: z.number().min(0).max(1000).default(10),
      fullLength: z.number().min(0).max(1000).default(14),
      endReplacement: z.number().min(0).max(1000).default(18),
    })
    .prefault({}),
  /** Largest gap that a plank deck, a 1x fascia, a 2x fascia or sub-fascia, and a soffit may span, centre to centre. [in] */
  plankGapIn: lengthField({ least: 4, most: 96 }).default(24),
  thinFasciaGapIn: lengthField({ least: 4, most: 96 }).default(24),
  thickFasciaGapIn: lengthField({ least: 4, most: 96 }).default(32),
  soffitGapIn: lengthField({ least: 4, most: 96 }).default(24),
  /** What a joint of the fascia counts for against the cost of boards (our own choice). [$] */
  fasciaJointUsd: decimalField({ least: 0, most: 1000 }).default('5'),
});
export type LayoutRules = z.infer<typeof layoutRulesSchema>;

/** What it costs to have lumber brought by a supplier, however much it is. */
export const supplierSchema = z.strictObject({
  name: z.string().min(1).max(80),
  deliveryUsd: decimalField({ least: 0, most: 10000 }).default('0'),
});
export type Supplier = z.infer<typeof supplierSchema>;

/** How the shop keeps what its jobs cost. */
export const jobCostSettingsSchema = z.strictObject({
  /** The phases that hours and receipts are kept by, each with the estimate's phases that it takes; none: one to one. */
  phases: z
    .array(
      z.strictObject({ name: z.string().min(1).max(60), takes: z.array(z.enum(phases)).max(20).default([]) }),
    )
    .max(40)
    .default([]),
  /** Who works here, and the wage of each; a blank wage is the shop's. [$/h] */
  people: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(60),
        wageUsdPerHour: decimalField({ least: 0, most: 1000 }).nullable().default(null),
      }),
    )
    .max(40)
    .default([]),
  /** Percent of a bill that the client holds back until the end; and days until a bill is due. [%, d] */
  retainagePercent: decimalField({ least: 0, most: 50 }).default('0'),
  dueDays: z.int().min(0).max(365).default(14),
});
export type JobCostSettings = z.infer<typeof jobCostSettingsSchema>;

export const shopSettingsSchema = z.strictObject({
  version: z.literal(1).default(1),
  shopName: z.string().max(120).default(''),
  licenceNumber: z.string().max(60).default(''),
  address: z.string().max(300).default(''),
  phone: z.string().max(60).default(''),
  email: z.string().max(120).default(''),
  /** What stands at the head of every paper beside name and address. */
  letterhead: z
    .strictObject({
      /** SHA-256 of the logo, kept with the shop file; blank: none. */
      logoSha256: z
        .string()
        .regex(/^([0-9a-f]{64})?$/, 'Not the name of a picture.')
        .default(''),
      insurance: z.string().max(200).default(''),
    })
    .prefault({}),
  nextQuoteNumber: z.int().min(1).default(1),
  nextInvoiceNumber: z.int().min(1).default(1),
  paperSize: z.enum(['letter', 'a4']).default('letter'),
  money: z
    .strictObject({
      overheadPercent: decimalField({ least: 0, most: 500 }).default('15'),
      contingencyPercent: decimalField({ least: 0, most: 100 }).default('8'),
      profitMethod: z.enum(['markup', 'margin']).default('markup'),
      profitPercent: decimalField({ least: 0, most: 1000 }).default('10'),
      /** `contractor-pays`: tax is a cost on materials; `client-pays`: added on taxable lines' price; `none`. */
      taxRule: z.enum(['contractor-pays', 'client-pays', 'none']).default('contractor-pays'),
      taxPercent: decimalField({ least: 0, most: 50 }).default('0'),
      /** The total is rounded up to a whole multiple of this; the difference is a line of its own. 0 = no rounding. */
      roundToUsd: z.enum(['0', '1', '5', '10', '50']).default('0'),
      quoteValidDays: z.int().min(1).max(365).default(15),
      priceStaleDays: z.int().min(1).max(3650).default(45),
    })
    .prefault({}),
  labour: z
    .strictObject({
      wageUsdPerHour: decimalField({ least: 0, most: 1000 }).default('0'),
      burdenPercent: decimalField({ least: 0, most: 300 }).default('35'),
      crewSize: z.int().min(1).max(20).default(2),
      hoursPerDay: z.number().min(1).max(24).default(8),
      /** Factors on hours (common practice, no source). [-] */
      perStoreyAboveOne: z.number().min(1).max(5).default(1.25),
      steepAbovePitch: z.number().min(0).max(24).default(8),
      steepFactor: z.number().min(1).max(5).default(1.15),
      easyAccessFactor: z.number().min(0.1).max(5).default(0.95),
      hardAccessFactor: z.number().min(0.1).max(5).default(1.2),
      rates: z.array(labourRateSchema).default([]),
    })
    .prefault({}),
  cutting: z
    .strictObject({
      kerfIn: lengthField({ least: 0, most: 1 }).default(0.125),
      /** Cut off each end of every board to square it. [in] */
      endTrimIn: lengthField({ least: 0, most: 24 }).default(0.5),
      /** Lengths he cannot carry or the yard lacks. [ft] */
      excludedLengthsFt: z.array(z.number()).default([]),
      /** Offcuts as long as this are kept and told (common practice, no source). [in] */
      keepOffcutIn: lengthField({ least: 0, most: 240 }).default(24),
      /** Tails share a seat template where none of its lines is off by more (common practice, no source: 1/16 in.). [in] */
      templateToleranceIn: lengthField({ least: 0, most: 0.5 }).default(0.0625),
      /** Waste that a rule of thumb adds to the feet needed, to compare with (common practice, no source: 10 %). [%] */
      thumbWastePercent: z.number().min(0).max(100).default(10),
    })
    .prefault({}),
  /** Suppliers whose delivery is charged; of the others it is free. */
  suppliers: z.array(supplierSchema).max(50).default([]),
  fastening: fasteningSchema.prefault({}),
  layout: layoutRulesSchema.prefault({}),
  jobCost: jobCostSettingsSchema.prefault({}),
  /** What states ask of deposits and of contracts signed at home; each to be verified. */
  stateRules: z
    .array(stateRuleSchema)
    .max(80)
    .default([...stateRulesToVerify]),
  /** What finished jobs taught to ask before a quote goes out: the shop's own list. */
  reminders: z
    .array(
      z.strictObject({
        id: z.string().min(1).max(40),
        text: z.string().min(1).max(1000),
        /** The job that taught it. */
        from: z.string().max(120).default(''),
      }),
    )
    .max(200)
    .default([]),
  /** Added to plank quantities for waste (common practice, no source). [%] */
  plankWastePercent: z.number().min(0).max(100).default(10),
  plankCoverIn: lengthField({ least: 1, most: 24 }).default(5.5),
});
/** The shop's own settings: name, money rules, labour, saw and nails. */
export type ShopSettings = z.infer<typeof shopSettingsSchema>;
