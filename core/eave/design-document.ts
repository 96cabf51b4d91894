import { z } from 'zod';
import { offerSchema } from '../offer/offer-document.ts';
import { decimalField, lengthField, pitchField } from '../survey/fields.ts';
import { sideSchema } from '../survey/survey-document.ts';
import { phases } from './phases.ts';
import { jobCuttingSchema } from './job-cutting.ts';
import { stockSchema } from './stock.ts';
import { decisionSchema, notchRuleSchema, structureSchema } from './structure.ts';

/** Ways to fasten an extender, in the order of their default cost. */
export const methodSchema = z.enum([
  'side',
  'filler',
  'outer-face',
  'block-hung',
  'full-length',
  'end-replacement',
]);
/**
 * `side`: face against a rafter. `filler`: on a joist's side with a filler as thick as the joist between. `outer-face`:
 * on the outside of an end rafter. `block-hung`: between two rafters, carried by a header block. `full-length`: a new
 * whole rafter beside the old one. `end-replacement`: in the place of a gable rafter that is cut back.
 */
export type Method = z.infer<typeof methodSchema>;

/** What an eave's end meets. `meets` names the rake, or the other eave at a corner. */
export const eaveEndSchema = z.strictObject({
  /** `inside-corner`: two eaves meet in a valley; `outside-corner`: their fascias meet in a mitre. */
  kind: z.enum(['free', 'rake', 'outside-corner', 'inside-corner']).default('free'),
  meets: z.string().max(40).default(''),
});
export type EaveEnd = z.infer<typeof eaveEndSchema>;

/** A tail of the person's own between two rafters, hung on header blocks at this station. */
export const addedTailSchema = z.strictObject({
  id: z.string().min(1).max(40),
  /** Centre. [in] */
  stationIn: lengthField({ least: 0, most: 12000 }),
});

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
    .array(
      z.strictObject({
        rafterId: z.string().min(1),
        side: z.enum(['left', 'right', 'none']),
        /** Absent where the method is left to the program. */
        method: methodSchema.optional(),
      }),
    )
    .default([]),
  /** Tails hung between rafters where the person wants them; the program proposes further ones. */
  addedTails: z.array(addedTailSchema).max(1000).default([]),
  layout: z
    .strictObject({
      /** Methods that the program may propose beside `side`. */
      allowFiller: z.boolean().default(true),
      allowBlockHung: z.boolean().default(true),
      allowOuterFace: z.boolean().default(false),
      allowFullLength: z.boolean().default(true),
      allowEndReplacement: z.boolean().default(false),
      /** Largest gap between neighbouring tails, centre to centre; null takes it from sheathing, fascia and soffit. [in] */
      largestGapIn: lengthField({ least: 4, most: 96 }).nullable().default(null),
      /** Whether panel joints have to land on tails: panels are cut back to them where need be. */
      panelJointsOnTails: z.boolean().default(true),
      /** Whether tails are set under the joints of whole panels, hung ones if need be, so that none is cut back. */
      wholePanels: z.boolean().default(false),
      /** Bays in which the program hangs no tail of its own, each named by the id of the rafter on its left. */
      baysWithoutTail: z.array(z.string().min(1)).max(5000).default([]),
    })
    .prefault({}),
  /** `parallel`: the back end is cut parallel to a plumb tail, so that pieces nest in a board. */
  backEnd: z.enum(['parallel', 'square']).default('parallel'),
  ends: z.strictObject({ left: eaveEndSchema.prefault({}), right: eaveEndSchema.prefault({}) }).prefault({}),
  /** `straight`: the fascia is straight in plan and each tail's overhang follows from the wall's bow; `follow`: every tail sticks out alike. */
  fasciaInPlan: z.enum(['straight', 'follow']).default('straight'),
  /** Limits of the tails' own overhang on a bowed wall; null: no limit. [in] */
  leastOverhangIn: lengthField({ least: 0, most: 96 }).nullable().default(null),
  mostOverhangIn: lengthField({ least: 0, most: 96 }).nullable().default(null),
  /**
   * What the stated overhang is measured from on a bowed wall: the straight reference line of the wall readings, or the
   * line through the wall's mean. The same on a straight wall.
   */
  overhangFrom: z.enum(['reference-line', 'wall-mean']).default('reference-line'),
  /** Depth left of the tail's cut face where its underside is cut level to gain head-room; null leaves it whole. [in] */
  tailFaceIn: lengthField({ least: 1.5, most: 24 }).nullable().default(null),
  /** Pitch of a kicked-up tail, flatter than the roof; null follows the roof. */
  kickUpPitchRisePer12: pitchField.nullable().default(null),
  /** How far a kicked-up tail's top edge stands above the old rafters' at the wall line, on packers. [in] */
  kickUpRaiseIn: lengthField({ least: 0, most: 24 }).default(0),
  /**
   * `as-found`: each tail follows its own rafter. `parallel`: straight, parallel to the plate's run. `level`: straight and
   * level, whatever the plate does. `best-fit`: straight, as close to the tails as can be. The first two straight ones
   * differ only where the plate was read.
   */
  fasciaLine: z.enum(['as-found', 'parallel', 'level', 'best-fit']).default('parallel'),
  fascia: z.strictObject({
    stock: stockSchema,
    /** How far the fascia hangs below the tail's lowest corner. [in] */
    dropIn: lengthField({ least: 0, most: 12 }).default(0),
    /** How far the fascia runs past the wall's ends. [in] */
    pastLeftIn: lengthField({ least: 0, most: 60 }).default(0),
    pastRightIn: lengthField({ least: 0, most: 60 }).default(0),
    /** Joints cut on a bevel over a tail (else butted). */
    bevelJoints: z.boolean().default(true),
    /** A 2x behind the finish board, nailed to the tails. */
    subFascia: z
      .strictObject({
        wanted: z.boolean().default(false),
        stock: stockSchema.prefault({ section: '2x6' }),
      })
      .prefault({}),
  }),
  soffit: z
    .strictObject({
      kind: z.enum(['level', 'sloped', 'open']).default('level'),
      thicknessIn: lengthField({ least: 0, most: 4 }).default(0.375),
      /** Id of the price item the soffit panels are cut from; blank means none chosen yet. */
      itemId: z.string().default(''),
      /** Ledger on the wall that carries a level soffit's inner edge. */
      ledger: z
        .strictObject({ wanted: z.boolean().default(true), stock: stockSchema.prefault({ section: '2x4' }) })
        .prefault({}),
      /** Nailers across a level soffit, one beside each tail, from the ledger to the fascia; of the ledger's lumber. */
      nailers: z.boolean().default(true),
      /** Id of the price item of a vent, and the net free area of one (or of one foot of strip). [sq in] */
      ventItemId: z.string().default(''),
      ventNetFreeSqIn: z.number().min(0).max(1000).default(0),
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

export const rakeDesignSchema = z.strictObject({
  rakeId: z.string().min(1).max(40),
  /** `ladder`: an inner rail on the gable rafter, rungs, and the barge rafter as the outer rail; for small overhangs. */
  kind: z.enum(['lookouts', 'ladder', 'none']).default('lookouts'),
  /** Level, from the gable wall's framing face to the barge rafter's outer face. [in] */
  overhangIn: lengthField({ least: 1, most: 48 }),
  /** Of the lookouts; of a ladder's inner rail and rungs. */
  lookout: stockSchema,
  /** `flat`: on the wide face, as notched lookouts lie. Rungs of a ladder stand on edge. */
  lookoutLaid: z.enum(['flat', 'on-edge']).default('flat'),
  /** Largest spacing of lookouts or rungs along the slope, on centre. [in] */
  spacingIn: lengthField({ least: 6, most: 48 }).default(24),
  /** `notched`: let into the gable rafter's top edge and run through; `butted`: nailed to its face on both sides. */
  atGableRafter: z.enum(['notched', 'butted']).default('notched'),
  /** Lookouts run long by this and are cut to the string in place (common practice, no source: 1 in.). [in] */
  trimAllowanceIn: lengthField({ least: 0, most: 12 }).default(1),
  barge: stockSchema,
  fascia: z
    .strictObject({ wanted: z.boolean().default(true), stock: stockSchema.prefault({ section: '1x8' }) })
    .prefault({}),
  sheathing: z
    .strictObject({
      kind: z.enum(['panels', 'planks', 'none']).default('panels'),
      /** Id of the price item that is bought for it; blank means none chosen yet. */
      itemId: z.string().default(''),
      coversFascia: z.boolean().default(true),
      /**
       * Level, from the gable wall's framing face inward to where the old deck stays on; null: the middle of the first
       * rafter inside. [in]
       */
      stripBackIn: lengthField({ least: 1, most: 240 }).nullable().default(null),
      /** Every second course of planks breaks here, so that no line of joints lies on one rafter; null: all alike. [in] */
      everySecondIn: lengthField({ least: 1, most: 240 }).nullable().default(null),
    })
    .prefault({}),
  /** The sheet that closes it from below, up the slope; blank leaves it open. */
  soffit: z.strictObject({ itemId: z.string().max(60).default('') }).prefault({}),
  dripEdge: z.boolean().default(true),
});
export type RakeDesign = z.infer<typeof rakeDesignSchema>;

/** What was built, as read off the tape on site and typed back in. */
export const asBuiltSchema = z.strictObject({
  eaveId: z.string().min(1).max(40),
  /** Id of the extender. */
  extenderId: z.string().min(1).max(40),
  /** Cut and in its place: nothing of it is still to be cut. */
  inPlace: z.boolean().default(true),
  /** Centre where it was set, null where it is as laid out. [in] */
  stationIn: lengthField({ least: 0, most: 12000 }).nullable().default(null),
  note: z.string().max(500).default(''),
});
export type AsBuilt = z.infer<typeof asBuiltSchema>;

export const extraCostSchema = z.strictObject({
  id: z.string().min(1).max(40),
  description: z.string().min(1).max(200),
  phase: z.enum(phases),
  kind: z.enum(['material', 'equipment', 'sub', 'permit', 'disposal', 'allowance']),
  quantity: decimalField({ least: 0, most: 1000000 }),
  unit: z.string().min(1).max(20),
  unitCostUsd: decimalField({ least: 0, most: 10000000 }),
  taxable: z.boolean().default(false),
  /** What an allowance covers; absent: material and labour. */
  covers: z.enum(['material', 'material-and-labour']).nullish(),
  /** Only in the alternates that take it in; the design itself goes without. */
  optional: z.boolean().nullish(),
});
export type ExtraCost = z.infer<typeof extraCostSchema>;

export const designSchema = z.strictObject({
  version: z.literal(1),
  eaves: z.array(eaveDesignSchema).max(40),
  rakes: z.array(rakeDesignSchema).max(40).default([]),
  asBuilt: z.array(asBuiltSchema).max(5000).default([]),
  /** Costs that no survey gives: staging, disposal, permit, a roofer. */
  extraCosts: z.array(extraCostSchema).max(500).default([]),
  exclusions: z.array(z.string().min(1).max(300)).max(100).default([]),
  scopeNote: z.string().max(5000).default(''),
  /** Which notch rule the person holds the notch over the plate to; null where he has not picked one. */
  notchRule: notchRuleSchema.nullable().default(null),
  /** What an engineer or official decided against a check; printed, and hides no figure. */
  decisions: z.array(decisionSchema).max(500).default([]),
  /** Pinned boards, boards on hand, lengths and suppliers to go without. */
  cutting: jobCuttingSchema.prefault({}),
  /** What is offered to the client: print level, alternates, unit prices, payments. */
  offer: offerSchema.prefault({}),
});
/** What is to be built. A versioned document. */
export type Design = z.infer<typeof designSchema>;
