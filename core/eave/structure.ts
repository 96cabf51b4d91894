import { z } from 'zod';
import { lengthField } from '../survey/fields.ts';
import { speciesSchema } from '../survey/site.ts';
import { isCivilDate } from '../units/civil-date.ts';

/** Grades of dimension lumber that design values are listed for. */
export const structuralGradeSchema = z.enum(['no-1', 'no-2', 'stud']);
export type StructuralGrade = z.infer<typeof structuralGradeSchema>;

/** Span ratings of sheathing panels: roof span over floor span. [in] */
export const panelRatingSchema = z.enum(['24/0', '24/16', '32/16', '40/20', '48/24']);
export type PanelRating = z.infer<typeof panelRatingSchema>;

/** What the checks need to know of an eave's lumber, panels, vents and ties. */
export const structureSchema = z.strictObject({
  /** Of the extenders, as stamped; null where not chosen. */
  species: speciesSchema.nullable().default(null),
  grade: structuralGradeSchema.default('no-2'),
  /** True where the lumber stays above 19 % moisture in service, as in an open eave of a damp place. */
  wetService: z.boolean().default(false),
  /** True for preservative-treated lumber. */
  treated: z.boolean().default(false),
  /** As stamped on the panel; null where not known. */
  panelRating: panelRatingSchema.nullable().default(null),
  /** Panel edge clips or blocking between the supports at the panels' long edges. */
  edgeClips: z.boolean().default(false),
  /** Net free area of the soffit vent in each running foot, as its maker states it. [sq in/ft] */
  soffitVentSqInPerFt: z.number().min(0).max(144).nullable().default(null),
  /** Allowable uplift of a metal tie at each extender, as its maker states it; 0 where there is none. [lb] */
  plateTieUpliftLb: z.number().min(0).max(10000).default(0),
  /** Weight of soffit, fascia and trim, over the level area of the overhang. [psf] Common practice, no source. */
  soffitWeightPsf: z.number().min(0).max(20).default(1.5),
  /** Clear distance from a nail to the wood's edge, square to the slope. [in] Common practice, no source. */
  nailEdgeDistanceIn: lengthField({ least: 0.25, most: 6 }).default(1),
});
export type Structure = z.infer<typeof structureSchema>;

/**
 * Rules for the notch over the plate: `quarter` no deeper than a quarter of the depth (end notch), `sixth` no deeper
 * than a sixth, `remaining` at least 3-1/2 in. left with an overhang of 24 in. or less (cantilevered portion).
 */
export const notchRuleSchema = z.enum(['quarter', 'sixth', 'remaining']);
export type NotchRule = z.infer<typeof notchRuleSchema>;

/** A decision that a person records against a check. */
export const decisionSchema = z.strictObject({
  /** `CHECK/EAVE`. */
  checkId: z.string().min(1).max(100),
  who: z.string().min(1).max(120),
  date: z.string().refine(isCivilDate, 'Write a day of the calendar, like 2026-04-30.'),
  note: z.string().max(2000).default(''),
  /** What the check said when it was decided, so that a figure that has moved since is told. */
  figure: z.string().max(300).default(''),
});
export type Decision = z.infer<typeof decisionSchema>;
