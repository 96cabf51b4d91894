import { type CheckGroup, checkGroups, type CheckResult } from '../checks/check-types.ts';
import { rakeRegistry } from '../checks/rakes/rake-registry.ts';
import { registry } from '../checks/registry.ts';

const allChecks = [...registry, ...rakeRegistry];

/** The checks of one group on one eave, in the order of the registry; those of its rakes last. */
export type GroupedChecks = { readonly group: CheckGroup; readonly checks: readonly CheckResult[] };

/**
 * Sorts an eave's checks under the group headings; a group without a check is left out.
 * @param checks - what the checks found, of any eaves.
 * @param eaveId - the eave.
 */
export function checksOfEave(checks: readonly CheckResult[], eaveId: string): readonly GroupedChecks[] {
  const ofEave = checks.filter((check) => check.eaveId === eaveId);
  return checkGroups.flatMap((group) => {
    const ofGroup = ofEave.filter((check) => groupOf(check) === group);
    return ofGroup.length === 0 ? [] : [{ group, checks: ofGroup }];
  });
}

/** Short name of a check, as the registry has it. */
export function titleOf(check: CheckResult): string {
  return allChecks.find((entry) => entry.check === check.check)?.title ?? check.what;
}

/** A check that the registry does not know is shown all the same, under the first heading. */
function groupOf(check: CheckResult): CheckGroup {
  return allChecks.find((entry) => entry.check === check.check)?.group ?? checkGroups[0];
}
