import { z } from 'zod';
import { billingCommands } from './billing-commands.ts';
import { id, namedBytes, namedText, none, paperSize, printedSheet, read, write } from './command.ts';
import { costCommands } from './cost-commands.ts';
import { costStaircaseSchema, cutPlanSchema, cuttingProblemSchema } from './cutting-schemas.ts';
import { keptSheetKinds, sheetKinds } from '../documents/sheet.ts';
import { designSchema } from '../eave/design-document.ts';
import { customerSchema, jobFileSchema, jobInfoSchema } from '../job/job-file.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { priceItemSchema, priceObservationSchema } from '../pricing/price-list.ts';
import { shopSettingsSchema } from '../pricing/shop-settings.ts';
import { learningCommands } from './learning-commands.ts';
import { priceHistoryCommands } from './price-history-commands.ts';
import { priceListCommands } from './price-list-commands.ts';
import { quoteChange, quoteOfJob, quoteWays, shownQuote } from './quote-schemas.ts';
import { stockCommands } from './stock-commands.ts';
import { surveySchema } from '../survey/survey-document.ts';

const revision = z.int().min(0);

/** Most problems of one search: what each choice of a job would cost, at each of several suppliers. */
const mostProblems = 100;
/** Longest search for one plan that a page may ask for. [ms] */
const longestSearchMs = 120_000;

/** Raw text of entries that do not parse yet, by dotted path, kept so that nothing typed is lost. */
const drafts = z.record(z.string().max(200), z.string().max(4000));

const logoPicture = z.strictObject({
  mediaType: z.enum(['image/png', 'image/jpeg']),
  widthPx: z.int(),
  heightPx: z.int(),
  base64: z.string(),
});

const jobSummary = z.strictObject({
  id,
  name: z.string(),
  customerName: z.string(),
  siteAddress: z.string(),
  archived: z.boolean(),
  changedOn: civilDate,
  lastEstimateUsd: z.string().nullable(),
  /** How many prices, rates or lengths that estimate lacks. */
  lastEstimateLacks: z.int(),
  /** The newest quote; null where there is none. */
  quote: quoteOfJob.nullable(),
});

const jobDocuments = z.strictObject({
  id,
  archived: z.boolean(),
  revision,
  /** Day whose prices are used; null follows today. */
  estimateOn: civilDate.nullable(),
  today: civilDate,
  info: jobInfoSchema,
  survey: surveySchema,
  design: designSchema,
  drafts,
});

const savedEstimate = z.strictObject({
  id,
  number: z.int(),
  asOf: civilDate,
  savedOn: civilDate,
  totalUsd: z.string(),
  lacks: z.int(),
  /** False where the frozen record was changed outside of the program: not to be relied on. */
  intact: z.boolean(),
});

/** Every command of the program: what goes in, what comes out, and whether it writes. JSON values alone. */
export const contract = {
  'app.info': read(
    none,
    z.strictObject({
      version: z.string(),
      shell: z.enum(['electron', 'loopback']),
      today: civilDate,
      /** True where the shell saves files through a dialog of its own; else the page downloads them. */
      savesFiles: z.boolean(),
    }),
  ),
  /** What the program, the machine and the shop file are, with the last lines of the log; nothing of a customer. */
  'app.report': read(none, namedText),
  /** The shop file as a file. Answers also while it is not open. */
  'shop.state': read(
    none,
    z.strictObject({
      folder: z.string(),
      /** Why it is not open; null while it is. */
      problem: z.string().nullable(),
      /** Why the day's backup was not made; null where it was. */
      backupProblem: z.string().nullable(),
      backups: z.array(
        z.strictObject({
          fileName: z.string(),
          kind: z.enum(['daily', 'by-hand', 'before-update', 'before-restore']),
          day: civilDate.nullable(),
          bytes: z.int(),
        }),
      ),
    }),
  ),
  'shop.backUp': write(none, z.strictObject({ fileName: z.string() })),
  /** Puts a backup in the shop file's place; what stood there is kept under the name that is answered. */
  'shop.restore': write(
    z.strictObject({ fileName: z.string().max(200) }),
    z.strictObject({ keptAs: z.string() }),
  ),
  'shop.move': write(
    z.strictObject({ folder: z.string().min(1).max(1000) }),
    z.strictObject({ folder: z.string() }),
  ),
  /** Every table as CSV, in one zip file. */
  'shop.exportTables': read(none, namedBytes),
  'settings.get': read(none, z.strictObject({ settings: shopSettingsSchema, revision })),
  'settings.save': write(
    z.strictObject({ settings: shopSettingsSchema, baseRevision: revision }),
    z.strictObject({ revision }),
  ),
  /** The picture at the head of every paper; null where there is none. */
  'settings.logo': read(none, z.strictObject({ logo: logoPicture.nullable() })),
  /** Takes a PNG or JPEG as the logo, once it is tried on a page; blank takes it away. */
  'settings.putLogo': write(z.strictObject({ base64: z.string().max(3_000_000) }), none),
  'customers.list': read(none, z.array(z.strictObject({ id, customer: customerSchema, jobs: z.int() }))),
  'jobs.list': read(
    z.strictObject({ search: z.string().max(200), archived: z.boolean() }),
    z.array(jobSummary),
  ),
  'jobs.create': write(z.strictObject({ name: z.string().min(1).max(120) }), z.strictObject({ id })),
  'jobs.openSample': write(none, z.strictObject({ id })),
  'jobs.import': write(z.strictObject({ text: z.string().max(20_000_000) }), z.strictObject({ id })),
  'jobs.export': read(z.strictObject({ id }), namedText),
  'jobs.get': read(z.strictObject({ id }), jobDocuments),
  'jobs.save': write(
    z.strictObject({
      id,
      baseRevision: revision,
      estimateOn: civilDate.nullable().optional(),
      info: jobInfoSchema.optional(),
      survey: surveySchema.optional(),
      design: designSchema.optional(),
      drafts: drafts.optional(),
    }),
    z.strictObject({ revision }),
  ),
  'jobs.copy': write(z.strictObject({ id, name: z.string().min(1).max(120) }), z.strictObject({ id })),
  'jobs.archive': write(z.strictObject({ id, archived: z.boolean() }), none),
  /** The price list: with a day, each item with the price that holds on it; without, each with every price it had. */
  'prices.list': read(
    z.strictObject({ on: z.union([z.literal('today'), civilDate]).optional() }),
    z.array(priceItemSchema),
  ),
  /** One item with every price that it had. */
  'prices.ofItem': read(z.strictObject({ itemId: id }), priceItemSchema),
  /** Adds or changes an item; its prices are left as they are. */
  'prices.saveItem': write(z.strictObject({ item: priceItemSchema.omit({ prices: true }) }), none),
  'prices.observe': write(z.strictObject({ itemId: id, observation: priceObservationSchema }), none),
  /** Takes one dated price back; of several that say the same, the latest. */
  'prices.removeObservation': write(
    z.strictObject({ itemId: id, observation: priceObservationSchema }),
    none,
  ),
  'prices.importCsv': write(
    z.strictObject({ text: z.string().max(50_000_000) }),
    z.strictObject({
      /** Under which it can be undone. */
      stepId: z.int(),
      items: z.int(),
      prices: z.int(),
      /** A day that was written with strokes and read month first, as it stood in the file; null where there was none. */
      monthFirst: z.string().nullable(),
    }),
  ),
  'prices.exportCsv': read(none, namedText),
  'estimates.save': write(z.strictObject({ jobId: id }), z.strictObject({ id, number: z.int() })),
  'estimates.list': read(z.strictObject({ jobId: id }), z.array(savedEstimate)),
  /**
   * Searches the boards that cost least for one or more stocks, and a proof that nothing costs less; tells how far it is
   * by events under `solveId`. Answers what there is once all are proven, the time is up or the search is cancelled.
   */
  'cutting.solve': read(
    z.strictObject({
      solveId: id,
      problems: z.array(cuttingProblemSchema).min(1).max(mostProblems),
      /** Longest search for each of them. [ms] */
      limitMs: z.int().min(1).max(longestSearchMs),
      /** Search once more where an earlier search ended without proof. */
      again: z.boolean().default(false),
    }),
    z.strictObject({
      plans: z.array(
        z.strictObject({
          key: z.string(),
          /** Null where the search was given up before there was a plan, or where there is none. */
          plan: cutPlanSchema.nullable(),
          ended: z.enum(['proven', 'limit', 'stopped', 'no-plan']),
        }),
      ),
    }),
  ),
  /**
   * Reckons the boards' cost of a job over one eave's overhang; tells of it as far as it is known by events under
   * `solveId`. Null where it was superseded; `enough` answers what there is. The plans are those of today's overhang.
   */
  'cutting.staircase': read(
    z
      .strictObject({
        solveId: id,
        job: jobFileSchema.omit({ format: true, version: true }),
        eaveId: id,
        /** As the design gives the overhang. [in] */
        fromIn: z.number().min(0.5).max(96),
        toIn: z.number().min(0.5).max(96),
        /** Longest search for cheaper boards and proofs, once every overhang is reckoned. [ms] */
        limitMs: z.int().min(1).max(longestSearchMs),
      })
      .refine(({ fromIn, toIn }) => toIn >= fromIn && toIn - fromIn <= 24, {
        message: 'A staircase reaches over 24 in. of overhang at most, from the least to the most.',
        path: ['toIn'],
      }),
    z.strictObject({
      staircase: costStaircaseSchema.nullable(),
      plans: z.array(z.strictObject({ key: z.string(), plan: cutPlanSchema })),
    }),
  ),
  /**
   * Ends a search. `enough`: the person takes what was found, on paper too. `superseded`: something else is asked now.
   */
  'cutting.cancel': read(
    z.strictObject({ solveId: id, why: z.enum(['enough', 'superseded']) }),
    z.strictObject({ wasRunning: z.boolean() }),
  ),
  /** Makes a quote of the job as it stands: the next number, or the next revision; a draft is made anew. */
  'quotes.make': write(
    z.strictObject({ jobId: id }),
    z.strictObject({ id, number: z.int(), revision: z.int() }),
  ),
  /** From here on the quote stays as it is. */
  'quotes.send': write(
    z.strictObject({
      id,
      /** The person knows that some of what is usually forgotten is not answered, and sends it as it is. */
      knowing: z.boolean().default(false),
    }),
    none,
  ),
  'quotes.decide': write(
    z.strictObject({
      id,
      decision: z.enum(['accepted', 'declined']),
      on: civilDate,
      note: z.string().max(2000),
      /** The way that was accepted; null: the one that was offered first. */
      wayId: z.string().max(40).nullable().default(null),
    }),
    none,
  ),
  /** What a quote offers besides, and what it does not answer. */
  'quotes.ways': read(z.strictObject({ id }), quoteWays),
  'quotes.list': read(z.strictObject({ jobId: id }), z.array(shownQuote)),
  /** A sheet of a quote as it was when the quote was made. */
  'quotes.paper': read(z.strictObject({ id, sheet: z.enum(keptSheetKinds), paperSize }), printedSheet),
  /** What changed since a quote was made: in another quote, or in the job as it stands, at today's prices. */
  'quotes.compare': read(z.strictObject({ id, withId: id.nullable().default(null) }), quoteChange),
  'paper.make': read(z.strictObject({ jobId: id, sheet: z.enum(sheetKinds), paperSize }), printedSheet),
  /** A sheet of a saved estimate, as it was when it was saved. */
  'paper.ofEstimate': read(
    z.strictObject({
      estimateId: id,
      sheet: z.enum(keptSheetKinds),
      paperSize,
    }),
    printedSheet,
  ),
  /** Saves bytes where the person says; only where `savesFiles` holds. */
  'files.save': write(
    z.strictObject({ fileName: z.string().min(1).max(200), base64: z.string().max(100_000_000) }),
    z.strictObject({ saved: z.boolean() }),
  ),
  ...priceListCommands,
  ...priceHistoryCommands,
  ...stockCommands,
  ...costCommands,
  ...billingCommands,
  ...learningCommands,
} as const;

export type CommandName = keyof typeof contract;
export type CommandInput<N extends CommandName> = z.input<(typeof contract)[N]['input']>;
export type CommandOutput<N extends CommandName> = z.output<(typeof contract)[N]['output']>;
