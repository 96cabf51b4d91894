import type { CheckResult } from '../../../core/checks/check-types.ts';
import { MissingEntry } from './missing-entry.tsx';

/** What would bring a check within, and the entry that it wants, where there are such. */
export function CheckAdvice({ check }: { readonly check: Pick<CheckResult, 'remedy' | 'missingField'> }) {
  return (
    <>
      {check.remedy === null ? null : (
        <p>
          <strong>What would help: </strong>
          {check.remedy}
        </p>
      )}
      {check.missingField === null ? null : <MissingEntry path={check.missingField} />}
    </>
  );
}
