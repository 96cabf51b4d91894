import type { JobFile } from '../../core/job/job-file.ts';
import { exampleText, soundJob } from './example-job.ts';

/** The example as JSON, loose enough to be changed. */
export type RawJob = Record<string, unknown> & {
  job: Record<string, unknown>;
  survey: { eaves: Record<string, unknown>[] };
  design: { eaves: Record<string, unknown>[]; extraCosts: Record<string, unknown>[] };
  priceList: Record<string, unknown>[];
  settings: Record<string, unknown>;
};

/** The text of the example of fixtures/job-file.md with something changed. */
export function changedText(change: (raw: RawJob) => void): string {
  const raw = JSON.parse(exampleText()) as RawJob;
  change(raw);
  return JSON.stringify(raw);
}

/** The example with something changed, which must still be a sound job. */
export function changedJob(change: (raw: RawJob) => void): JobFile {
  return soundJob(changedText(change));
}

/** The one entry of a list that has this id. */
export function entryOf(list: readonly Record<string, unknown>[], id: string): Record<string, unknown> {
  const found = list.find((entry) => entry['id'] === id || entry['eaveId'] === id);
  if (found === undefined) throw new Error(`the example has no entry ${id}`);
  return found;
}
