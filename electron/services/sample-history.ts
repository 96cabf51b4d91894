import { z } from 'zod';
import type { CommandName } from '../../core/contract/contract.ts';
import { jobInfoSchema } from '../../core/job/job-file.ts';
import { civilDate } from '../../core/pricing/civil-date-field.ts';

/** What happens in the sample's history, as the program's own commands. */
const stepCommands = [
  'quotes.make',
  'quotes.send',
  'quotes.decide',
  'billing.saveChange',
  'billing.moveChange',
  'billing.issue',
  'billing.pay',
  'costs.addTime',
  'costs.addBill',
  'costs.noteProgress',
  'money.finish',
] as const satisfies readonly CommandName[];
export type StepCommand = (typeof stepCommands)[number];

const jobSchema = z.strictObject({
  /** Survey, design and the job's own words, as in a job file; prices and settings are the sample's. */
  asOf: civilDate,
  job: jobInfoSchema,
  survey: z.unknown(),
  design: z.unknown(),
  steps: z.array(
    z.strictObject({
      on: civilDate,
      command: z.enum(stepCommands),
      /** As the command takes it; `$job` stands for the job's id, `$quote` for what an earlier step named so, `$final.total` for what a bill asks. */
      input: z.record(z.string(), z.unknown()),
      as: z.string().optional(),
    }),
  ),
});

/** The jobs that the invented shop has behind it, with all that happened on them. */
export const sampleHistorySchema = z.strictObject({
  format: z.literal('eavewright-sample-history'),
  people: z.array(z.strictObject({ name: z.string(), wageUsdPerHour: z.string().nullable() })),
  jobs: z.array(jobSchema).min(1),
});
export type SampleHistory = z.infer<typeof sampleHistorySchema>;

/** Puts ids in the place of names that begin with `$`, wherever they stand. */
export function withIds(value: unknown, ids: ReadonlyMap<string, string>): unknown {
  if (typeof value === 'string' && value.startsWith('$')) {
    const id = ids.get(value.slice(1));
    if (id === undefined) throw new Error(`the sample history names ${value} before it is made`);
    return id;
  }
  if (Array.isArray(value)) return value.map((one) => withIds(one, ids));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withIds(one, ids)]));
}
