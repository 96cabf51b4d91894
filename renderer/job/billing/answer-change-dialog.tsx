import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { ShownChange } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

export type AnsweredChange = { readonly change: ShownChange; readonly to: 'sent' | 'approved' | 'declined' };

const told = {
  sent: 'It stays as it is from now on; the client has to answer it.',
  approved: 'It is frozen and adds to the contract and to the budget.',
  declined: 'It keeps its number and does not count.',
} as const;

/** Asks on which day a change order was sent or answered, and what was said. */
export function AnswerChangeDialog(
  props: AnsweredChange & { readonly today: string; readonly onClose: () => void },
) {
  const { change, to, today, onClose } = props;
  const [on, setOn] = useState(today);
  const [note, setNote] = useState('');
  const submit = useSubmit('billing.moveChange');
  const name = `Change order ${change.number}`;
  const move = async (): Promise<void> => {
    if (on === '' || (await submit.send({ id: change.id, to, on, note })) === undefined) return;
    onClose();
    notify(`${name} is ${to}.`);
  };
  const problem = submit.problem(['on', 'note']);
  return (
    <Dialog
      title={`${name} is ${to}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void move()}>
            Note it
          </Button>
          <Button onPress={onClose}>Leave it as it is</Button>
        </>
      }
    >
      <p>
        {dollars(change.priceUsd)}. {told[to]}
      </p>
      <div className="fields">
        <TextField
          label="On"
          type="date"
          value={on}
          onChange={setOn}
          problem={on === '' ? 'Give the day.' : submit.problemAt('on')}
          autoFocus
        />
        {to === 'sent' ? null : (
          <TextField label="What was said" value={note} onChange={setNote} maxLength={2000} />
        )}
      </div>
      {problem === null ? null : (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
    </Dialog>
  );
}
