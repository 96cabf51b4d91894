import { findLabourTask } from '../../../core/takeoff/labour-tasks.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { Panel } from '../../kit/panel.tsx';
import { CountedHours } from './counted-hours.tsx';
import { LearnedOffer } from './learned-offer.tsx';
import { MaterialsPanel } from './materials-panel.tsx';
import type { LearnedRate } from './money-words.ts';
import { RemindersPanel } from './reminders-panel.tsx';
import { percentWords } from '../../kit/amounts.ts';

/** What finished jobs teach: hours by task and material allowances, each proposed and never changed by itself. */
export function LearnedPart() {
  const learning = useAnswer('learning.get', {});
  return (
    <Answer query={learning}>
      {({ rates, materials, accuracy, reminders }) => (
        <>
          {rates.length === 0 ? (
            <Panel title="Hours by task">
              <EmptyState title="No finished job has taught anything yet.">
                Enter the hours of a job by phase under Job cost, and mark the job as finished. What its tasks
                took stands here beside what you reckon with.
              </EmptyState>
            </Panel>
          ) : (
            <>
              <HoursByTask rates={rates} />
              <CountedHours rates={rates} accuracy={accuracy} />
            </>
          )}
          {materials.length === 0 ? null : <MaterialsPanel materials={materials} />}
          <RemindersPanel reminders={reminders} />
        </>
      )}
    </Answer>
  );
}

function HoursByTask({ rates }: { readonly rates: readonly LearnedRate[] }) {
  return (
    <Panel title="Hours by task" look="flush">
      <DataTable
        label="Hours by task from finished jobs"
        columns={columns}
        rows={rates}
        rowKey={({ task }) => task}
      />
      <p className="money-legend muted">
        Hours are kept by phase. They go to its tasks in proportion to what was reckoned for each, with
        storeys, pitch and access taken out. What is proposed is the mean of the jobs drawn toward the rate
        that they were estimated with, more so the fewer jobs there are: with three of them it lies half way.
        A job that stands out counts until you leave it out.
      </p>
    </Panel>
  );
}

const columns: readonly TableColumn<LearnedRate>[] = [
  { id: 'task', title: 'Task', isRowHeader: true, cell: ({ task }) => labelOf(task) },
  {
    id: 'used',
    title: 'Used now',
    align: 'right',
    cell: ({ task, used }) => (
      <span className="no-wrap">
        {used} h / {findLabourTask(task)?.unit ?? ''}
      </span>
    ),
  },
  {
    id: 'jobs',
    title: 'What each job took',
    cell: ({ jobs }) => (
      <span className="rate-values">
        {jobs.map((job) => (
          <span key={job.jobId} className={job.leftOut ? 'rate-out' : undefined} title={job.jobName}>
            {job.rate}
            {job.standsOut ? ' (stands out)' : ''}
          </span>
        ))}
      </span>
    ),
  },
  { id: 'mean', title: 'Mean', align: 'right', cell: ({ mean }) => (mean === null ? '–' : `${mean} h`) },
  {
    id: 'median',
    title: 'Middle one',
    align: 'right',
    cell: ({ median }) => (median === null ? '–' : `${median} h`),
  },
  { id: 'trust', title: 'Weight', align: 'right', cell: ({ trustPercent }) => percentWords(trustPercent) },
  {
    id: 'offer',
    title: 'Proposed',
    cell: (rate) => <LearnedOffer rate={rate} what={labelOf(rate.task)} />,
  },
];

function labelOf(task: string): string {
  return findLabourTask(task)?.label ?? task;
}
