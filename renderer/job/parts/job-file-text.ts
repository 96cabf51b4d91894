import type { JobFile } from '../../../core/job/job-file.ts';
import { inputOf, type Surroundings } from '../compute/computation.ts';
import type { Documents } from '../editor/documents.ts';

/**
 * Writes the job on the screen as a job file, for when the host is gone. What was half typed goes into the notes, so
 * that it is not lost either.
 */
export function jobFileText(documents: Documents, surroundings: Surroundings): string {
  const half = Object.entries(documents.drafts).map(([path, text]) => `${path}: ${text}`);
  const { asOf, job, survey, design, settings, priceList } = inputOf(documents, surroundings);
  const notes = [job.notes, ...(half.length === 0 ? [] : ['Typed and not read:', ...half])];
  const file: JobFile = {
    format: 'eavewright-job',
    version: 1,
    asOf,
    job: {
      ...job,
      notes: notes
        .filter((line) => line !== '')
        .join('\n')
        .slice(0, 20000),
    },
    survey,
    design,
    settings,
    priceList,
  };
  return JSON.stringify(file, null, 2);
}
