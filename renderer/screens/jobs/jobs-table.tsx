import { figuresMissing } from '../../kit/figures-missing.ts';
import { Ellipsis } from 'lucide-react';
import { Link } from 'wouter';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { saveTextFile } from '../../host/save-file.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { focusAfterRow } from '../../kit/focus-after-row.ts';
import { Menu } from '../../kit/menu.tsx';
import { presses, standsAt } from '../../job/quote/quote-words.ts';
import { urgency } from './waiting-jobs.ts';
import { notify } from '../../kit/notices.tsx';

export type JobSummary = CommandOutput<'jobs.list'>[number];

/** The jobs, newest change first, each with what can be done with it. */
export function JobsTable(props: {
  readonly jobs: readonly JobSummary[];
  readonly onCopy: (job: JobSummary) => void;
}) {
  return (
    <DataTable
      label="Jobs"
      columns={columnsFor(props.onCopy)}
      rows={props.jobs}
      rowsAtOnce={200}
      rowKey={(job) => job.id}
      rowState={(job) => (job.archived ? 'faded' : undefined)}
    />
  );
}

function columnsFor(onCopy: (job: JobSummary) => void): readonly TableColumn<JobSummary>[] {
  return [
    {
      id: 'name',
      title: 'Job',
      isRowHeader: true,
      sortBy: (job) => job.name,
      cell: (job) => (
        <>
          <Link href={`/jobs/${job.id}`} className="row-link">
            {job.name}
          </Link>
          {job.archived ? <span className="tag">archived</span> : null}
        </>
      ),
    },
    { id: 'customer', title: 'Customer', sortBy: (job) => job.customerName, cell: (job) => job.customerName },
    { id: 'site', title: 'Site', sortBy: (job) => job.siteAddress, cell: (job) => job.siteAddress },
    {
      id: 'estimate',
      title: 'Last saved estimate',
      align: 'right',
      sortBy: (job) => Number(job.lastEstimateUsd ?? -1),
      cell: (job) =>
        job.lastEstimateUsd === null ? (
          <span className="muted">none yet</span>
        ) : (
          <>
            {job.lastEstimateLacks === 0 ? null : (
              <>
                <span className="tag tag-care">{figuresMissing(job.lastEstimateLacks)}</span>{' '}
              </>
            )}
            {formatUsd(job.lastEstimateUsd as Usd)}
          </>
        ),
    },
    {
      id: 'quote',
      title: 'Quote',
      sortBy: urgency,
      cell: ({ quote }) =>
        quote === null ? (
          <span className="muted">none yet</span>
        ) : (
          <span className={presses(quote) ? 'tag tag-care' : 'tag'}>
            {quote.number}: {standsAt(quote)}
            {quote.state === 'sent' && quote.daysLeft === null ? `, good until ${quote.validUntil}` : ''}
          </span>
        ),
    },
    {
      id: 'changed',
      title: 'Changed on',
      align: 'right',
      sortBy: (job) => job.changedOn,
      cell: (job) => <span className="no-wrap">{job.changedOn}</span>,
    },
    {
      id: 'menu',
      title: 'What to do with it',
      titleHidden: true,
      align: 'right',
      cell: (job) => <JobMenu job={job} onCopy={() => onCopy(job)} />,
    },
  ];
}

function JobMenu({ job, onCopy }: { readonly job: JobSummary; readonly onCopy: () => void }) {
  return (
    <Menu
      label={`What to do with ${job.name}`}
      icon={<Ellipsis size={16} aria-hidden="true" />}
      groups={[
        {
          choices: [
            { id: 'copy', label: 'Copy the job', run: onCopy },
            { id: 'export', label: 'Export to a job file', run: () => void exportJob(job) },
            job.archived
              ? { id: 'unarchive', label: 'Bring back from the archive', run: () => void archive(job, false) }
              : { id: 'archive', label: 'Archive', run: () => void archive(job, true) },
          ],
        },
      ]}
    />
  );
}

async function archive(job: JobSummary, archived: boolean): Promise<void> {
  const moveFocus = focusAfterRow(job.id);
  if ((await attempt('jobs.archive', { id: job.id, archived })) === undefined) return;
  moveFocus();
  if (archived) notify(`${job.name} is archived. "Show archived jobs" finds it again.`);
  else notify(`${job.name} is back among the open jobs.`);
}

async function exportJob(job: JobSummary): Promise<void> {
  const file = await attempt('jobs.export', { id: job.id });
  if (file !== undefined) await saveTextFile(file.fileName, file.text, 'application/json');
}
