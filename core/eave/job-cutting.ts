import { z } from 'zod';
import { plainSection } from '../lumber/dressed-sizes.ts';
import { decimalField, lengthField } from '../survey/fields.ts';

/** A board that is cut as the person says, whatever it costs. */
export const pinnedBoardSchema = z.strictObject({
  /** Price item, or `on-hand-ID` of a board that he has. */
  itemId: z.string().min(1).max(80),
  /** Exactly these pieces, by mark. */
  marks: z.array(z.string().min(1).max(60)).min(1).max(500),
});
export type PinnedBoardEntry = z.infer<typeof pinnedBoardSchema>;

/** Boards and offcuts that he has and would use on this job. */
export const boardOnHandSchema = z.strictObject({
  id: z.string().min(1).max(40),
  section: z.string().overwrite(plainSection).min(1).max(12),
  /** Blank: of whatever grade the job asks for. */
  grade: z.string().max(60).default(''),
  lengthIn: lengthField({ least: 1, most: 720 }),
  count: z.int().min(1).max(999).default(1),
  /** What one is worth to him, which is what the job pays for it; nothing for what would be thrown away. [$] */
  valueUsd: decimalField({ least: 0, most: 10000 }).default('0'),
});
export type BoardOnHand = z.infer<typeof boardOnHandSchema>;

/** What the person wants of this job's boards besides the least money. */
export const jobCuttingSchema = z.strictObject({
  pins: z.array(pinnedBoardSchema).max(500).default([]),
  /** Lengths that this job goes without: no room in the truck, or the yard is out of them. [ft] */
  forbiddenLengthsFt: z.array(z.number().min(1).max(60)).max(60).default([]),
  /** What a board fewer to carry and handle is worth to him. [$] */
  usdPerBoard: decimalField({ least: 0, most: 1000 }).default('0'),
  useOnHand: z.boolean().default(true),
  onHand: z.array(boardOnHandSchema).max(200).default([]),
  /** Suppliers that lumber is bought from; none named: each board wherever it is cheapest. */
  suppliers: z.array(z.string().max(80)).max(20).default([]),
});
export type JobCutting = z.infer<typeof jobCuttingSchema>;
