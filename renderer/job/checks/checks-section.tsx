import { useState } from 'react';
import type { CheckResult, Verdict } from '../../../core/checks/check-types.ts';
import { notReckoned } from '../../../core/documents/cautions.ts';
import { checksOfEave } from '../../../core/documents/grouped-checks.ts';
import type { EaveLayout } from '../../../core/layout/layout-types.ts';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { useJob } from '../job-context.ts';
import { EaveChooser } from '../parts/eave-chooser.tsx';
import { checkEntryLabels } from '../../../core/trace/entry-labels.ts';
import { NoFigures } from '../parts/no-figures.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { JobOption, optionsOf } from '../parts/option.tsx';
import { CheckCaution } from './check-caution.tsx';
import { CheckItem } from './check-item.tsx';
import './checks.css';
import { DecisionNotes } from './decision-notes.tsx';
import { useChecks } from './use-checks.ts';
import { VerdictCounts } from './verdict-counts.tsx';

const filters = {
  all: 'All checks',
  look: 'Beyond, or for an engineer',
  'not-covered': 'Not covered',
  within: 'Within the limit',
} as const;
type Filter = keyof typeof filters;

/** The checks: each eave's design held against published and customary limits, live, with the caution in view. */
export function ChecksSection() {
  const { computation, eaveId } = useJob();
  const checks = useChecks();
  const [filter, setFilter] = useState<Filter>('all');
  if (computation.good === null || checks === null) return <NoFigures />;
  const eaves = computation.good.result.eaves.filter((eave) => eaveId === null || eave.eaveId === eaveId);
  const inView = checks.filter((check) => eaves.some((eave) => eave.eaveId === check.eaveId));
  const shown = inView.filter((check) => isShown(check.verdict, filter));
  return (
    <div className="checks">
      <EaveChooser canChange={false} houseLabel="All eaves" />
      <div className="checks-caution">
        <CheckCaution length="full" />
      </div>
      <div className="checks-tools">
        <VerdictCounts checks={inView} />
        <OldMark />
        <SelectField
          label="Show"
          value={filter}
          choices={Object.entries(filters).map(([id, label]) => ({ id: id as Filter, label }))}
          onChange={setFilter}
        />
        <JobOption
          path="design.notchRule"
          label={checkEntryLabels.notchRule}
          options={optionsOf('notchRule', 'Not picked')}
        />
      </div>
      {eaves.map((eave) => (
        <EaveChecks key={eave.eaveId} eave={eave} checks={shown} />
      ))}
      {shown.length === 0 ? <p className="muted">No check of this kind here.</p> : null}
      <OtherDecisions checks={checks} />
      <p className="muted">{notReckoned}</p>
    </div>
  );
}

function EaveChecks(props: { readonly eave: EaveLayout; readonly checks: readonly CheckResult[] }) {
  const { eave } = props;
  return checksOfEave(props.checks, eave.eaveId).map(({ group, checks }) => (
    <Panel
      key={group}
      title={`${eave.letter}: ${eave.name}, ${group.charAt(0).toLowerCase()}${group.slice(1)}`}
      look="flush"
      actions={<span className="tag tag-care">Advisory</span>}
    >
      <ul className="check-list">
        {checks.map((check) => (
          <CheckItem key={check.id} check={check} />
        ))}
      </ul>
    </Panel>
  ));
}

/** Decisions on checks that are no longer made, e.g. since the design changed: kept in view until removed. */
function OtherDecisions({ checks }: { readonly checks: readonly CheckResult[] }) {
  const { documents } = useJob();
  const ids = new Set(documents.design.decisions.map((decision) => decision.checkId));
  const gone = [...ids].filter((id) => !checks.some((check) => check.id === id));
  if (gone.length === 0) return null;
  return (
    <Panel title="Decisions on checks that are no longer made">
      {gone.map((id) => (
        <DecisionNotes key={id} checkId={id} check={null} />
      ))}
    </Panel>
  );
}

function isShown(verdict: Verdict, filter: Filter): boolean {
  switch (filter) {
    case 'all':
      return true;
    case 'look':
      return verdict === 'beyond' || verdict === 'needs-engineer';
    case 'not-covered':
    case 'within':
      return verdict === filter;
    default:
      return filter satisfies never;
  }
}
