import { Decimal } from 'decimal.js';
import { z } from 'zod';
import { costKinds } from '../billing/change-order.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { hourlyCostUsd } from '../pricing/work-costs.ts';
import { decimalField } from '../survey/fields.ts';
import { type DecimalText, sumUsd, type Usd, usd } from '../units/money.ts';

/** Hours that one person worked on one phase on one day, as typed. */
export const timeEntrySchema = z.strictObject({
  person: z.string().trim().min(1, 'Enter who worked.').max(60),
  workedOn: civilDate,
  phase: z.string().min(1).max(60),
  /** [h] */
  hours: decimalField({ least: 0, most: 24 }),
  note: z.string().max(500).default(''),
});
export type TimeEntry = z.infer<typeof timeEntrySchema>;

/** A line of a receipt, an order or a bill. */
export const billLineSchema = z.strictObject({
  id: z.string().min(1).max(40),
  phase: z.string().min(1).max(60),
  kind: z.enum(costKinds),
  description: z.string().min(1, 'Say what it is.').max(300),
  quantity: decimalField({ least: -1_000_000, most: 1_000_000 }).default('1'),
  unit: z.string().max(20).default(''),
  /** For the whole line, tax not in it; below zero where it comes back. [$] */
  amountUsd: decimalField({ least: -10_000_000, most: 10_000_000 }),
  /** The line of the accepted estimate that it was bought for, and the price item; null for neither. */
  costLineId: z.string().max(120).nullable().default(null),
  itemId: z.string().max(60).nullable().default(null),
  /** The price of one is noted in the price list. */
  notesPrice: z.boolean().default(false),
});
export type BillLine = z.infer<typeof billLineSchema>;

/** Kinds of paper that money goes out by. */
export const billKinds = ['receipt', 'order', 'sub-bill', 'return'] as const;
export type BillKind = (typeof billKinds)[number];

/** A receipt, an order that was placed, a subcontractor's bill, or what a supplier took back. */
export const billSchema = z.strictObject({
  kind: z.enum(billKinds),
  supplier: z.string().trim().min(1, 'Enter who it is from.').max(80),
  number: z.string().max(60).default(''),
  datedOn: civilDate,
  lines: z.array(billLineSchema).min(1).max(300),
  /** On the whole paper; it goes to the lines by their amounts. [$] */
  taxUsd: decimalField({ least: -1_000_000, most: 1_000_000 }).default('0'),
  /** The order that it fills; and whether nothing more is to come of that. */
  orderId: z.string().max(60).nullable().default(null),
  closesOrder: z.boolean().default(false),
  /** Id of the photo or PDF; null where there is none. */
  attachmentId: z.string().max(60).nullable().default(null),
  note: z.string().max(1000).default(''),
});
export type Bill = z.infer<typeof billSchema>;

/** How an entry came about and whether it still counts. */
export type EntryHead = {
  readonly id: string;
  /** Order in which entries were made. */
  readonly sequence: number;
  readonly enteredOn: string;
  /** The entry that it corrects or takes back; null of a first one. */
  readonly replaces: string | null;
  /** True where it takes the other back and says nothing of its own. */
  readonly takesBack: boolean;
};

export type KeptTime = EntryHead &
  TimeEntry & {
    /** What an hour cost when it was entered, burden and all; and the whole. [$/h, $] */
    readonly rateUsd: DecimalText;
    readonly costUsd: Usd;
  };

export type KeptBill = EntryHead & { readonly bill: Bill };

/**
 * The entries that count: those that no later one corrects or takes back.
 * @param entries - all of a job, in any order.
 */
export function standingEntries<T extends EntryHead>(entries: readonly T[]): readonly T[] {
  const replaced = new Set(entries.map(({ replaces }) => replaces));
  return entries.filter(({ id, takesBack }) => !takesBack && !replaced.has(id));
}

/**
 * What an hour of a person costs, burden and all.
 * @param wageUsdPerHour - of the person; null takes the shop's. [$/h]
 * @returns $34 at 35 % -> 45.9. [$/h]
 */
export function personHourUsd(wageUsdPerHour: string | null, labour: ShopSettings['labour']): DecimalText {
  return hourlyCostUsd({ ...labour, wageUsdPerHour: wageUsdPerHour ?? labour.wageUsdPerHour });
}

/** Cost of hours, rounded to cents half up. [$] */
export function timeCostUsd(hours: string, rateUsd: string): Usd {
  return usd(new Decimal(hours).times(rateUsd));
}

/** What a paper comes to, its tax in it. [$] */
export function billTotalUsd({ lines, taxUsd }: Pick<Bill, 'lines' | 'taxUsd'>): Usd {
  return sumUsd([...lines.map(({ amountUsd }) => usd(amountUsd)), usd(taxUsd)]);
}
