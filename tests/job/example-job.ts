import { readFileSync } from 'node:fs';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';

/** The example at the end of fixtures/job-file.md, as text. */
export function exampleText(): string {
  const page = readFileSync(new URL('../../fixtures/job-file.md', import.meta.url), 'utf8');
  const text = /```json\n([\s\S]*?)```/.exec(page)?.[1];
  if (text === undefined) throw new Error('fixtures/job-file.md has no example');
  return text;
}

/** The sample job of the fixtures, as text. */
export function sampleText(): string {
  return readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8');
}

/** Reads a job file that must be sound. */
export function soundJob(text: string): JobFile {
  const read = readJobFile(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
}

/** Computes a job that must be sound. */
export function soundResult(job: JobFile): JobResult {
  const result = computeJob(job);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}
