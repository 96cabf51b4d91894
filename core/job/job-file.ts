import { z } from 'zod';
import { designSchema } from '../eave/design-document.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { priceListSchema } from '../pricing/price-list.ts';
import { shopSettingsSchema } from '../pricing/shop-settings.ts';
import { surveySchema } from '../survey/survey-document.ts';

export const customerSchema = z.strictObject({
  name: z.string().max(120).default(''),
  address: z.string().max(300).default(''),
  phone: z.string().max(60).default(''),
  email: z.string().max(120).default(''),
});
export type Customer = z.infer<typeof customerSchema>;

export const jobInfoSchema = z.strictObject({
  name: z.string().min(1).max(120),
  siteAddress: z.string().max(300).default(''),
  notes: z.string().max(20000).default(''),
  customer: customerSchema.prefault({}),
});
export type JobInfo = z.infer<typeof jobInfoSchema>;

/** A whole job in one file: everything that the computation needs. Documented in fixtures/job-file.md. */
export const jobFileSchema = z.strictObject({
  format: z.literal('eavewright-job'),
  version: z.literal(1),
  /** The day whose prices are used. */
  asOf: civilDate,
  job: jobInfoSchema,
  survey: surveySchema,
  design: designSchema,
  settings: shopSettingsSchema.prefault({}),
  priceList: priceListSchema,
});
export type JobFile = z.infer<typeof jobFileSchema>;

/** What the computation takes: a job file without its envelope. */
export type JobInput = {
  readonly asOf: string;
  readonly job: JobInfo;
  readonly survey: JobFile['survey'];
  readonly design: JobFile['design'];
  readonly settings: JobFile['settings'];
  readonly priceList: JobFile['priceList'];
};
