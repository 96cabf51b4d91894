import { Fact } from '../../kit/fact.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Costs, forecastWords, kindWords } from './cost-words.ts';
import { StandingBar, StandingLegend } from './standing-bar.tsx';
import { dollars, percentWords, wholeDollars } from '../../kit/amounts.ts';

/** Where the job stands: its money as a whole, then phase by phase, in figures and as bars. */
export function StandingPanel({ costs }: { readonly costs: Costs }) {
  const { standing, earned, contract } = costs;
  const { whole } = standing;
  const over = Number(whole.leftUsd) < 0;
  const ahead = Number(earned.overBilledUsd);
  return (
    <Panel
      title="Where the job stands"
      look="flush"
      actions={
        contract === null ? null : (
          <span className="muted">
            Quote {contract.quoteNumber}, revision {contract.revision}, accepted {contract.acceptedOn}
          </span>
        )
      }
    >
      <dl className="cost-figures">
        <Fact name="Contract" value={dollars(earned.contractUsd)} />
        <Fact
          name="Budget"
          value={dollars(whole.budgetUsd)}
          says={`and ${dollars(costs.contingencyUsd)} contingency`}
        />
        <Fact
          name="Spent"
          value={dollars(whole.actualUsd)}
          says={
            Number(whole.committedUsd) === 0
              ? `${whole.actualHours} of ${whole.budgetHours} h`
              : `and ${dollars(whole.committedUsd)} ordered`
          }
        />
        <Fact
          name="Done"
          value={percentWords(whole.percent)}
          says={`${percentWords(whole.percentByCost)} by cost`}
          isCare={whole.percentsDisagree}
        />
        <Fact
          name="At the end"
          value={dollars(whole.forecastUsd)}
          says={
            over
              ? `${dollars(String(-Number(whole.leftUsd)))} over budget`
              : `${dollars(whole.leftUsd)} under budget`
          }
          isCare={over}
        />
        <Fact
          name="Billed"
          value={dollars(earned.billedUsd)}
          says={
            ahead === 0
              ? 'as much as is earned'
              : ahead > 0
                ? `${dollars(earned.overBilledUsd)} ahead of the work`
                : `${dollars(String(-ahead))} behind the work`
          }
        />
      </dl>
      <PhaseTable costs={costs} />
      <StandingLegend />
      <KindTable costs={costs} />
    </Panel>
  );
}

function PhaseTable({ costs }: { readonly costs: Costs }) {
  const { phases, whole } = costs.standing;
  const most = Math.max(
    0,
    ...phases.map((one) =>
      Math.max(
        Number(one.budgetUsd),
        Number(one.forecastUsd),
        Number(one.actualUsd) + Number(one.committedUsd),
      ),
    ),
  );
  return (
    <table className="table cost-table">
      <caption className="visually-hidden">Budget, cost and forecast by phase</caption>
      <thead>
        <tr>
          <th scope="col">Phase</th>
          {['Budget', 'Ordered', 'Spent', 'Hours', 'Done', 'Earned', 'At the end', 'Left'].map((title) => (
            <th key={title} scope="col" className="align-right">
              {title}
            </th>
          ))}
          <th scope="col" className="cost-bar-head">
            <span className="visually-hidden">As a bar</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {phases.map((one) => (
          <tr key={one.phase}>
            <th scope="row">{one.phase}</th>
            <td className="align-right">{wholeDollars(one.budgetUsd)}</td>
            <td className="align-right">
              {Number(one.committedUsd) === 0 ? '' : wholeDollars(one.committedUsd)}
            </td>
            <td className="align-right">{wholeDollars(one.actualUsd)}</td>
            <td className="align-right no-wrap">
              {one.actualHours} / {one.budgetHours}
            </td>
            <td className="align-right">
              {percentWords(one.percent)}
              {one.percentsDisagree ? (
                <span
                  className="tag tag-care"
                  title="Percent by work and by cost are more than 10 points apart"
                >
                  {percentWords(one.percentByCost)} by cost
                </span>
              ) : null}
            </td>
            <td className="align-right">{wholeDollars(one.earnedUsd)}</td>
            <td className="align-right" title={forecastWords[one.forecastFrom]}>
              {wholeDollars(one.forecastUsd)}
            </td>
            <td className={`align-right ${Number(one.leftUsd) < 0 ? 'cost-over' : ''}`}>
              {Number(one.leftUsd) < 0 ? 'over ' : ''}
              {wholeDollars(String(Math.abs(Number(one.leftUsd))))}
            </td>
            <td className="cost-bar-cell">
              <StandingBar figures={one} mostUsd={most} />
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Job</th>
          <td className="align-right">{wholeDollars(whole.budgetUsd)}</td>
          <td className="align-right">{wholeDollars(whole.committedUsd)}</td>
          <td className="align-right">{wholeDollars(whole.actualUsd)}</td>
          <td className="align-right no-wrap">
            {whole.actualHours} / {whole.budgetHours}
          </td>
          <td className="align-right">{percentWords(whole.percent)}</td>
          <td className="align-right">{wholeDollars(whole.earnedUsd)}</td>
          <td className="align-right">{wholeDollars(whole.forecastUsd)}</td>
          <td className={`align-right ${Number(whole.leftUsd) < 0 ? 'cost-over' : ''}`}>
            {Number(whole.leftUsd) < 0 ? 'over ' : ''}
            {wholeDollars(String(Math.abs(Number(whole.leftUsd))))}
          </td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

function KindTable({ costs }: { readonly costs: Costs }) {
  return (
    <table className="table cost-kinds">
      <caption className="visually-hidden">Budget and cost by kind</caption>
      <thead>
        <tr>
          <th scope="col">Kind</th>
          <th scope="col" className="align-right">
            Budget
          </th>
          <th scope="col" className="align-right">
            Spent
          </th>
        </tr>
      </thead>
      <tbody>
        {costs.byKind
          .filter(({ budgetUsd, actualUsd }) => Number(budgetUsd) !== 0 || Number(actualUsd) !== 0)
          .map(({ kind, budgetUsd, actualUsd }) => (
            <tr key={kind}>
              <th scope="row">{kindWords[kind]}</th>
              <td className="align-right">{dollars(budgetUsd)}</td>
              <td className="align-right">{dollars(actualUsd)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
