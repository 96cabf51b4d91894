import { z } from 'zod';
import { plainSection } from '../lumber/dressed-sizes.ts';
import { decimalField, lengthField } from '../survey/fields.ts';
import { sideSchema } from '../survey/survey-document.ts';
import { decisionSchema, notchRuleSchema, structureSchema } from './structure.ts';

/** The phases a job's lines are grouped by, in the order of the work. */
export const phases = [
  'Survey and permit',
  'Protect and stage',
  'Strip-back',
  'Framing',
  'Fascia and trim',
  'Sheathing and edge',
  'Soffit',
  'Roofing tie-in',
  'Paint',
  'Clean-up',
] as const;
export type Phase = (typeof phases)[number];

/** Lumber by trade section and grade, as the price list names it. */
export const stockSchema = z.strictObject({
  section: z.string().overwrite(plainSection).min(1).max(12),
  grade: z.string().max(60).default(''),
});
export type Stock = z.infer<typeof stockSchema>;

export const eaveDesignSchema = z.strictObject({
  eaveId: z.string().min(1).max(40),
  /** The number the person gives; the two fields below say how it is measured. [in] */
  overhangIn: lengthField({ least: 1, most: 96 }),
  overhangMeasured: z.enum(['level', 'along-slope']).default('level'),
  overhangTo: z.enum(['framing', 'fascia-face']).default('framing'),
  tailCut: z.enum(['plumb', 'square']).default('plumb'),
  extender: stockSchema,
  /** Backspan as a multiple of the overhang along the slope (common practice, no source: 2). [-] */
  backspanRatio: z.number().min(0.5).max(10).default(2),
  /** Tails run long by this and are cut to the string in place (common practice, no source: 1 in.). [in] */
  trimAllowanceIn: lengthField({ least: 0, most: 12 }).default(1),
  preferredSide: sideSchema.default('right'),
  /** Rafters where the person fixed the side, or wants no extender. */
  pins: z
    .array(z.strictObject({ rafterId: z.string().min(1), side: z.enum(['left', 'right', 'none']) }))
    .default([]),
  /** `as-found`: each tail follows its own rafter. `parallel`: level with the plate. `best-fit`: straight, may fall. */
  fasciaLine: z.enum(['as-found', 'parallel', 'best-fit']).default('parallel'),
  fascia: z.strictObject({
    stock: stockSchema,
    /** How far the fascia hangs below the tail's lowest corner. [in] */
    dropIn: lengthField({ least: 0, most: 12 }).default(0),
    /** How far the fascia runs past the wall's ends. [in] */
    pastLeftIn: lengthField({ least: 0, most: 60 }).default(0),
    pastRightIn: lengthField({ least: 0, most: 60 }).default(0),
    /** Joints cut on a bevel over a tail (else butted). */
    bevelJoints: z.boolean().default(true),
  }),
  soffit: z
    .strictObject({
      kind: z.enum(['level', 'sloped', 'open']).default('level'),
      thicknessIn: lengthField({ least: 0, most: 4 }).default(0.375),
    })
    .prefault({}),
  blocks: z.strictObject({
    wanted: z.boolean().default(true),
    stock: stockSchema,
    faces: z.enum(['plumb', 'square']).default('plumb'),
    /** Bays left open, each named by the id of the rafter on its left. */
    openBays: z.array(z.string()).default([]),
  }),
  sheathing: z
    .strictObject({
      kind: z.enum(['panels', 'planks', 'none']).default('panels'),
      /** Id of the price item that is bought for it; blank means none chosen yet. */
      itemId: z.string().default(''),
      coversFascia: z.boolean().default(true),
      /** How far the new sheathing runs in over the wall line, along the slope, to meet the old deck. [in] */
      tieBackIn: lengthField({ least: 0, most: 120 }).default(0),
    })
    .prefault({}),
  dripEdge: z.boolean().default(true),
  /** What the checks need to know of the lumber, panels and vents. */
  structure: structureSchema.prefault({}),
});
export type EaveDesign = z.infer<typeof eaveDesignSchema>;

export const extraCostSchema = z.strictObject({
  id: z.string().min(1).max(40),
  description: z.string().min(1).max(200),
  phase: z.enum(phases),
  kind: z.enum(['material', 'equipment', 'sub', 'permit', 'disposal', 'allowance']),
  quantity: decimalField({ least: 0, most: 1000000 }),
  unit: z.string().min(1).max(20),
  unitCostUsd: decimalField({ least: 0, most: 10000000 }),
  taxable: z.boolean().default(false),
});
export type ExtraCost = z.infer<typeof extraCostSchema>;

export const designSchema = z.strictObject({
  version: z.literal(1),
  eaves: z.array(eaveDesignSchema).max(40),
  /** Costs that no survey gives: staging, disposal, permit, a roofer. */
  extraCosts: z.array(extraCostSchema).max(500).default([]),
  exclusions: z.array(z.string().min(1).max(300)).max(100).default([]),
  scopeNote: z.string().max(5000).default(''),
  /** Which notch rule the person holds the notch over the plate to; null where he has not picked one. */
  notchRule: notchRuleSchema.nullable().default(null),
  /** What an engineer or official decided against a check; printed, and hides no figure. */
  decisions: z.array(decisionSchema).max(500).default([]),
});
/** What is to be built. A versioned document. */
export type Design = z.infer<typeof designSchema>;
