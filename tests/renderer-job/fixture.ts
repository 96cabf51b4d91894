import { designSchema } from '../../core/eave/design-document.ts';
import { surveySchema } from '../../core/survey/survey-document.ts';
import { jobInfoSchema } from '../../core/job/job-file.ts';
import { addEave } from '../../renderer/job/editor/eave-list.ts';
import type { Documents } from '../../renderer/job/editor/documents.ts';
import { enter } from '../../renderer/job/editor/enter.ts';
import { enterNextReading } from '../../renderer/job/editor/rafter-list.ts';

/** A job with nothing measured yet. */
export function emptyDocuments(): Documents {
  return {
    estimateOn: null,
    info: jobInfoSchema.parse({ name: 'Test job' }),
    survey: surveySchema.parse({ version: 1, eaves: [] }),
    design: designSchema.parse({ version: 1, eaves: [] }),
    drafts: {},
  };
}

/** One eave of 20 ft, 6/12, with rafters at the given readings. */
export function oneEave(readings: readonly string[]): Documents {
  const entries: readonly (readonly [string, string])[] = [
    ['survey.eaves.0.lengthIn', "20'"],
    ['survey.eaves.0.pitchRisePer12', '6/12'],
    ['survey.eaves.0.heightAbovePlateIn', '4-3/8'],
    ['design.eaves.0.overhangIn', '16'],
  ];
  let documents = addEave(emptyDocuments(), []);
  for (const [path, text] of entries) documents = enter(documents, path, text);
  for (const reading of readings) documents = enterNextReading(documents, 0, reading);
  return documents;
}
