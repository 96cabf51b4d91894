import { z } from 'zod';
import { ages } from '../billing/ledger.ts';
import {
  closeOutWordsSchema,
  finishedFiguresSchema,
  materialGroups,
} from '../jobcost/learning/finished-job.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { id, namedBytes, none, paperSize, printedSheet, read, write } from './command.ts';

const usd = z.string();
const decimal = z.string();
const phase = z.string().min(1).max(60);

const outcome = z.strictObject({
  contractUsd: usd,
  plannedMarginUsd: usd,
  plannedMarginPercent: decimal.nullable(),
  madeMarginUsd: usd,
  madeMarginPercent: decimal.nullable(),
  ownerHours: decimal,
  ownerHourUsd: usd.nullable(),
  ownerHourAfterOverheadUsd: usd.nullable(),
});

const shopJob = z.strictObject({
  jobId: id,
  name: z.string(),
  customerName: z.string(),
  finishedOn: civilDate.nullable(),
  /** Before tax: accepted price, approved changes, both. [$] */
  quotedUsd: usd,
  changesUsd: usd,
  contractUsd: usd,
  billedUsd: usd,
  /** With tax. [$] */
  paidUsd: usd,
  owedUsd: usd,
  budgetUsd: usd,
  costUsd: usd,
  forecastUsd: usd,
  plannedMarginPercent: decimal.nullable(),
  expectedMarginPercent: decimal.nullable(),
  earnedUsd: usd,
  /** Above 0 billed ahead of the work, below 0 behind it. [$] */
  overBilledUsd: usd,
});

const jobRate = z.strictObject({
  jobId: id,
  jobName: z.string(),
  finishedOn: civilDate,
  phase: z.string(),
  rate: decimal,
  units: decimal,
  hours: decimal,
  score: decimal,
  standsOut: z.boolean(),
  leftOut: z.boolean(),
});

const held = z.strictObject({
  jobId: id,
  jobName: z.string(),
  finishedOn: civilDate,
  budgetUsd: usd,
  actualUsd: usd,
  budgetHours: decimal,
  actualHours: decimal,
  overUsdPercent: decimal.nullable(),
  overHoursPercent: decimal.nullable(),
});

/** Finished jobs, what they teach, and the money of the whole shop. */
export const learningCommands = {
  /** A finished job of the same invented shop, with its quote, hours, receipts, bills and close-out. */
  'jobs.openFinishedSample': write(none, z.strictObject({ id })),
  /** Where the money of every job with a contract stands, and what waits. */
  'money.shop': read(
    none,
    z.strictObject({
      today: civilDate,
      jobs: z.array(shopJob),
      /** Of the jobs that are not finished. [$] */
      totals: shopJob.pick({
        contractUsd: true,
        changesUsd: true,
        billedUsd: true,
        paidUsd: true,
        owedUsd: true,
        budgetUsd: true,
        costUsd: true,
        forecastUsd: true,
        plannedMarginPercent: true,
        expectedMarginPercent: true,
        earnedUsd: true,
        overBilledUsd: true,
      }),
      quotes: z.array(
        z.strictObject({
          jobId: id,
          jobName: z.string(),
          number: z.int(),
          revision: z.int(),
          totalUsd: usd,
          sentOn: civilDate,
          validUntil: civilDate,
          /** Until it lapses; below 0 it has. [d] */
          daysLeft: z.int(),
        }),
      ),
      /** Invoices with something open, the longest due first. */
      invoices: z.array(
        z.strictObject({
          jobId: id,
          jobName: z.string(),
          number: z.int(),
          dueOn: civilDate,
          openUsd: usd,
          daysPast: z.int(),
          age: z.enum(ages),
        }),
      ),
      aged: z.record(z.enum(ages), usd),
    }),
  ),
  /** Invoices, credits, payments, hours and papers of a year as CSV, in one zip file. */
  'money.exportYear': read(z.strictObject({ year: z.int().min(1900).max(9999) }), namedBytes),
  /** What a job came to so far, and what was kept when it was finished. */
  'money.closeOut': read(
    z.strictObject({ jobId: id }),
    z.strictObject({
      today: civilDate,
      /** Null while no quote is accepted: then there is nothing to finish. */
      figures: finishedFiguresSchema.nullable(),
      outcome: outcome.nullable(),
      finished: z
        .strictObject({
          finishedOn: civilDate,
          words: closeOutWordsSchema,
          outcome,
          /** Hours, papers or bills came in since. */
          changedSince: z.boolean(),
        })
        .nullable(),
    }),
  ),
  /** Marks a job finished and keeps what it came to; done once more, what came in since is taken in. */
  'money.finish': write(
    z.strictObject({ jobId: id, finishedOn: civilDate, words: closeOutWordsSchema }),
    none,
  ),
  'money.reopen': write(z.strictObject({ jobId: id }), none),
  'money.jobReport': read(z.strictObject({ jobId: id, paperSize }), printedSheet),
  /** What finished jobs teach: hours by task, allowances, and how good the estimates were. */
  'learning.get': read(
    none,
    z.strictObject({
      finished: z.array(z.strictObject({ jobId: id, name: z.string(), finishedOn: civilDate, outcome })),
      /** What is asked before each quote, by the job that taught it. */
      reminders: z.array(z.strictObject({ id, text: z.string(), from: z.string() })),
      rates: z.array(
        z.strictObject({
          task: z.string(),
          used: decimal,
          jobs: z.array(jobRate),
          counted: z.int(),
          mean: decimal.nullable(),
          median: decimal.nullable(),
          trustPercent: decimal,
          offered: decimal.nullable(),
        }),
      ),
      materials: z.array(
        z.strictObject({
          group: z.enum(materialGroups),
          jobs: z.array(
            z.strictObject({
              jobId: id,
              jobName: z.string(),
              overQuantityPercent: decimal.nullable(),
              overPricePercent: decimal.nullable(),
            }),
          ),
          overQuantityPercent: decimal.nullable(),
          usedPercent: decimal.nullable(),
          offeredPercent: decimal.nullable(),
        }),
      ),
      accuracy: z.array(
        z.strictObject({
          phase: z.string().nullable(),
          jobs: z.array(held),
          meanUsdPercent: decimal.nullable(),
          spreadUsdPercent: decimal.nullable(),
          meanHoursPercent: decimal.nullable(),
          spreadHoursPercent: decimal.nullable(),
        }),
      ),
    }),
  ),
  /** Takes hours for one unit of a task into the settings, as the shop's own. */
  'learning.takeRate': write(
    z.strictObject({ task: z.string().min(1).max(60), hoursPerUnit: z.number().min(0).max(1000) }),
    none,
  ),
  /** Takes an allowance for a material into the settings. */
  'learning.takeAllowance': write(
    z.strictObject({ group: z.enum(['nails', 'plank']), percent: z.number().min(0).max(100) }),
    none,
  ),
  /** Adds a question of the person's own to what is asked before each quote. */
  'learning.remind': write(
    z.strictObject({ text: z.string().trim().min(1, 'Enter what is to be asked.').max(1000) }),
    z.strictObject({ id }),
  ),
  'learning.forgetReminder': write(z.strictObject({ id }), none),
  /** Leaves the hours of a phase of a finished job out of what is learned, or takes them in again. */
  'learning.leaveOut': write(z.strictObject({ jobId: id, phase, leftOut: z.boolean() }), none),
} as const;
