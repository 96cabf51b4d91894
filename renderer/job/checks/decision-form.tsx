import { useEffect, useRef, useState } from 'react';
import type { CheckResult } from '../../../core/checks/check-types.ts';
import { standingSentence } from '../../../core/documents/check-words.ts';
import { titleOf } from '../../../core/documents/grouped-checks.ts';
import { isCivilDate } from '../../../core/units/civil-date.ts';
import { Button } from '../../kit/button.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { appendTo } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';

/** Asks who decided what, and when; the figure it was decided on is kept with it. */
export function DecisionForm(props: { readonly check: CheckResult; readonly onDone: () => void }) {
  const { check, onDone } = props;
  const { editor, surroundings } = useJob();
  const [who, setWho] = useState('');
  const [date, setDate] = useState(surroundings.today);
  const [note, setNote] = useState('');
  const [asked, setAsked] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const nobody = who.trim() === '';
  const noDay = !isCivilDate(date);
  const record = (): void => {
    setAsked(true);
    if (nobody || noDay) return;
    const decision = {
      checkId: check.id,
      who: who.trim(),
      date,
      note: note.trim(),
      figure: standingSentence(check),
    };
    editor.change(`recording a decision on ${titleOf(check)}`, (now) =>
      appendTo(now, 'design.decisions', decision),
    );
    onDone();
  };
  return (
    <form
      ref={form}
      className="decision-form"
      aria-label={`Decision on ${titleOf(check)}`}
      onSubmit={(event) => {
        event.preventDefault();
        record();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone();
      }}
    >
      <TextField
        label="Who decided"
        value={who}
        onChange={setWho}
        maxLength={120}
        hint="Name and office of the engineer or official."
        problem={asked && nobody ? 'Write who decided.' : null}
        autoFocus
      />
      <TextField
        label="Date"
        type="date"
        value={date}
        onChange={setDate}
        problem={asked && noDay ? 'Write the day of the decision.' : null}
      />
      <TextField
        label="What was decided"
        value={note}
        onChange={setNote}
        multiline
        rows={2}
        maxLength={2000}
      />
      <div className="decision-buttons">
        <Button tone="quiet" onPress={onDone}>
          Leave it
        </Button>
        <Button tone="main" type="submit">
          Record
        </Button>
      </div>
    </form>
  );
}
