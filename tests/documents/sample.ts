import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Block, Row, Sheet } from '../../core/documents/sheet.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';

export const sampleFile = fileURLToPath(new URL('../../fixtures/sample-job.json', import.meta.url));

/** The sample job, read anew each time, so that a test may change its copy. */
export function sampleJob(): JobFile {
  const file = readJobFile(readFileSync(sampleFile, 'utf8'));
  if (!file.ok) throw new Error(JSON.stringify(file.problem));
  return file.value;
}

export function computed(job: JobFile): JobResult {
  const result = computeJob(job);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

export function tables(sheet: Sheet): readonly Extract<Block, { kind: 'table' }>[] {
  return sheet.blocks.filter((block) => block.kind === 'table');
}

/** The table under a heading. */
export function tableUnder(sheet: Sheet, heading: string): Extract<Block, { kind: 'table' }> {
  const at = sheet.blocks.findIndex((block) => block.kind === 'heading' && block.text === heading);
  const table = sheet.blocks[at + 1];
  if (at < 0 || table?.kind !== 'table') throw new Error(`no table under "${heading}"`);
  return table;
}

/** Everything a sheet says, as one text. */
export function wordsOf(sheet: Sheet): string {
  return JSON.stringify(sheet.blocks);
}

export function cell(row: Row | undefined, index: number): string {
  return row?.cells[index] ?? '';
}

/** `$1,234.50` as cents. */
export function centsOf(text: string): number {
  return Math.round(Number(text.replaceAll(/[$,]/g, '')) * 100);
}
