import { z } from 'zod';

/** Species groups that the design values are listed by. */
export const speciesSchema = z.enum(['douglas-fir-larch', 'southern-pine', 'hem-fir', 'spruce-pine-fir']);
export type Species = z.infer<typeof speciesSchema>;

/** Roofing by its weight; the weights stand in core/checks/data/dead-loads.ts. */
export const roofingSchema = z.enum([
  'asphalt-shingle',
  'laminated-shingle',
  'wood-shingle',
  'slate-3/16',
  'slate-1/4',
  'clay-tile',
  'cement-tile',
]);
export type Roofing = z.infer<typeof roofingSchema>;

/** What the place and the roof bring to the checks. Loads are of level area unless said otherwise. */
export const siteSchema = z.strictObject({
  /** Ground snow of the place, from the building department. [psf] */
  groundSnowPsf: z.number().min(0).max(400).nullable().default(null),
  /** `nominal`: maps up to ASCE 7-16; `strength`: risk-targeted maps of ASCE 7-22, taken at 0.7 here. */
  groundSnowBasis: z.enum(['nominal', 'strength']).default('nominal'),
  /** Ce: 0.9 fully exposed, 1.0 partly, 1.2 sheltered. [-] */
  exposureFactor: z.number().min(0.7).max(1.3).default(1),
  /** Ct: 1.0 warm roof, 1.1 cold ventilated attic, 1.2 unheated. [-] */
  thermalFactor: z.number().min(0.8).max(1.4).default(1.1),
  /** Is: 1.0 for a dwelling. [-] */
  importanceFactor: z.number().min(0.8).max(1.2).default(1),
  /** `doubled`: twice the flat roof snow on the overhang, where ice can build up at a warm roof's edge. */
  icedEave: z.enum(['doubled', 'not-doubled']).default('doubled'),
  roofing: roofingSchema.default('asphalt-shingle'),
  roofingLayers: z.int().min(1).max(4).default(1),
  /** Net upward wind pressure on the overhang, square to the roof, as a positive number. [psf] */
  windUpliftPsf: z.number().min(0).max(300).nullable().default(null),
  /** `strength`: as ASCE 7 gives it, taken at 0.6 here; `allowable`: the 0.6 is already in it. */
  windUpliftBasis: z.enum(['strength', 'allowable']).default('strength'),
  /** True where the place asks for an ice barrier at the eaves. */
  iceBarrierRequired: z.boolean().nullable().default(null),
  /** Level area of the vented attic. [sq ft] */
  atticAreaSqFt: z.number().min(1).max(100000).nullable().default(null),
  /** Net free area asked for, as a share of the attic's area. */
  ventRatio: z.enum(['1/150', '1/300']).default('1/150'),
  /** Share of the net free area that is to be at the eaves; the rest is near the ridge. [-] */
  eaveVentShare: z.number().min(0).max(1).default(0.5),
});
export type Site = z.infer<typeof siteSchema>;
