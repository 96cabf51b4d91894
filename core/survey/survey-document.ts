import { z } from 'zod';
import { lengthField, pitchField } from './fields.ts';
import { siteSchema, speciesSchema } from './site.ts';

/** Which reference a station reading is taken to on each rafter, seen from station 0. */
export const readingToSchema = z.enum(['centre', 'near-face', 'far-face']);

/**
 * How the stations were read: `running` from the wall's left end, `bays-clear` as the clear distance from the last
 * rafter's far face to this one's near face, `bays-centres` from centre to centre. The first bay is from the wall's end.
 */
export const readingModeSchema = z.enum(['running', 'bays-clear', 'bays-centres']);

/** Left is toward station 0 as seen from outside, facing the wall. */
export const sideSchema = z.enum(['left', 'right']);
export type Side = z.infer<typeof sideSchema>;

export const rafterSurveySchema = z.strictObject({
  id: z.string().min(1).max(40),
  /** Reading by the eave's mode. [in] */
  readingIn: lengthField({ least: 0, most: 12000 }),
  /** Blank where the eave's own value holds. [in] */
  thicknessIn: lengthField({ least: 0.5, most: 12 }).nullable().default(null),
  depthIn: lengthField({ least: 1, most: 24 }).nullable().default(null),
  pitchRisePer12: pitchField.nullable().default(null),
  heightAbovePlateIn: lengthField({ least: 0, most: 60 }).nullable().default(null),
  /** Which faces of the rafter a ceiling joist lies against at the plate. */
  joist: z.enum(['none', 'left', 'right', 'both']).default('none'),
  joistThicknessIn: lengthField({ least: 0.5, most: 12 }).nullable().default(null),
  /** Clear length along the slope, from the wall's framing face inward, before a purlin, brace or ridge. [in] */
  clearBackspanIn: lengthField({ least: 1, most: 600 }).nullable().default(null),
  /** What is left of an old tail past the wall's framing face, level; 0 where the roof stops at the wall. [in] */
  oldTailIn: lengthField({ least: 0, most: 60 }).default(0),
  /** `rotten` where nothing can be nailed to it. */
  condition: z.enum(['sound', 'doubtful', 'rotten']).default('sound'),
  note: z.string().max(2000).default(''),
});
export type RafterSurvey = z.infer<typeof rafterSurveySchema>;

export const obstructionSchema = z.strictObject({
  id: z.string().min(1).max(40),
  label: z.string().max(80).default(''),
  /** Left and right end along the wall line, from station 0. [in] */
  fromIn: lengthField({ least: 0, most: 12000 }),
  toIn: lengthField({ least: 0, most: 12000 }),
});

/** How far the wall's framing face stands out of a straight reference line at a station. */
export const wallReadingSchema = z.strictObject({
  id: z.string().min(1).max(40),
  stationIn: lengthField({ least: 0, most: 12000 }),
  /** Outward is positive, inward negative. [in] */
  outIn: lengthField({ least: -24, most: 24 }),
});
export type WallReading = z.infer<typeof wallReadingSchema>;

/** How high the plate's top stands at a station against a level line, as read off a laser or a water level. */
export const plateReadingSchema = z.strictObject({
  id: z.string().min(1).max(40),
  stationIn: lengthField({ least: 0, most: 12000 }),
  /** Above the level line is positive, below negative. [in] */
  upIn: lengthField({ least: -240, most: 240 }),
});
export type PlateReading = z.infer<typeof plateReadingSchema>;

export const eaveSurveySchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(80),
  /** Wall line, corner to corner. [in] */
  lengthIn: lengthField({ least: 12, most: 12000 }),
  pitchRisePer12: pitchField,
  /** Plumb height from the plate's outer top edge to the rafter's top edge (HAP). [in] */
  heightAbovePlateIn: lengthField({ least: 0, most: 60 }),
  plateWidthIn: lengthField({ least: 1.5, most: 16 }).default(3.5),
  rafterThicknessIn: lengthField({ least: 0.5, most: 12 }).default(1.5),
  rafterDepthIn: lengthField({ least: 1, most: 24 }).default(5.5),
  joistThicknessIn: lengthField({ least: 0.5, most: 12 }).default(1.5),
  /** Of the ceiling joists; null takes them as deep as the rafters. [in] */
  joistDepthIn: lengthField({ least: 1, most: 24 }).nullable().default(null),
  readingMode: readingModeSchema.default('running'),
  readingTo: readingToSchema.default('centre'),
  rafters: z.array(rafterSurveySchema).max(5000),
  obstructions: z.array(obstructionSchema).max(1000).default([]),
  clearBackspanIn: lengthField({ least: 1, most: 600 }).nullable().default(null),
  /** Plumb distance from the plate's top down to the lowest window or door head trim. [in] */
  windowHeadBelowPlateIn: lengthField({ least: 0, most: 240 }).nullable().default(null),
  deckKind: z.enum(['planks', 'panels']).default('planks'),
  deckThicknessIn: lengthField({ least: 0.25, most: 4 }).default(0.75),
  /** True where the old deck over the backspan stays on, so that extenders must slide in under it. */
  deckStaysOn: z.boolean().default(true),
  /** True where old blocks stand between the rafters at the plate. */
  hasOldBlocks: z.boolean().default(false),
  /** Bays that differ from `hasOldBlocks`, each named by the id of the rafter on its left. */
  otherOldBlocks: z.array(z.string().min(1)).max(5000).default([]),
  /** Readings of the wall's bow from a string; none means a straight wall. */
  wallReadings: z.array(wallReadingSchema).max(500).default([]),
  /** Readings of the plate's height from a level line; none means a level plate. */
  plateReadings: z.array(plateReadingSchema).max(500).default([]),
  /** Level span of the old rafter, from the plate to the ridge or to the purlin it rests on. [in] */
  rafterSpanIn: lengthField({ least: 12, most: 1200 }).nullable().default(null),
  /** Species group of the old rafters and plates, where it is known. */
  oldSpecies: speciesSchema.nullable().default(null),
  /** Level, from the wall's framing face to the lot line it faces. [in] */
  lotLineIn: lengthField({ least: 0, most: 12000 }).nullable().default(null),
  /** How far a gutter stands out from the fascia; 0 where there is none. [in] */
  gutterWidthIn: lengthField({ least: 0, most: 12 }).default(0),
  /** Least height of the power drop above the new roof edge. [in] */
  serviceDropAboveRoofIn: lengthField({ least: 0, most: 600 }).nullable().default(null),
  /** True where the drop comes to a mast through the overhang: no more than 6 ft of wire over no more than 4 ft of it. */
  serviceDropToMast: z.boolean().default(false),
  /** From the wall's framing face to the inside face of the wall. [in] Common practice, no source: stud and plaster. */
  wallThicknessIn: lengthField({ least: 1, most: 36 }).default(4.5),
  /** Depths of painted boards that the work disturbs along the eave; 0 where there is none. [in] */
  paintedFasciaDepthIn: lengthField({ least: 0, most: 36 }).nullable().default(null),
  paintedFriezeDepthIn: lengthField({ least: 0, most: 36 }).nullable().default(null),
});
export type EaveSurvey = z.infer<typeof eaveSurveySchema>;

/** A gable edge that rises from one end of an eave to the ridge. */
export const rakeSurveySchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(80),
  /** The eave it rises from, and at which of its ends. */
  eaveId: z.string().min(1).max(40),
  end: sideSchema,
  /** Level, from the eave wall's framing face to the ridge's centre line. [in] */
  runIn: lengthField({ least: 12, most: 1200 }),
  ridgeThicknessIn: lengthField({ least: 0, most: 12 }).default(1.5),
  /** Blank where the eave's own value holds. */
  pitchRisePer12: pitchField.nullable().default(null),
  endRafterThicknessIn: lengthField({ least: 0.5, most: 12 }).nullable().default(null),
  endRafterDepthIn: lengthField({ least: 1, most: 24 }).nullable().default(null),
  /** Level, from the gable wall's framing face to the near face of the first rafter inside it; blank: from the eave's stations. [in] */
  firstInsideIn: lengthField({ least: 1, most: 120 }).nullable().default(null),
  /** How far old deck boards run out past the gable wall's framing face. [in] */
  deckPastIn: lengthField({ least: 0, most: 48 }).default(0),
  /** True where studs of the gable wall stand under its rafter, so that it spans nothing. */
  studsUnder: z.boolean().default(true),
  /** Sheathing and siding that stay on the gable wall behind a ladder. [in] */
  finishIn: lengthField({ least: 0, most: 6 }).default(0),
  note: z.string().max(2000).default(''),
});
export type RakeSurvey = z.infer<typeof rakeSurveySchema>;

export const surveySchema = z.strictObject({
  version: z.literal(1),
  yearBuilt: z.int().min(1600).max(2200).nullable().default(null),
  storeys: z.int().min(1).max(4).default(1),
  access: z.enum(['easy', 'ordinary', 'hard']).default('ordinary'),
  notes: z.string().max(20000).default(''),
  /** What the place brings: snow, wind, roofing, attic. */
  site: siteSchema.prefault({}),
  eaves: z.array(eaveSurveySchema).max(40),
  rakes: z.array(rakeSurveySchema).max(40).default([]),
});
/** What was measured on the old house. A versioned document. */
export type Survey = z.infer<typeof surveySchema>;
