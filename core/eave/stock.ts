import { z } from 'zod';
import { plainSection } from '../lumber/dressed-sizes.ts';

/** Lumber by trade section and grade, as the price list names it. */
export const stockSchema = z.strictObject({
  section: z.string().overwrite(plainSection).min(1).max(12),
  grade: z.string().max(60).default(''),
});
export type Stock = z.infer<typeof stockSchema>;
