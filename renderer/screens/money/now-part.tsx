import { Link } from 'wouter';
import { attempt } from '../../host/attempt.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { Panel } from '../../kit/panel.tsx';
import { Fact } from '../../kit/fact.tsx';
import { JobsMoneyTable } from './jobs-money-table.tsx';
import type { ShopMoney } from './money-words.ts';
import { WaitsPanels } from './waits-panels.tsx';
import { dollars, percentWords } from '../../kit/amounts.ts';

/** Where the money of every job under contract stands, and what waits to be answered, billed or paid. */
export function NowPart() {
  const money = useAnswer('money.shop', {});
  return <Answer query={money}>{(shown) => <Standing money={shown} />}</Answer>;
}

function Standing({ money }: { readonly money: ShopMoney }) {
  if (money.jobs.length === 0 && money.quotes.length === 0)
    return (
      <Panel title="Open jobs">
        <EmptyState
          title="No job has an accepted quote yet."
          actions={
            <Button onPress={() => void attempt('jobs.openFinishedSample', {})}>
              Bring in jobs of the sample shop
            </Button>
          }
        >
          Mark a quote as accepted under Quote, and the job stands here with its contract, bills, cost and
          margin. To look around first, bring in four invented jobs: three are finished, one goes on.
        </EmptyState>
      </Panel>
    );
  const open = money.jobs.filter(({ finishedOn }) => finishedOn === null);
  const finished = money.jobs.filter(({ finishedOn }) => finishedOn !== null);
  return (
    <>
      <Totals money={money} open={open.length} />
      <WaitsPanels money={money} />
      <Panel title="Open jobs" look="flush">
        {open.length === 0 ? (
          <p className="money-empty muted">No job under contract is open.</p>
        ) : (
          <JobsMoneyTable label="Open jobs" jobs={open} totals={money.totals} />
        )}
      </Panel>
      {finished.length === 0 ? null : (
        <Panel
          title="Finished jobs"
          look="flush"
          actions={<Link href="/money/finished">How good the estimates were</Link>}
        >
          <JobsMoneyTable label="Finished jobs" jobs={finished} totals={null} />
        </Panel>
      )}
    </>
  );
}

function Totals({ money, open }: { readonly money: ShopMoney; readonly open: number }) {
  const { totals, invoices, jobs } = money;
  const owed = jobs.reduce((sum, job) => sum + Math.max(0, Number(job.owedUsd)), 0);
  const late = invoices.filter(({ daysPast }) => daysPast > 0).length;
  const ahead = Number(totals.overBilledUsd);
  return (
    <Panel title="The shop's open jobs together" look="flush">
      <dl className="money-figures">
        <Fact
          name="Contracts"
          value={dollars(totals.contractUsd)}
          says={`${open === 1 ? 'one job' : `${open} jobs`}, ${dollars(totals.changesUsd)} of it changes`}
        />
        <Fact
          name="Billed"
          value={dollars(totals.billedUsd)}
          says={
            ahead === 0
              ? 'as much as is earned'
              : ahead > 0
                ? `${dollars(totals.overBilledUsd)} ahead of the work`
                : `${dollars(String(-ahead))} behind the work`
          }
        />
        <Fact
          name="Owed by clients, all jobs"
          value={dollars(String(owed))}
          says={late === 0 ? 'nothing is late' : `${late === 1 ? 'one bill is' : `${late} bills are`} late`}
          isCare={late > 0}
        />
        <Fact
          name="Spent"
          value={dollars(totals.costUsd)}
          says={`of ${dollars(totals.forecastUsd)} at the end`}
        />
        <Fact
          name="Margin expected"
          value={percentWords(totals.expectedMarginPercent)}
          says={`${percentWords(totals.plannedMarginPercent)} as reckoned`}
          isCare={Number(totals.expectedMarginPercent) < Number(totals.plannedMarginPercent)}
        />
      </dl>
    </Panel>
  );
}
