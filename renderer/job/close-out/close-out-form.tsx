import { useState } from 'react';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import {
  type CloseOutWords,
  type VarianceReason,
  varianceReasons,
  varianceReasonWords,
} from '../../../core/jobcost/learning/finished-job.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useJob } from '../job-context.ts';
import { useSubmit } from '../parts/submit.ts';
import { wholeDollars } from '../../kit/amounts.ts';

type Shown = CommandOutput<'money.closeOut'>;
type Phase = NonNullable<Shown['figures']>['phases'][number];

const noReason = 'none';
const nobody = '-';

/** What he says at the end: the day, why each phase came out otherwise, what surprised him, what changes. */
export function CloseOutForm({ shown, onDone }: { readonly shown: Shown; readonly onDone: () => void }) {
  const { jobId } = useJob();
  const submit = useSubmit('money.finish');
  const [finishedOn, setFinishedOn] = useState(shown.finished?.finishedOn ?? shown.today);
  const [words, setWords] = useState<CloseOutWords>(shown.finished?.words ?? freshWords(shown));
  const set = (change: Partial<CloseOutWords>): void => setWords({ ...words, ...change });
  const save = async (): Promise<void> => {
    if (finishedOn === '' || (await submit.send({ jobId, finishedOn, words })) === undefined) return;
    onDone();
    notify('The job is finished. What it teaches stands under Money.');
  };
  const problem = submit.problem(['finishedOn', 'words.surprise', 'words.willChange']);
  const people = shown.figures?.people ?? [];
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className="close-out-words">
        <TextField
          label="Finished on"
          type="date"
          value={finishedOn}
          onChange={setFinishedOn}
          problem={finishedOn === '' ? 'Give the day.' : submit.problemAt('finishedOn')}
        />
        <SelectField
          label="Who of these is the owner"
          value={words.owner ?? nobody}
          choices={[
            { id: nobody, label: 'None of them' },
            ...people.map(({ person, hours }) => ({ id: person, label: `${person}, ${hours} h` })),
          ]}
          onChange={(owner) => set({ owner: owner === nobody ? null : owner })}
        />
      </div>
      <Reasons phases={shown.figures?.phases ?? []} words={words} onChange={(reasons) => set({ reasons })} />
      <div className="close-out-words">
        <TextField
          label="What surprised you?"
          multiline
          rows={3}
          maxLength={1000}
          value={words.surprise}
          onChange={(surprise) => set({ surprise })}
          problem={submit.problemAt('words.surprise')}
          hint="Put as a question, it is asked before every later quote."
        />
        <TextField
          label="What will you do otherwise?"
          multiline
          rows={3}
          maxLength={1000}
          value={words.willChange}
          onChange={(willChange) => set({ willChange })}
          problem={submit.problemAt('words.willChange')}
        />
      </div>
      <Switch isSelected={words.remind} onChange={(remind) => set({ remind })}>
        Ask the surprise before every later quote
      </Switch>
      {problem === null ? null : (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="form-foot">
        <Button onPress={onDone}>Leave it</Button>
        <Button tone="main" type="submit">
          {shown.finished === null ? 'The job is finished' : 'Save the words'}
        </Button>
      </div>
    </form>
  );
}

function Reasons(props: {
  readonly phases: readonly Phase[];
  readonly words: CloseOutWords;
  readonly onChange: (reasons: CloseOutWords['reasons']) => void;
}) {
  const { phases, words, onChange } = props;
  const set = (phase: string, reason: VarianceReason | typeof noReason): void => {
    const { [phase]: _, ...others } = words.reasons;
    onChange(reason === noReason ? others : { ...others, [phase]: reason });
  };
  return (
    <table className="table close-out-reasons">
      <caption className="visually-hidden">Why each phase came out otherwise</caption>
      <thead>
        <tr>
          <th scope="col">Phase</th>
          <th scope="col" className="align-right">
            Reckoned
          </th>
          <th scope="col" className="align-right">
            Taken
          </th>
          <th scope="col" className="align-right">
            More or less
          </th>
          <th scope="col">Why</th>
        </tr>
      </thead>
      <tbody>
        {phases.map(({ phase, budgetUsd, actualUsd }) => (
          <tr key={phase}>
            <th scope="row">{phase}</th>
            <td className="align-right">{wholeDollars(budgetUsd)}</td>
            <td className="align-right">{wholeDollars(actualUsd)}</td>
            <td className="align-right">{signedDollars(Number(actualUsd) - Number(budgetUsd))}</td>
            <td>
              <SelectField
                label={`Why ${phase} came out otherwise`}
                labelHidden
                look="cell"
                value={words.reasons[phase] ?? noReason}
                choices={[
                  { id: noReason, label: 'As reckoned, or not said' },
                  ...varianceReasons.map((id) => ({ id, label: varianceReasonWords[id] })),
                ]}
                onChange={(reason) => set(phase, reason)}
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function signedDollars(amount: number): string {
  return `${Math.round(amount) > 0 ? '+' : ''}${wholeDollars(String(amount))}`;
}

/** The person with the most hours is taken for the owner until he says otherwise. */
function freshWords(shown: Shown): CloseOutWords {
  const [most] = (shown.figures?.people ?? []).toSorted((a, b) => Number(b.hours) - Number(a.hours));
  return { reasons: {}, surprise: '', remind: true, willChange: '', owner: most?.person ?? null };
}
