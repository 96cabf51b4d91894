import { Link } from 'wouter';
import type { CheckResult } from '../../../core/checks/check-types.ts';
import { ratioText, verdictWords } from '../../../core/documents/check-words.ts';
import { checksOfEave, titleOf } from '../../../core/documents/grouped-checks.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { OldMark } from '../parts/old-mark.tsx';
import { CheckCaution } from './check-caution.tsx';
import './checks.css';
import { MissingEntry } from './missing-entry.tsx';
import { useChecks } from './use-checks.ts';
import { VerdictCounts } from './verdict-counts.tsx';
import { VerdictShape } from './verdict-mark.tsx';

/** The checks of an eave in a few lines beside its design: what is beyond stands out, what is within is counted. */
export function ChecksStrip({ eaveId }: { readonly eaveId: string }) {
  const { jobId } = useJob();
  const all = useChecks();
  if (all === null) return null;
  const checks = all.filter((check) => check.eaveId === eaveId);
  const missing = [...new Set(checks.flatMap((check) => check.missingField ?? []))];
  return (
    <Panel
      title="Checks of this eave"
      actions={
        <>
          <OldMark />
          <Link href={`/jobs/${jobId}/checks`}>All checks, with sources</Link>
        </>
      }
    >
      <dl className="strip-groups">
        {checksOfEave(checks, eaveId).map(({ group, checks: ofGroup }) => (
          <div key={group} className="strip-group">
            <dt>{group}</dt>
            <dd>
              <GroupChips checks={ofGroup} />
            </dd>
          </div>
        ))}
      </dl>
      {missing.length === 0 ? null : (
        <p className="strip-missing">
          {missing.map((path) => (
            <MissingEntry key={path} path={path} />
          ))}
        </p>
      )}
      <CheckCaution length="short" />
    </Panel>
  );
}

/** One line above the drawing, so that a check that turns while one types is seen at once. */
export function ChecksLine({ eaveId }: { readonly eaveId: string }) {
  const { jobId } = useJob();
  const all = useChecks();
  if (all === null) return null;
  return (
    <div className="checks-line">
      <strong>Checks</strong>
      <VerdictCounts checks={all.filter((check) => check.eaveId === eaveId)} />
      <span className="tag tag-care">Advisory</span>
      <Link href={`/jobs/${jobId}/checks`}>All checks</Link>
    </div>
  );
}

/** A chip for each check; those for want of an entry are named below by the entry instead. */
function GroupChips({ checks }: { readonly checks: readonly CheckResult[] }) {
  const { walkBack, documents } = useJob();
  const decided = new Set(documents.design.decisions.map((decision) => decision.checkId));
  return (
    <ul className="chips">
      {checks.map((check) => (
        <li key={check.id}>
          <button
            type="button"
            className={`chip verdict-${check.verdict}`}
            data-ref={`check/${check.id}`}
            title={check.what}
            onClick={() => walkBack(`check/${check.id}`)}
          >
            <VerdictShape verdict={check.verdict} />
            <span className="visually-hidden">{verdictWords[check.verdict]}: </span>
            <span>{titleOf(check)}</span>
            {check.ratio === null ? null : <strong>{ratioText(check.ratio)}</strong>}
            {decided.has(check.id) ? <span className="tag">decided on</span> : null}
          </button>
        </li>
      ))}
    </ul>
  );
}
