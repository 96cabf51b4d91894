import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { found, wholeEave, type Answer, type Check } from './answer.ts';
import type { CheckResult } from './check-types.ts';
import { eaveToCheck } from './eave-to-check.ts';
import { rakeToCheck } from './rakes/rake-check.ts';
import { rakeRegistry } from './rakes/rake-registry.ts';
import { registry } from './registry.ts';

/**
 * Runs every check of the registry on every eave of a computed job, and those of rakes on every rake. Advisory: a verdict says how a figure stands to a
 * published or customary limit, and nothing about whether the thing may be built.
 * @param input - the job.
 * @param result - computed from that input.
 * @returns results in the order of eaves, then of the registry, an eave's rakes behind it; never throws on a job that computes.
 */
export function runChecks(input: JobInput, result: JobResult): readonly CheckResult[] {
  return result.eaves.flatMap((layout) => [
    ...checkEave(input, result, layout),
    ...result.rakes
      .filter(({ eaveId }) => eaveId === layout.eaveId)
      .flatMap((rake) => checkRake(input, result, rake)),
  ]);
}

function checkEave(input: JobInput, result: JobResult, layout: EaveLayout): readonly CheckResult[] {
  const eave = layout.extenders.length === 0 ? undefined : eaveToCheck(input, result, layout);
  return registry.map((check) => ({
    id: `${check.check}/${layout.eaveId}`,
    check: check.check,
    eaveId: layout.eaveId,
    ...(eave === undefined ? noTail(check) : check.run(eave)),
  }));
}

/** A check that has nothing to say of a rake built this way is left out. */
function checkRake(input: JobInput, result: JobResult, rake: RakeLayout): readonly CheckResult[] {
  const gathered = rakeToCheck(input, result, rake);
  if (gathered === undefined) return [];
  return rakeRegistry.flatMap(({ check, run }) => {
    const answer = run(gathered);
    return answer === null
      ? []
      : [{ id: `${check}/${rake.rakeId}`, check, eaveId: rake.eaveId, ...answer, rakeId: rake.rakeId }];
  });
}

function noTail({ title }: Check): Answer {
  return found({
    what: title,
    at: wholeEave,
    source: [],
    why: [],
    verdict: 'not-covered',
    remedy:
      'No extender stands on this eave, so there is nothing to check. Free a side of its rafters in Design.',
  });
}
