import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import type { Accuracy, LearnedRate } from './money-words.ts';

type JobRate = LearnedRate['jobs'][number];

/** Which hours count: phase by phase the finished jobs with reckoned and taken hours, each left out or counted by a press. */
export function CountedHours(props: {
  readonly rates: readonly LearnedRate[];
  readonly accuracy: readonly Accuracy[];
}) {
  const phases = phasesOf(props.rates);
  return (
    <Panel title="Which hours count" look="flush">
      <table className="table">
        <caption className="visually-hidden">Hours of finished jobs by phase</caption>
        <thead>
          <tr>
            <th scope="col">Phase</th>
            <th scope="col">Finished jobs: hours taken of hours reckoned</th>
          </tr>
        </thead>
        <tbody>
          {[...phases].map(([phase, jobs]) => (
            <tr key={phase}>
              <th scope="row">{phase}</th>
              <td>
                <ul className="counted-jobs">
                  {[...jobs.values()].map((job) => (
                    <CountedJob
                      key={job.jobId}
                      job={job}
                      held={props.accuracy
                        .find((one) => one.phase === phase)
                        ?.jobs.find(({ jobId }) => jobId === job.jobId)}
                    />
                  ))}
                </ul>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Panel>
  );
}

function CountedJob(props: { readonly job: JobRate; readonly held: Accuracy['jobs'][number] | undefined }) {
  const { job, held } = props;
  const toggle = (): void =>
    void attempt('learning.leaveOut', { jobId: job.jobId, phase: job.phase, leftOut: !job.leftOut });
  return (
    <li>
      <span className={job.leftOut ? 'rate-out' : undefined}>
        {job.jobName}:{' '}
        <span className="numeric">
          {held === undefined ? '' : `${held.actualHours} of ${held.budgetHours} h`}
        </span>
      </span>
      {job.standsOut ? <span className="tag tag-care">stands out</span> : null}
      <Button
        tone="quiet"
        aria-label={`${job.leftOut ? 'Count' : 'Leave out'} ${job.phase} of ${job.jobName}`}
        onPress={toggle}
      >
        {job.leftOut ? 'Left out; count it' : 'Leave out'}
      </Button>
    </li>
  );
}

/** The jobs of each phase, in the order they were finished; a job stands out where any task of the phase does. */
function phasesOf(rates: readonly LearnedRate[]): ReadonlyMap<string, ReadonlyMap<string, JobRate>> {
  const phases = new Map<string, Map<string, JobRate>>();
  for (const job of rates.flatMap(({ jobs }) => jobs)) {
    const ofPhase = phases.get(job.phase) ?? new Map<string, JobRate>();
    const before = ofPhase.get(job.jobId);
    ofPhase.set(job.jobId, { ...job, standsOut: job.standsOut || before?.standsOut === true });
    phases.set(job.phase, ofPhase);
  }
  return phases;
}
