import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { Costs } from './cost-words.ts';

type Line = {
  readonly person: string;
  readonly phase: string;
  readonly hours: string;
  readonly note: string;
};

/** The hours of the crew for a day, entered at once: who, on what, how long. Enter saves. */
export function DaySheet({ jobId, costs }: { readonly jobId: string; readonly costs: Costs }) {
  const [day, setDay] = useState(costs.today);
  const [lines, setLines] = useState<readonly Line[]>(() => firstLines(costs));
  const submit = useSubmit('costs.addTime');
  const worked = lines.filter(({ hours }) => hours.trim() !== '' && hours.trim() !== '0');
  const change = (index: number, part: Partial<Line>): void =>
    setLines(lines.map((line, at) => (at === index ? { ...line, ...part } : line)));
  const save = async (): Promise<void> => {
    const entries = worked.map((line) => ({ ...line, hours: line.hours.trim(), workedOn: day }));
    const done = await submit.send({ jobId, entries });
    if (done === undefined) return;
    notify(`${done.added === 1 ? 'One entry' : `${done.added} entries`} of ${day} saved.`);
    setLines(lines.map((line) => ({ ...line, hours: '', note: '' })));
  };
  const field = (line: Line, key: string): string => `entries.${worked.indexOf(line)}.${key}`;
  const fields = worked.flatMap((line) =>
    ['person', 'hours', 'phase', 'note'].map((key) => field(line, key)),
  );
  const problem = submit.problem([...fields, ...worked.map((line) => field(line, 'workedOn'))]);
  return (
    <Panel title="Day sheet">
      <form
        noValidate
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <div className="day-head">
          <TextField
            label="Day"
            type="date"
            value={day}
            onChange={setDay}
            problem={worked.map((line) => submit.problemAt(field(line, 'workedOn'))).find(Boolean) ?? null}
          />
        </div>
        <ul className="day-lines">
          {lines.map((line, index) => (
            // The lines of a sheet have no other name than their place.
            // oxlint-disable-next-line react/no-array-index-key
            <li key={index} className="day-line">
              <TextField
                label="Who"
                labelHidden={index > 0}
                value={line.person}
                onChange={(person) => change(index, { person })}
                problem={submit.problemAt(field(line, 'person'))}
                maxLength={60}
              />
              <SelectField
                label="On what"
                labelHidden={index > 0}
                value={line.phase}
                choices={costs.phases.map((phase) => ({ id: phase, label: phase }))}
                onChange={(phase) => change(index, { phase })}
              />
              <TextField
                label="Hours"
                labelHidden={index > 0}
                value={line.hours}
                onChange={(hours) => change(index, { hours })}
                problem={submit.problemAt(field(line, 'hours'))}
                maxLength={8}
              />
              <TextField
                label="What was done"
                labelHidden={index > 0}
                value={line.note}
                onChange={(note) => change(index, { note })}
                maxLength={500}
              />
            </li>
          ))}
        </ul>
        {problem === null ? null : (
          <p className="field-problem" role="alert">
            {problem}
          </p>
        )}
        <div className="form-foot">
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => {
              const last = lines.at(-1);
              setLines([
                ...lines,
                {
                  person: last?.person ?? '',
                  phase: last?.phase ?? costs.phases[0] ?? '',
                  hours: '',
                  note: '',
                },
              ]);
            }}
          >
            Another line
          </Button>
          <Button tone="main" type="submit" isDisabled={worked.length === 0}>
            Save the day
          </Button>
        </div>
      </form>
    </Panel>
  );
}

/** The people and phases of the last day that was entered, so that the next takes only its hours. */
function firstLines({ times, people, phases }: Costs): readonly Line[] {
  const lastDay = times.reduce((last, { workedOn }) => (workedOn > last ? workedOn : last), '');
  const last = times.filter(({ workedOn, takesBack }) => workedOn === lastDay && !takesBack);
  const known = [...new Map(last.map((time) => [`${time.person}/${time.phase}`, time])).values()];
  const phase = phases.includes('Framing') ? 'Framing' : (phases[0] ?? '');
  if (known.length > 0)
    return known.map((time) => ({ person: time.person, phase: time.phase, hours: '', note: '' }));
  const names = people.length === 0 ? [''] : people;
  return names.map((person) => ({ person, phase, hours: '', note: '' }));
}
