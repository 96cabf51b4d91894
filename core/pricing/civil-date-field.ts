import { z } from 'zod';
import { isCivilDate } from '../units/civil-date.ts';

/** A calendar date without zone, `2026-04-30`. */
export const civilDate = z.string().refine(isCivilDate, 'Write a day of the calendar, like 2026-04-30.');
