import { useState } from 'react';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { AccuracyChart } from './accuracy-chart.tsx';
import { AccuracyOverTime } from './accuracy-over-time.tsx';
import { type Accuracy, evenReach, signedPercent } from './money-words.ts';
import { wholeDollars } from '../../kit/amounts.ts';

/** How good the estimates were: each phase with its mean and spread, and one of them job by job. */
export function AccuracyPanel({ accuracy }: { readonly accuracy: readonly Accuracy[] }) {
  const [chosen, setChosen] = useState(whole);
  const shown = accuracy.find(({ phase }) => nameOf(phase) === chosen) ?? accuracy[0];
  const most = evenReach(accuracy.flatMap(({ jobs }) => jobs.map((job) => job.overHoursPercent)));
  return (
    <>
      <Panel title="How good the estimates were" look="flush">
        <table className="table">
          <caption className="visually-hidden">Taken beyond reckoned, by phase</caption>
          <thead>
            <tr>
              <th scope="col">Phase</th>
              <th scope="col" className="align-right">
                Jobs
              </th>
              <th scope="col" className="align-right">
                Cost, mean
              </th>
              <th scope="col" className="align-right">
                Spread
              </th>
              <th scope="col" className="align-right">
                Hours, mean
              </th>
              <th scope="col" className="align-right">
                Spread
              </th>
              <th scope="col">Hours taken beyond reckoned, each job a ring</th>
            </tr>
          </thead>
          <tbody>
            {accuracy.map((one) => (
              <tr key={nameOf(one.phase)}>
                <th scope="row">{nameOf(one.phase)}</th>
                <td className="align-right">{one.jobs.length}</td>
                <td className="align-right">{signedPercent(one.meanUsdPercent)}</td>
                <td className="align-right">
                  {one.spreadUsdPercent === null ? '–' : `${one.spreadUsdPercent} points`}
                </td>
                <td className="align-right">{signedPercent(one.meanHoursPercent)}</td>
                <td className="align-right">
                  {one.spreadHoursPercent === null ? '–' : `${one.spreadHoursPercent} points`}
                </td>
                <td>
                  <AccuracyChart accuracy={one} mostPercent={most} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="money-legend muted">
          A ring right of the middle line took more hours than reckoned; the thick stroke is the mean, the
          thin line its spread to both sides. The chart reaches from -{Math.round(most)} % to +
          {Math.round(most)} %.
        </p>
      </Panel>
      {shown === undefined ? null : (
        <Panel
          title="Job by job"
          look="flush"
          actions={
            <SelectField
              label="Phase"
              labelHidden
              value={nameOf(shown.phase)}
              choices={accuracy.map(({ phase }) => ({ id: nameOf(phase), label: nameOf(phase) }))}
              onChange={setChosen}
            />
          }
        >
          <AccuracyOverTime accuracy={shown} />
          <JobByJob accuracy={shown} />
        </Panel>
      )}
    </>
  );
}

const whole = 'Whole job';

function nameOf(phase: string | null): string {
  return phase ?? whole;
}

function JobByJob({ accuracy }: { readonly accuracy: Accuracy }) {
  return (
    <table className="table">
      <caption className="visually-hidden">{nameOf(accuracy.phase)}, job by job</caption>
      <thead>
        <tr>
          <th scope="col">Job</th>
          <th scope="col">Finished</th>
          {[
            'Cost reckoned',
            'Cost taken',
            'Difference',
            'Hours reckoned',
            'Hours taken',
            'Difference in hours',
          ].map((title) => (
            <th key={title} scope="col" className="align-right">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {accuracy.jobs.map((job) => (
          <tr key={job.jobId}>
            <th scope="row">{job.jobName}</th>
            <td className="no-wrap">{job.finishedOn}</td>
            <td className="align-right">{wholeDollars(job.budgetUsd)}</td>
            <td className="align-right">{wholeDollars(job.actualUsd)}</td>
            <td className="align-right">{signedPercent(job.overUsdPercent)}</td>
            <td className="align-right">{job.budgetHours}</td>
            <td className="align-right">{job.actualHours}</td>
            <td className="align-right">{signedPercent(job.overHoursPercent)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
