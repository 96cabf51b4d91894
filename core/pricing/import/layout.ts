import { z } from 'zod';

/** What a column of a supplier's file can be. */
export const importFields = [
  'code',
  'description',
  'kind',
  'section',
  'species',
  'grade',
  'length',
  'unit',
  'price',
  'day',
  'source',
  'validUntil',
  'supplier',
  'taxable',
  'retired',
  'minimumPack',
  'notes',
  'nail',
  'packageLb',
  'packageCount',
  'width',
  'lengthOfOne',
  'thickness',
] as const;
export type ImportField = (typeof importFields)[number];

/** Fields that can be given once for every row. */
export const constantFields = [
  'kind',
  'unit',
  'supplier',
  'day',
  'source',
  'validUntil',
  'taxable',
  'species',
  'grade',
] as const satisfies readonly ImportField[];
export type ConstantField = (typeof constantFields)[number];

export const separators = [',', ';', '\t', '|'] as const;
export type Separator = (typeof separators)[number];
export const encodings = ['utf-8', 'windows-1252', 'utf-16le', 'utf-16be'] as const;
export type TextEncoding = (typeof encodings)[number];

/** Most columns of a file. */
export const mostColumns = 200;

/** How a supplier lays out his price list. */
export const importLayoutSchema = z.strictObject({
  /** Line that names the columns, as a spreadsheet counts; 0 where none does. What stands above it is passed over. */
  headerRow: z.int().min(0).max(50).default(1),
  /** Title and meaning of each column, in the order of the file. */
  columns: z
    .array(z.strictObject({ title: z.string().max(200), field: z.enum(importFields).nullable() }))
    .max(mostColumns),
  /** What stands for a column that the file lacks, or for a blank in one. */
  constants: z.partialRecord(z.enum(constantFields), z.string().max(120)).default({}),
  decimalSign: z.enum(['point', 'comma']).default('point'),
  /** Order in a day that does not begin with a year of four digits. */
  dayOrder: z.enum(['month-first', 'day-first', 'year-first']).default('month-first'),
  /** What a bare number counts in the column of stock lengths. */
  lengthUnit: z.enum(['ft', 'in']).default('ft'),
  /** Rows without a price are headings, and left out. */
  skipsUnpriced: z.boolean().default(true),
  /** An item that is on the list takes the file's wording; else it keeps its own. */
  takesWording: z.boolean().default(false),
  separator: z.enum(separators).nullable().default(null),
  encoding: z.enum(encodings).nullable().default(null),
});
export type ImportLayout = z.infer<typeof importLayoutSchema>;
export type DayOrder = ImportLayout['dayOrder'];
