import { z } from 'zod';
import { decimalField } from '../../survey/fields.ts';

const figure = decimalField({ least: -100_000_000, most: 100_000_000 });

/** Why a phase came out otherwise than it was reckoned. */
export const varianceReasons = [
  'measured-wrong',
  'forgot',
  'hidden',
  'price',
  'weather',
  'slow',
  'client-change',
] as const;
export type VarianceReason = (typeof varianceReasons)[number];

/** How each reason is said. */
export const varianceReasonWords: Readonly<Record<VarianceReason, string>> = {
  'measured-wrong': 'Measured wrong',
  forgot: 'Forgot something',
  hidden: 'Hidden damage',
  price: 'Prices moved',
  weather: 'Weather',
  slow: 'Went slowly',
  'client-change': 'Client changed it',
};

/** Kinds of material that are held against what was reckoned. */
export const materialGroups = ['lumber', 'nails', 'sheet', 'plank', 'edge', 'vents'] as const;
export type MaterialGroup = (typeof materialGroups)[number];

/** What a job came to on the day it was finished, phase by phase: nothing that is learned from it changes later. */
export const finishedFiguresSchema = z.strictObject({
  /** Before tax to the client. [$] */
  contractUsd: figure,
  changesUsd: figure,
  billedUsd: figure,
  paidUsd: figure,
  /** Direct cost as reckoned, approved changes in it; contingency and overhead of the accepted price. [$] */
  budgetUsd: figure,
  contingencyUsd: figure,
  overheadUsd: figure,
  actualUsd: figure,
  /** Ordered and not come. [$] */
  committedUsd: figure,
  phases: z.array(
    z.strictObject({
      phase: z.string(),
      budgetUsd: figure,
      actualUsd: figure,
      budgetHours: figure,
      actualHours: figure,
    }),
  ),
  /** The labour tasks of the accepted estimate. */
  tasks: z.array(
    z.strictObject({
      task: z.string(),
      /** The shop's phase that its hours are kept by. */
      phase: z.string(),
      /** Rate that the estimate used; hours that it came to, condition factors in them. [h/unit, h] */
      hoursPerUnit: figure,
      hours: figure,
    }),
  ),
  materials: z.array(
    z.strictObject({
      group: z.enum(materialGroups),
      /** Allowance that stands in what was reckoned; null where the shop sets none for it. [%] */
      allowedPercent: figure.nullable().default(null),
      /** Lines of which something was bought: as reckoned; what was bought, at the reckoned price; what was paid. [$] */
      reckonedUsd: figure,
      boughtUsd: figure,
      paidUsd: figure,
    }),
  ),
  people: z.array(z.strictObject({ person: z.string(), hours: figure, costUsd: figure })),
});
export type FinishedFigures = z.infer<typeof finishedFiguresSchema>;

/** What the person says at the end of a job. */
export const closeOutWordsSchema = z.strictObject({
  /** One for each phase that he gives a reason for. */
  reasons: z.record(z.string().max(60), z.enum(varianceReasons)).default({}),
  surprise: z.string().max(1000).default(''),
  /** The surprise is asked before every later quote. */
  remind: z.boolean().default(true),
  willChange: z.string().max(1000).default(''),
  /** Whose hours the owner's are; null where he did not work on it. */
  owner: z.string().max(60).nullable().default(null),
});
export type CloseOutWords = z.infer<typeof closeOutWordsSchema>;

/** What is kept of a finished job. */
export const closeOutSchema = z.strictObject({ words: closeOutWordsSchema, figures: finishedFiguresSchema });
export type CloseOut = z.infer<typeof closeOutSchema>;

/** A finished job as others learn from it. */
export type FinishedJob = {
  readonly jobId: string;
  readonly name: string;
  readonly finishedOn: string;
  readonly closeOut: CloseOut;
};
