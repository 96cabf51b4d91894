import { z } from 'zod';
import { decimalField } from '../survey/fields.ts';

/** The kinds of cost that a job's money is kept by. */
export const costKinds = ['labour', 'material', 'equipment', 'sub', 'other'] as const;
export type CostKind = (typeof costKinds)[number];

export const changeOrderLineSchema = z.strictObject({
  id: z.string().min(1).max(40),
  /** The shop's phase that it is kept under. */
  phase: z.string().min(1).max(60),
  kind: z.enum(costKinds),
  description: z.string().min(1).max(300),
  quantity: decimalField({ least: -1_000_000, most: 1_000_000 }),
  unit: z.string().min(1).max(20),
  /** What the client pays for one, before tax; below zero where work falls away. [$/unit] */
  unitPriceUsd: decimalField({ least: -10_000_000, most: 10_000_000 }),
  /** What one costs the shop; adds to the budget. [$/unit] */
  unitCostUsd: decimalField({ least: -10_000_000, most: 10_000_000 }).default('0'),
  /** Hours in one, where it is labour. [h/unit] */
  unitHours: decimalField({ least: -10_000, most: 10_000 }).default('0'),
  taxable: z.boolean().default(false),
});
export type ChangeOrderLine = z.infer<typeof changeOrderLineSchema>;

/** What changes on a job after its quote was accepted, agreed in writing before the work. */
export const changeOrderSchema = z.strictObject({
  reason: z.enum(['owner', 'hidden', 'code', 'price', 'other']),
  description: z.string().max(2000).default(''),
  /** Days that it adds to the job, or takes off. [d] */
  days: z.int().min(-1000).max(1000).default(0),
  /** Id of the attachment that shows it; null where there is none. */
  photo: z.string().max(200).nullable().default(null),
  /** Its lines are a difference of designs: once approved, the next such difference begins after it. */
  fromDesign: z.boolean().default(false),
  lines: z.array(changeOrderLineSchema).min(1).max(200),
});
export type ChangeOrder = z.infer<typeof changeOrderSchema>;

/** Where a change order stands. */
export const changeOrderStates = ['draft', 'sent', 'approved', 'declined'] as const;
export type ChangeOrderState = (typeof changeOrderStates)[number];
