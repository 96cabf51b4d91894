import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { Costs } from './cost-words.ts';

/** How far each phase is: counted where it can be, else by hand, with what the rest will cost where he knows better. */
export function ProgressPanel({ jobId, costs }: { readonly jobId: string; readonly costs: Costs }) {
  return (
    <Panel title="How far each phase is" look="flush">
      <table className="table progress-table">
        <caption className="visually-hidden">How far each phase is</caption>
        <thead>
          <tr>
            <th scope="col">Phase</th>
            <th scope="col">In place</th>
            <th scope="col">or percent done</th>
            <th scope="col">The rest will cost</th>
            <th scope="col">
              <span className="visually-hidden">Save</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {costs.standing.phases.map(({ phase }) => {
            const said = costs.progress.find((one) => one.phase === phase);
            return (
              <ProgressRow
                key={`${phase}/${said?.notedOn ?? ''}/${said?.percent ?? ''}/${said?.quantity ?? ''}/${said?.toCompleteUsd ?? ''}`}
                jobId={jobId}
                phase={phase}
                said={said}
                countable={costs.countable.find((one) => one.phase === phase)}
              />
            );
          })}
        </tbody>
      </table>
    </Panel>
  );
}

function ProgressRow(props: {
  readonly jobId: string;
  readonly phase: string;
  readonly said: Costs['progress'][number] | undefined;
  readonly countable: Costs['countable'][number] | undefined;
}) {
  const { jobId, phase, said, countable } = props;
  const [quantity, setQuantity] = useState(said?.quantity ?? '');
  const [percent, setPercent] = useState(said?.quantity == null ? (said?.percent ?? '') : '');
  const [rest, setRest] = useState(said?.toCompleteUsd ?? '');
  const submit = useSubmit('costs.noteProgress');
  const changed =
    blank(quantity) !== (said?.quantity ?? null) ||
    blank(percent) !== (said?.quantity == null ? (said?.percent ?? null) : null) ||
    blank(rest) !== (said?.toCompleteUsd ?? null);
  const save = async (): Promise<void> => {
    const done = await submit.send({
      jobId,
      phase,
      quantity: blank(quantity),
      percent: blank(quantity) === null ? blank(percent) : null,
      toCompleteUsd: blank(rest),
    });
    if (done !== undefined) notify(`${phase}: noted.`);
  };
  const other = submit.problem(['quantity', 'percent', 'toCompleteUsd']);
  return (
    <tr>
      <th scope="row">
        {phase}
        {other === null ? null : <span className="field-problem">{other}</span>}
      </th>
      <td>
        {countable === undefined ? (
          <span className="muted">nothing to count</span>
        ) : (
          <div className="progress-count">
            <TextField
              label={`${phase}, ${countable.what}`}
              labelHidden
              value={quantity}
              onChange={setQuantity}
              problem={submit.problemAt('quantity')}
              maxLength={12}
            />
            <span className="muted no-wrap">
              of {countable.total} {countable.unit}
              {countable.inPlace === null ? '' : `; ${countable.inPlace} typed back`}
            </span>
          </div>
        )}
      </td>
      <td>
        <TextField
          label={`${phase}, percent done`}
          labelHidden
          value={percent}
          onChange={setPercent}
          problem={submit.problemAt('percent')}
          maxLength={8}
          isDisabled={quantity.trim() !== ''}
        />
      </td>
      <td>
        <TextField
          label={`${phase}, the rest will cost`}
          labelHidden
          value={rest}
          onChange={setRest}
          placeholder="by formula"
          problem={submit.problemAt('toCompleteUsd')}
          maxLength={14}
        />
      </td>
      <td className="align-right">
        <Button isDisabled={!changed} aria-label={`Note it: ${phase}`} onPress={() => void save()}>
          Note it
        </Button>
      </td>
    </tr>
  );
}

/** What is typed, null for nothing. */
function blank(text: string): string | null {
  return text.trim() === '' ? null : text.trim();
}
