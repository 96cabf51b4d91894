import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { Costs, ShownTime } from './cost-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** Every entry of hours, the newest first; what was corrected stays, struck through. */
export function TimesPanel({ costs }: { readonly costs: Costs }) {
  const [correcting, setCorrecting] = useState<ShownTime | null>(null);
  const replaced = new Map(costs.times.map((time) => [time.replaces, time]));
  const standing = costs.times.filter(({ id, takesBack }) => !takesBack && !replaced.has(id));
  return (
    <FoldPanel
      title="Hours that were entered"
      says={`${costs.standing.whole.actualHours} h in ${standing.length === 1 ? 'one entry' : `${standing.length} entries`}`}
    >
      <table className="table">
        <caption className="visually-hidden">Hours that were entered</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Who</th>
            <th scope="col">On what</th>
            <th scope="col">What was done</th>
            <th scope="col" className="align-right">
              Hours
            </th>
            <th scope="col" className="align-right">
              Cost
            </th>
            <th scope="col">
              <span className="visually-hidden">Correct</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {costs.times.toReversed().map((time) => {
            const later = replaced.get(time.id);
            const gone = later !== undefined || time.takesBack;
            return (
              <tr key={time.id} className={gone ? 'entry-gone' : undefined}>
                <td className="no-wrap">{time.workedOn}</td>
                <th scope="row">{time.person}</th>
                <td>{time.phase}</td>
                <td>
                  {time.note}{' '}
                  {gone ? (
                    <span className="tag entry-state">{stateWords(time, later)}</span>
                  ) : time.replaces === null ? null : (
                    <span className="tag">corrected {time.enteredOn}</span>
                  )}
                </td>
                <td className="align-right">{time.hours}</td>
                <td className="align-right">{dollars(time.costUsd)}</td>
                <td className="align-right">
                  {gone ? null : (
                    <Button
                      tone="quiet"
                      aria-label={`Correct… ${time.person}, ${time.workedOn}`}
                      onPress={() => setCorrecting(time)}
                    >
                      Correct…
                    </Button>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {correcting === null ? null : (
        <CorrectTime time={correcting} phases={costs.phases} onClose={() => setCorrecting(null)} />
      )}
    </FoldPanel>
  );
}

function stateWords(time: ShownTime, later: ShownTime | undefined): string {
  if (time.takesBack) return `took an entry back ${time.enteredOn}`;
  return later?.takesBack === true ? `taken back ${later.enteredOn}` : `corrected ${later?.enteredOn ?? ''}`;
}

function CorrectTime(props: {
  readonly time: ShownTime;
  readonly phases: readonly string[];
  readonly onClose: () => void;
}) {
  const { time, phases, onClose } = props;
  const [entry, setEntry] = useState({
    person: time.person,
    workedOn: time.workedOn,
    phase: time.phase,
    hours: time.hours,
    note: time.note,
  });
  const submit = useSubmit('costs.correctTime');
  const send = async (wanted: typeof entry | null): Promise<void> => {
    if ((await submit.send({ id: time.id, entry: wanted })) !== undefined) onClose();
  };
  const other = submit.problem(['person', 'workedOn', 'phase', 'hours', 'note'].map(at));
  return (
    <Dialog
      title="Correct these hours"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void send(entry)}>
            Save the correction
          </Button>
          <Button tone="danger" onPress={() => void send(null)}>
            Take the entry back
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </>
      }
    >
      <p className="muted">The first entry stays in the list, struck through.</p>
      <div className="fields">
        <TextField
          label="Day"
          type="date"
          value={entry.workedOn}
          onChange={(workedOn) => setEntry({ ...entry, workedOn })}
          problem={submit.problemAt(at('workedOn'))}
        />
        <TextField
          label="Who"
          value={entry.person}
          onChange={(person) => setEntry({ ...entry, person })}
          problem={submit.problemAt(at('person'))}
        />
        <SelectField
          label="On what"
          value={entry.phase}
          choices={[...new Set([...phases, entry.phase])].map((phase) => ({ id: phase, label: phase }))}
          onChange={(phase) => setEntry({ ...entry, phase })}
        />
        <TextField
          label="Hours"
          value={entry.hours}
          onChange={(hours) => setEntry({ ...entry, hours })}
          problem={submit.problemAt(at('hours'))}
        />
        <TextField
          label="What was done"
          value={entry.note}
          onChange={(note) => setEntry({ ...entry, note })}
          maxLength={500}
        />
      </div>
      {other === null ? null : (
        <p className="field-problem" role="alert">
          {other}
        </p>
      )}
    </Dialog>
  );
}

/** Where the host names a field of the form. */
function at(key: string): string {
  return `entry.${key}`;
}
