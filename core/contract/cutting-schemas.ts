import { z } from 'zod';
import { stockSchema } from '../eave/stock.ts';
import { usd } from '../units/money.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';

/** No board and no piece is longer: 1000 ft. [1/16 in] */
const longestSixteenths = 192_000;
const mostPieces = 5000;
const mostBoards = 5000;
const mostLengths = 200;
/** Parts of a cent stay whole numbers up to here. */
const mostParts = Number.MAX_SAFE_INTEGER;

const sixteenths = z
  .int()
  .min(0)
  .max(longestSixteenths)
  .transform((whole) => nearestSixteenth(whole / 16));
const someSixteenths = z
  .int()
  .min(1)
  .max(longestSixteenths)
  .transform((whole) => nearestSixteenth(whole / 16));
const cents = z.int().min(0).max(100_000_000);
const usdText = z
  .string()
  .regex(/^\d{1,12}\.\d{2}$/)
  .transform((text) => usd(text));
const mark = z.string().min(1).max(60);
const itemId = z.string().min(1).max(80);

const cutItem = z.strictObject({
  mark,
  lengthSixteenths: someSixteenths,
  slantSixteenths: sixteenths.exactOptional(),
});

const pinnedBoard = z.strictObject({ itemId, marks: z.array(mark).max(500).readonly() });

/** One problem of core/cutting, as a page may send it. */
export const cuttingProblemSchema = z.strictObject({
  stock: stockSchema,
  items: z
    .array(cutItem)
    .max(mostPieces)
    .refine(
      (items) => new Set(items.map((item) => item.mark)).size === items.length,
      'Each piece needs a mark of its own.',
    )
    .readonly(),
  lengths: z
    .array(
      z.strictObject({
        itemId,
        lengthSixteenths: someSixteenths,
        priceCents: cents,
        available: z.int().min(0).max(100_000).exactOptional(),
        source: z.enum(['bought', 'on-hand']).exactOptional(),
      }),
    )
    .max(mostLengths)
    .readonly(),
  kerfSixteenths: sixteenths,
  endTrimSixteenths: sixteenths,
  depthSixteenths: sixteenths.exactOptional(),
  preferences: z
    .strictObject({
      pinned: z.array(pinnedBoard).max(500).readonly().exactOptional(),
      centsPerBoard: cents.exactOptional(),
      useOnHand: z.boolean().exactOptional(),
    })
    .exactOptional(),
});

const worth = { lengthSixteenths: sixteenths, parts: z.int().min(0).max(mostParts) };

/** A plan of core/cutting, as the host answers it. */
export const cutPlanSchema = z.strictObject({
  group: z.string(),
  stock: stockSchema,
  boards: z
    .array(
      z.strictObject({
        number: z.int().min(1),
        itemId,
        lengthSixteenths: sixteenths,
        priceCents: cents,
        onHand: z.boolean(),
        items: z.array(cutItem).readonly(),
        offcutSixteenths: sixteenths,
      }),
    )
    .max(mostBoards)
    .readonly(),
  costUsd: usdText,
  boundUsd: usdText,
  gap: z.number().min(0),
  status: z.enum(['optimal', 'best-found']),
  proof: z.enum(['exact-bound', 'solver-tree', 'none']),
  certificate: z
    .strictObject({
      worths: z.array(z.strictObject({ ...worth, slantSixteenths: sixteenths })).readonly(),
      supplies: z.array(z.strictObject({ ...worth, itemId, priceCents: cents })).readonly(),
      cuts: z.array(z.array(z.int().min(0).max(mostParts)).readonly()).readonly(),
    })
    .nullable(),
  tiesProven: z.boolean(),
  centsPerBoard: cents,
  unmetPins: z
    .array(z.strictObject({ pin: pinnedBoard, why: z.enum(['length-gone', 'piece-gone', 'does-not-fit']) }))
    .readonly(),
  yield: z.number(),
  oneLengthUsd: usdText.nullable(),
  oneLengthFt: z.number().nullable(),
});

const inches = z.number().min(0).max(1000);
const placeCost = {
  boardsUsd: usdText.nullable(),
  boundUsd: usdText.nullable(),
  proof: z.enum(['exact-bound', 'solver-tree', 'none']),
  hasNoBoard: z.boolean(),
};

/** A staircase of core/job, as the host answers it. Lengths in inches. */
export const costStaircaseSchema = z.strictObject({
  steps: z
    .array(z.strictObject({ ...placeCost, fromOverhangIn: inches, toOverhangIn: inches }))
    .max(2000)
    .readonly(),
  todayIn: inches,
  cheaper: z.array(z.strictObject({ overhangIn: inches, savesUsd: usdText })).readonly(),
  asFarAsIn: inches,
});
