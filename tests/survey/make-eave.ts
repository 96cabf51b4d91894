import type { z } from 'zod';
import { eaveSurveySchema, type EaveSurvey } from '../../core/survey/survey-document.ts';

type Entry = z.input<typeof eaveSurveySchema>;

/** An invented eave, 6/12, HAP 5 in., 20 ft, rafters r1, r2 ... at the given running readings to centre. */
export function makeEave(readings: readonly number[], rest: Partial<Entry> = {}): EaveSurvey {
  return eaveSurveySchema.parse({
    id: 'north',
    name: 'North eave',
    lengthIn: 240,
    pitchRisePer12: 6,
    heightAbovePlateIn: 5,
    rafters: readings.map((readingIn, index) => ({ id: `r${index + 1}`, readingIn })),
    ...rest,
  } satisfies Entry);
}
