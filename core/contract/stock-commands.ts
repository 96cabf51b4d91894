import { z } from 'zod';
import { plainSection } from '../lumber/dressed-sizes.ts';
import { civilDate } from '../pricing/civil-date-field.ts';
import { decimalField, lengthField } from '../survey/fields.ts';
import { id, none, read, write } from './command.ts';

const jobName = z.strictObject({ id, name: z.string() });

const stockPiece = z.strictObject({
  id,
  sequence: z.int(),
  section: z.string(),
  grade: z.string(),
  lengthIn: z.number(),
  valueUsd: z.string(),
  fromJob: jobName.nullable(),
  forJob: jobName.nullable(),
  addedOn: civilDate,
  goneOn: civilDate.nullable(),
  note: z.string(),
});

const newPiece = z.strictObject({
  section: z.string().overwrite(plainSection).min(1).max(12),
  grade: z.string().max(60).default(''),
  lengthIn: lengthField({ least: 1, most: 720 }),
  /** What one is worth to the shop. [$] */
  valueUsd: decimalField({ least: 0, most: 10000 }).default('0'),
  note: z.string().max(300).default(''),
});

/** Boards and offcuts that the shop has. A piece is set aside for a job by saving a design that names it among its boards. */
export const stockCommands = {
  'stock.list': read(z.strictObject({ withGone: z.boolean().default(false) }), z.array(stockPiece)),
  'stock.add': write(
    newPiece.extend({ count: z.int().min(1).max(200).default(1) }),
    z.strictObject({ added: z.int() }),
  ),
  /** Corrects a piece on the rack. */
  'stock.change': write(z.strictObject({ id, piece: newPiece }), none),
  'stock.throwOut': write(z.strictObject({ id }), none),
  'stock.bringBack': write(z.strictObject({ id }), none),
  /** A job is cut: pieces set aside for it are used up, and what is left comes onto the rack. All or nothing, and once. */
  'stock.finishJob': write(
    z.strictObject({
      jobId: id,
      /** Numbers of pieces that were cut up. */
      used: z.array(z.int().min(1)).max(1000),
      offcuts: z.array(newPiece).max(1000),
    }),
    z.strictObject({ added: z.int() }),
  ),
  /** Takes that back: its offcuts leave the rack, what it used is set aside for it again. */
  'stock.takeBackJob': write(z.strictObject({ jobId: id }), none),
} as const;
