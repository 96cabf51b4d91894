import { z } from 'zod';
import { sheetKinds } from '../documents/sheet.ts';
import { designSchema } from '../eave/design-document.ts';
import { customerSchema, jobInfoSchema } from '../job/job-file.ts';
import { civilDate, priceItemSchema, priceObservationSchema } from '../pricing/price-list.ts';
import { shopSettingsSchema } from '../pricing/shop-settings.ts';
import { surveySchema } from '../survey/survey-document.ts';

const id = z.string().min(1).max(60);
const revision = z.int().min(0);
const none = z.strictObject({});

/** Raw text of entries that do not parse yet, by dotted path, kept so that nothing typed is lost. */
const drafts = z.record(z.string().max(200), z.string().max(4000));

function read<I extends z.ZodType, O extends z.ZodType>(input: I, output: O) {
  return { input, output, effect: 'read' as const };
}

function write<I extends z.ZodType, O extends z.ZodType>(input: I, output: O) {
  return { input, output, effect: 'write' as const };
}

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

const namedText = z.strictObject({ fileName: z.string(), text: z.string() });

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
  'settings.get': read(none, z.strictObject({ settings: shopSettingsSchema, revision })),
  'settings.save': write(
    z.strictObject({ settings: shopSettingsSchema, baseRevision: revision }),
    z.strictObject({ revision }),
  ),
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
  'prices.list': read(none, z.array(priceItemSchema)),
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
      items: z.int(),
      prices: z.int(),
      /** A day that was written with strokes and read month first, as it stood in the file; null where there was none. */
      monthFirst: z.string().nullable(),
    }),
  ),
  'prices.exportCsv': read(none, namedText),
  'estimates.save': write(z.strictObject({ jobId: id }), z.strictObject({ id, number: z.int() })),
  'estimates.list': read(z.strictObject({ jobId: id }), z.array(savedEstimate)),
  'paper.make': read(
    z.strictObject({ jobId: id, sheet: z.enum(sheetKinds), paperSize: z.enum(['letter', 'a4']) }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string(), pages: z.int() }),
  ),
  /** Saves bytes where the person says; only where `savesFiles` holds. */
  'files.save': write(
    z.strictObject({ fileName: z.string().min(1).max(200), base64: z.string().max(100_000_000) }),
    z.strictObject({ saved: z.boolean() }),
  ),
} as const;

export type CommandName = keyof typeof contract;
export type CommandInput<N extends CommandName> = z.input<(typeof contract)[N]['input']>;
export type CommandOutput<N extends CommandName> = z.output<(typeof contract)[N]['output']>;
