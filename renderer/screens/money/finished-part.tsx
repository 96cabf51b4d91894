import { Link } from 'wouter';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { Panel } from '../../kit/panel.tsx';
import { AccuracyPanel } from './accuracy-panel.tsx';
import type { Learning } from './money-words.ts';
import { dollars, percentWords } from '../../kit/amounts.ts';

/** Finished jobs: what each earned, and how good the estimates were. */
export function FinishedPart() {
  const learning = useAnswer('learning.get', {});
  return (
    <Answer query={learning}>
      {(shown) =>
        shown.finished.length === 0 ? (
          <Panel title="Finished jobs">
            <EmptyState title="No job is finished yet.">
              At the end of Job cost a job is marked as finished, in a minute. From then on it shows here how
              good its estimate was, and what to reckon next time.
            </EmptyState>
          </Panel>
        ) : (
          <>
            <EarnedPanel learning={shown} />
            <AccuracyPanel accuracy={shown.accuracy} />
          </>
        )
      }
    </Answer>
  );
}

function EarnedPanel({ learning }: { readonly learning: Learning }) {
  return (
    <Panel title="What each job earned" look="flush">
      <table className="table">
        <caption className="visually-hidden">What each job earned</caption>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">Finished</th>
            {[
              'Contract',
              'Margin reckoned',
              'Margin made',
              'Owner’s hours',
              'Each earned',
              'After overhead',
            ].map((title) => (
              <th key={title} scope="col" className="align-right">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {learning.finished.map(({ jobId, name, finishedOn, outcome }) => (
            <tr key={jobId}>
              <th scope="row">
                <Link href={`/jobs/${jobId}/cost`} className="row-link">
                  {name}
                </Link>
              </th>
              <td className="no-wrap">{finishedOn}</td>
              <td className="align-right">{dollars(outcome.contractUsd)}</td>
              <td className="align-right">{percentWords(outcome.plannedMarginPercent)}</td>
              <td className="align-right">{percentWords(outcome.madeMarginPercent)}</td>
              <td className="align-right">{outcome.ownerHours === '0' ? '–' : outcome.ownerHours}</td>
              <td className="align-right">
                {outcome.ownerHourUsd === null ? '–' : dollars(outcome.ownerHourUsd)}
              </td>
              <td className="align-right">
                {outcome.ownerHourAfterOverheadUsd === null
                  ? '–'
                  : dollars(outcome.ownerHourAfterOverheadUsd)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Panel>
  );
}
