import { X } from 'lucide-react';
import { useState } from 'react';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../../job/parts/submit.ts';
import type { Learning } from './money-words.ts';

/** What the shop asks before each quote: what finished jobs taught, and the person's own questions. */
export function RemindersPanel({ reminders }: { readonly reminders: Learning['reminders'] }) {
  const [text, setText] = useState('');
  const submit = useSubmit('learning.remind');
  const add = async (): Promise<void> => {
    if ((await submit.send({ text })) !== undefined) setText('');
  };
  return (
    <Panel title="What you ask before each quote">
      <div className="stack">
        {reminders.length === 0 ? (
          <p className="muted">
            Nothing of your own yet. What surprises you on a job comes here when you mark it as finished.
          </p>
        ) : (
          <ul className="reminders">
            {reminders.map((reminder) => (
              <li key={reminder.id}>
                <span>
                  {reminder.text}
                  {reminder.from === '' ? null : <span className="muted"> {reminder.from}</span>}
                </span>
                <IconButton
                  label={`Ask no more: ${reminder.text}`}
                  icon={<X size={16} aria-hidden="true" />}
                  onPress={() => void attempt('learning.forgetReminder', { id: reminder.id })}
                />
              </li>
            ))}
          </ul>
        )}
        <form
          className="reminder-new"
          onSubmit={(event) => {
            event.preventDefault();
            void add();
          }}
        >
          <TextField
            label="Another question"
            value={text}
            onChange={setText}
            maxLength={1000}
            problem={submit.problemAt('text') ?? submit.problem(['text'])}
          />
          <Button type="submit">Add it</Button>
        </form>
      </div>
    </Panel>
  );
}
