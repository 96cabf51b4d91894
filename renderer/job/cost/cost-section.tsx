import { Link } from 'wouter';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { CloseOutPanel } from '../close-out/close-out-panel.tsx';
import { useJob } from '../job-context.ts';
import { BillsPanel } from './bills-panel.tsx';
import { DaySheet } from './day-sheet.tsx';
import { ProgressPanel } from './progress-panel.tsx';
import { StandingPanel } from './standing-panel.tsx';
import { TimesPanel } from './times-panel.tsx';
import './cost.css';

/** What the job took against what was reckoned: where it stands, and where hours, receipts and progress are entered. */
export function CostSection() {
  const { jobId } = useJob();
  const costs = useAnswer('costs.get', { jobId });
  return (
    <Answer query={costs}>
      {(shown) => (
        <div className="stack">
          {shown.contract === null ? (
            <Banner tone="info">
              No quote of this job is accepted, so there is no budget to hold it against. Mark one as accepted
              under <Link href={`/jobs/${jobId}/quote`}>Quote</Link>. Hours and receipts can be entered
              already.
            </Banner>
          ) : null}
          <StandingPanel costs={shown} />
          <div className="cost-forms">
            <DaySheet jobId={jobId} costs={shown} />
            <ProgressPanel jobId={jobId} costs={shown} />
          </div>
          <BillsPanel jobId={jobId} costs={shown} />
          <TimesPanel costs={shown} />
          <CloseOutPanel />
        </div>
      )}
    </Answer>
  );
}
