import { z } from 'zod';
import { civilDate } from '../pricing/civil-date-field.ts';
import { encodings, importFields, importLayoutSchema, separators } from '../pricing/import/layout.ts';
import { mostChanges, priceChangeSchema } from '../pricing/price-changes.ts';
import { id, namedBytes, none, read, write } from './command.ts';

/** A change that was made, by the number under which it can be undone while the program runs. */
const step = z.strictObject({ stepId: z.int(), changed: z.int() });

const whole = z.int().min(0);
const importCounts = z.strictObject({
  rows: whole,
  added: whole,
  changed: whole,
  prices: whole,
  unchanged: whole,
  skipped: whole,
  faults: whole,
  found: z.strictObject({ code: whole, size: whole, description: whole }),
});

const layoutName = z.string().trim().min(1).max(80);

/** Editing the price list fast, and its ways in and out. */
export const priceListCommands = {
  /** Makes changes to items and prices, all or none. */
  'prices.change': write(
    z.strictObject({ changes: z.array(priceChangeSchema).min(1).max(mostChanges) }),
    step,
  ),
  /** Takes changes back, the last one first, all or none; what was taken back is a change of its own. */
  'prices.undo': write(z.strictObject({ stepIds: z.array(z.int()).min(1).max(10_000) }), step),
  /** The price list as a workbook. */
  'prices.exportXlsx': read(none, namedBytes),
  /**
   * Takes a supplier's file in hand, or reads the one in hand anew with another separator or encoding. How far it is, is
   * told by events under `importId`.
   */
  'prices.importOpen': read(
    z.strictObject({
      importId: id,
      /** Null for the file that is in hand under this id. */
      base64: z.string().max(100_000_000).nullable(),
      separator: z.enum(separators).nullable().default(null),
      encoding: z.enum(encodings).nullable().default(null),
      /** Line that names the columns; null leaves it to the program. */
      headerRow: whole.max(50).nullable().default(null),
    }),
    z.strictObject({
      separator: z.enum(separators),
      encoding: z.enum(encodings),
      rows: whole,
      /** The first lines of the file, as far as they are shown. */
      head: z.array(z.array(z.string())),
      /** True where its columns are those that the price list itself writes. */
      isOurs: z.boolean(),
      layout: importLayoutSchema,
      /** The remembered layout that was taken; null where it was guessed from the titles. */
      layoutName: z.string().nullable(),
    }),
  ),
  /** What a file would do to the list. */
  'prices.importPreview': read(
    z.strictObject({ importId: id, layout: importLayoutSchema }),
    z.strictObject({
      counts: importCounts,
      faults: z.array(z.strictObject({ row: z.int(), field: z.enum(importFields), detail: z.string() })),
      rows: z.array(
        z.strictObject({
          row: z.int(),
          does: z.enum(['adds', 'changes', 'prices', 'nothing']),
          foundBy: z.enum(['code', 'size', 'description']).nullable(),
          description: z.string(),
          supplier: z.string(),
          unit: z.string(),
          fromUsd: z.string().nullable(),
          toUsd: z.string().nullable(),
          day: civilDate.nullable(),
          changes: z.array(z.string()),
        }),
      ),
      /** Cells that would also read otherwise, as they stand; null where there is none. */
      twoWays: z.strictObject({ day: z.string().nullable(), number: z.string().nullable() }),
    }),
  ),
  /** Takes a file into the list, all or nothing, and remembers its layout under a name where one is given. */
  'prices.importRun': write(
    z.strictObject({ importId: id, layout: importLayoutSchema, rememberAs: layoutName.nullable() }),
    z.strictObject({ stepId: z.int(), added: whole, changed: whole, prices: whole }),
  ),
  /** Stops what is being read of a file, and lets go of it. */
  'prices.importStop': read(z.strictObject({ importId: id }), z.strictObject({ wasHeld: z.boolean() })),
  'prices.layouts': read(
    none,
    z.array(z.strictObject({ name: z.string(), usedOn: civilDate, layout: importLayoutSchema })),
  ),
  'prices.forgetLayout': write(z.strictObject({ name: layoutName }), none),
} as const;
