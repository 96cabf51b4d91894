import { Link } from 'wouter';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { MoneyBar, MoneyLegend } from './money-bar.tsx';
import type { ShopJob, ShopMoney } from './money-words.ts';
import { percentWords, wholeDollars } from '../../kit/amounts.ts';

/** Jobs with their contract, bills, cost and margin, each with its bars; the totals at the foot. */
export function JobsMoneyTable(props: {
  readonly label: string;
  readonly jobs: readonly ShopJob[];
  readonly totals: ShopMoney['totals'] | null;
}) {
  const { label, jobs, totals } = props;
  const most = Math.max(
    0,
    ...jobs.map((job) => Math.max(Number(job.contractUsd), Number(job.billedUsd), Number(job.forecastUsd))),
  );
  return (
    <>
      <DataTable
        label={label}
        columns={columnsFor(most)}
        rows={jobs}
        rowsAtOnce={100}
        rowKey={({ jobId }) => jobId}
        foot={
          totals === null ? undefined : (
            <tr>
              <th scope="row" className="align-left">
                All of them
              </th>
              {[
                totals.contractUsd,
                totals.changesUsd,
                totals.billedUsd,
                totals.paidUsd,
                totals.owedUsd,
                totals.costUsd,
                totals.forecastUsd,
              ].map((amount, index) => (
                <td key={figureTitles[index]} className="align-right">
                  {wholeDollars(amount)}
                </td>
              ))}
              <td className="align-right no-wrap">{margins(totals)}</td>
              <td className="align-right no-wrap">{aheadWords(totals.overBilledUsd)}</td>
              <td />
            </tr>
          )
        }
      />
      <MoneyLegend />
    </>
  );
}

const figureTitles = ['Contract', 'Changes', 'Billed', 'Paid', 'Owed', 'Spent', 'At the end'] as const;

function columnsFor(mostUsd: number): readonly TableColumn<ShopJob>[] {
  return [
    {
      id: 'name',
      title: 'Job',
      isRowHeader: true,
      sortBy: (job) => job.name,
      cell: (job) => (
        <>
          <Link href={`/jobs/${job.jobId}/cost`} className="row-link">
            {job.name}
          </Link>{' '}
          <span className="muted">
            {job.finishedOn === null ? job.customerName : `finished ${job.finishedOn}`}
          </span>
        </>
      ),
    },
    figure('contract', 'Contract', (job) => job.contractUsd),
    figure('changes', 'Changes in it', (job) => job.changesUsd),
    figure('billed', 'Billed', (job) => job.billedUsd),
    figure('paid', 'Paid', (job) => job.paidUsd),
    figure('owed', 'Owed', (job) => job.owedUsd),
    figure('spent', 'Spent', (job) => job.costUsd),
    figure('end', 'At the end', (job) => job.forecastUsd),
    {
      id: 'margin',
      title: 'Margin, reckoned and expected',
      align: 'right',
      sortBy: (job) => Number(job.expectedMarginPercent ?? 0),
      cell: (job) => <span className="no-wrap">{margins(job)}</span>,
    },
    {
      id: 'ahead',
      title: 'Billed against earned',
      align: 'right',
      sortBy: (job) => Number(job.overBilledUsd),
      cell: (job) => <span className="no-wrap">{aheadWords(job.overBilledUsd)}</span>,
    },
    {
      id: 'bar',
      title: 'As bars',
      cell: (job) => (
        <div className="money-bar-head">
          <MoneyBar job={job} mostUsd={mostUsd} />
        </div>
      ),
    },
  ];
}

function figure(id: string, title: string, pick: (job: ShopJob) => string): TableColumn<ShopJob> {
  return {
    id,
    title,
    align: 'right',
    sortBy: (job) => Number(pick(job)),
    cell: (job) => wholeDollars(pick(job)),
  };
}

function margins(line: Pick<ShopJob, 'plannedMarginPercent' | 'expectedMarginPercent'>): string {
  return `${percentWords(line.plannedMarginPercent)}, ${percentWords(line.expectedMarginPercent)}`;
}

function aheadWords(overBilledUsd: string): string {
  const ahead = Number(overBilledUsd);
  if (ahead === 0) return 'even';
  return ahead > 0 ? `${wholeDollars(overBilledUsd)} ahead` : `${wholeDollars(String(-ahead))} behind`;
}
