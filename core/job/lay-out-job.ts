import type { EaveLayout } from '../layout/layout-types.ts';
import type { Problem } from '../problems/problem.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { ok, type Result } from '../result.ts';
import type { JobInput } from './job-file.ts';
import { joinWithBoards } from './join-with-boards.ts';
import { layOutEaves } from './lay-out-eaves.ts';
import { layOutRakes } from './lay-out-rakes.ts';

/** Every eave and rake of a job, laid out. */
export type JobLayout = { readonly eaves: readonly EaveLayout[]; readonly rakes: readonly RakeLayout[] };

/**
 * Lays out a job: its eaves, the rakes on them, and the joints of the edge boards, chosen with the boards they are cut from.
 * @param input - documents without contradictions, prices and settings. [in]
 * @returns the layouts; or the first problem that stops one, with the path of the entry to mend.
 */
export function layOutJob(input: JobInput): Result<JobLayout, Problem> {
  const eaves = layOutEaves(input);
  if (!eaves.ok) return eaves;
  const rakes = layOutRakes(input, eaves.value);
  if (!rakes.ok) return rakes;
  return ok({ eaves: joinWithBoards(input, eaves.value, rakes.value), rakes: rakes.value });
}
