import { z } from 'zod';
import { plainSection } from '../lumber/dressed-sizes.ts';
import { decimalField, lengthField } from '../survey/fields.ts';
import { civilDate } from './civil-date-field.ts';

/** Units an item is sold by. */
export const unitsOfSale = ['each', 'LF', 'BF', 'MBF', 'lb', 'box', 'sheet', 'SF', 'roll'] as const;
export type UnitOfSale = (typeof unitsOfSale)[number];

export const priceObservationSchema = z.strictObject({
  /** Dollars for one unit of sale. [$/unit] */
  priceUsd: decimalField({ least: 0, most: 1000000 }),
  observedOn: civilDate,
  source: z.enum(['list', 'quote', 'receipt']).default('list'),
  validUntil: civilDate.nullable().default(null),
});
export type PriceObservation = z.infer<typeof priceObservationSchema>;

export const priceItemSchema = z.strictObject({
  id: z.string().min(1).max(60),
  category: z.enum(['lumber', 'nails', 'sheet', 'plank', 'edge', 'other']),
  description: z.string().min(1).max(120),
  unit: z.enum(unitsOfSale),
  supplier: z.string().max(80).default(''),
  taxable: z.boolean().default(true),
  retired: z.boolean().default(false),
  /** Lumber and planks: trade section, grade and stock length. */
  section: z.string().overwrite(plainSection).max(12).default(''),
  grade: z.string().max(60).default(''),
  lengthFt: z.number().min(1).max(60).nullable().default(null),
  /** Nails: a key of core/takeoff/nails.ts, finish, and how they are packed (pounds or count a package). */
  nail: z.string().max(40).default(''),
  packageLb: z.number().min(0.1).max(1000).nullable().default(null),
  packageCount: z.int().min(1).max(1000000).nullable().default(null),
  /** Sheets and rolls: size of one; edge pieces: length. [in] */
  widthIn: lengthField({ least: 0.5, most: 240 }).nullable().default(null),
  lengthIn: lengthField({ least: 1, most: 12000 }).nullable().default(null),
  thicknessIn: lengthField({ least: 0.01, most: 6 }).nullable().default(null),
  /** Of lumber, where the grade alone does not say it. */
  species: z.string().max(60).default(''),
  /** Sold in packs of so many units: what is bought is rounded up to whole packs. [units] */
  minimumPack: z.int().min(1).max(100000).default(1),
  notes: z.string().max(1000).default(''),
  prices: z.array(priceObservationSchema).max(10000).default([]),
});
export type PriceItem = z.infer<typeof priceItemSchema>;

export const priceListSchema = z.array(priceItemSchema).max(20000);
export type PriceList = readonly PriceItem[];
